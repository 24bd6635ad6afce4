/** The instrument package. */
@NullMarked
package io.github.tapwright.instrument;

import org.jspecify.annotations.NullMarked;
