/**
 * Resonances: the frequencies at which a body rings on by itself, and how fast each dies away.
 *
 * <p>After the contact every strike is a sum of decaying sines. Their frequencies and damping belong to the
 * body and are the same in every strike; only their strengths differ. So all strikes are fitted together.
 * Each resonance comes with standard uncertainties and, where the rules are sure enough, a suggested name.
 */
@NullMarked
package io.github.tapwright.mode;

import org.jspecify.annotations.NullMarked;
