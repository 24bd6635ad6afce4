/**
 * Test sounds whose truth is known: decaying modes struck by a contact, noise, hum, and planted faults.
 *
 * <p>Everything is seeded and nothing is sampled that has a closed form, so the same scene sounds the same at
 * every sample rate and the true poles, onsets and faults are exact. {@link
 * io.github.tapwright.synthesis.TapScene} puts a scene together; {@link
 * io.github.tapwright.synthesis.CramerRao} says how well anyone could measure it.
 */
@NullMarked
package io.github.tapwright.synthesis;

import org.jspecify.annotations.NullMarked;
