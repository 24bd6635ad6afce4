package io.github.tapwright.comparison;

import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.ShopWindow;

/**
 * What is known about a workshop besides the sittings themselves.
 *
 * @param spread how far setting up again moves figures
 * @param window the humidity the workshop keeps
 * @param sensitivity how far humidity moves the resonances of the instrument in question
 */
public record BenchKnowledge(SetUpSpread spread, ShopWindow window, HumiditySensitivity sensitivity) {}
