/**
 * The validation book: what the shipped program calculates, held against published and derived numbers.
 *
 * <p>Each {@link io.github.tapwright.validation.Section} is a class that lists {@link io.github.tapwright.validation.Check}s: a
 * quantity, the number it should have, where that number comes from, how far off it may be and why, and the very code of the analysis
 * packages that works it out anew each time the book is run. Nothing that was got is written down here. Longer tables are read from
 * the folder {@code validation} of the project, which is shipped with the program; the tests read the same tables.
 */
@NullMarked
package io.github.tapwright.validation;

import org.jspecify.annotations.NullMarked;
