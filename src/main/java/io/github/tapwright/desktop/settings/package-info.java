/**
 * How the maker likes the desk: light or dark, degrees Celsius or Fahrenheit, the tuning note. Kept beside the archive
 * in a file one can read, {@code desk.properties}; none of it changes a number that was measured.
 */
@NullMarked
package io.github.tapwright.desktop.settings;

import org.jspecify.annotations.NullMarked;
