/** The signal package. */
@NullMarked
package io.github.tapwright.signal;

import org.jspecify.annotations.NullMarked;
