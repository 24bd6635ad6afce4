/**
 * Small parts every screen is put together from: buttons, fields and tables that carry a name for people who do not see
 * them, and the maker's own units.
 */
@NullMarked
package io.github.tapwright.desktop.part;

import org.jspecify.annotations.NullMarked;
