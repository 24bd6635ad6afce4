/**
 * The low notes of a guitar's body as three pistons joined by one spring.
 *
 * <p>Below about 250 Hz the top moves as a piston, so does the back, and so does the plug of air in the
 * soundhole. Behind all three lies the same air. When the top moves in, the air is squeezed and pushes the
 * back and the air plug out: the cavity is a spring that every piston leans on. Alone, the air plug would
 * sing at the Helmholtz frequency and the top at its own; joined, neither frequency survives. The pair
 * pushes apart: one resonance ends below both (the "main air"), one above (the "main top").
 *
 * <p>With M the masses, R the friction, K the plates' own springs, a the areas and μ = ρc²/V the stiffness of
 * the air, the body obeys M·x″ + R·x′ + (K + μ·a·aᵀ)·x = F. Everything here follows from that one line.
 * Sources: [ChristensenVistisen1980] for two pistons, [Christensen1982] for three (the latter from memory,
 * to be verified).
 *
 * <p>The model is a good description of the two or three lowest resonances and of nothing above them. It
 * knows neither the neck, nor the ribs, nor how sound goes round the body.
 */
@NullMarked
package io.github.tapwright.mode.body;

import org.jspecify.annotations.NullMarked;
