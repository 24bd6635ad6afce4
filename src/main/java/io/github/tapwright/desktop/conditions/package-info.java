/**
 * The conditions of a sitting as a maker types them: asked before a new one, and filled with what is known to correct one
 * that is kept.
 */
@NullMarked
package io.github.tapwright.desktop.conditions;

import org.jspecify.annotations.NullMarked;
