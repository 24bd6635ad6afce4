/** Reads the tables under {@code validation}, so that tests and readers look at the same numbers. */
@NullMarked
package io.github.tapwright.validation;

import org.jspecify.annotations.NullMarked;
