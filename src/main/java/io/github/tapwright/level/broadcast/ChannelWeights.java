package io.github.tapwright.level.broadcast;

import java.util.List;
import java.util.Optional;

/**
 * How much each channel counts in programme loudness. Source: [BS1770], annex 1.
 *
 * @param weights G_i on the power of each channel, in the order of the recording
 */
public record ChannelWeights(List<Double> weights) {

    private static final double SURROUND = 1.41;

    /** Keeps a copy, and refuses negative weights or none. */
    public ChannelWeights {
        weights = List.copyOf(weights);
        if (weights.isEmpty() || weights.stream().anyMatch(w -> !(w >= 0))) {
            throw new IllegalArgumentException("each channel needs a weight of 0 or more");
        }
    }

    /**
     * The weights of the usual layouts: one channel, left and right, or L R C Ls Rs.
     *
     * @param channels number of channels
     * @return the weights, or empty if the count alone does not tell the layout
     */
    public static Optional<ChannelWeights> ofUsualLayout(int channels) {
        return switch (channels) {
            case 1 -> Optional.of(new ChannelWeights(List.of(1.0)));
            case 2 -> Optional.of(new ChannelWeights(List.of(1.0, 1.0)));
            case 5 -> Optional.of(new ChannelWeights(List.of(1.0, 1.0, 1.0, SURROUND, SURROUND)));
            default -> Optional.empty();
        };
    }
}
