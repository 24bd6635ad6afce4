/** The audio package. */
@NullMarked
package io.github.tapwright.audio;

import org.jspecify.annotations.NullMarked;
