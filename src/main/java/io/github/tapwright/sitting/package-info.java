/** The sitting package. */
@NullMarked
package io.github.tapwright.sitting;

import org.jspecify.annotations.NullMarked;
