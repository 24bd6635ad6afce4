/** The archive package. */
@NullMarked
package io.github.tapwright.archive;

import org.jspecify.annotations.NullMarked;
