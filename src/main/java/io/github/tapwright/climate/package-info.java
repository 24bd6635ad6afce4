/**
 * What the air of the room does to wood and to the air in the box.
 *
 * <p>Wood takes up water until it suits the humidity and temperature around it (its equilibrium moisture content); it then is
 * heavier and less stiff, so its resonances fall. Air carries sound faster when warm and a little faster when damp, so the air
 * resonance of the box rises. Both are as large as many of the changes a maker looks for. A figure that is only an estimate
 * of the trade says so ({@link io.github.tapwright.climate.HumiditySensitivity}); one outside the range of its source is not given.
 */
@NullMarked
package io.github.tapwright.climate;

import org.jspecify.annotations.NullMarked;
