/** The comparison package. */
@NullMarked
package io.github.tapwright.comparison;

import org.jspecify.annotations.NullMarked;
