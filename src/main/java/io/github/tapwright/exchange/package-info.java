/** The exchange package. */
@NullMarked
package io.github.tapwright.exchange;

import org.jspecify.annotations.NullMarked;
