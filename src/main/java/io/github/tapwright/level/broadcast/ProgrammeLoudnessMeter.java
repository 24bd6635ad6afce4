package io.github.tapwright.level.broadcast;

import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.signal.SectionFilter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Measures programme loudness block by block.
 *
 * <p>Per channel: K weighting, square, weight; sums in steps of 10 ms, from which all the windows are built. The
 * largest momentary and short-term loudness are looked for every 10 ms. Source: [BS1770], annex 1.
 */
public final class ProgrammeLoudnessMeter {

    private static final int MOMENTARY_STEPS = 40;
    private static final int SHORT_TERM_STEPS = 300;
    private static final int BLOCK_HOP_STEPS = 10;

    private final ChannelWeights weights;
    private final PowerSteps steps;
    private final List<SectionFilter> filters = new ArrayList<>();
    private final List<TruePeak> peaks = new ArrayList<>();
    private double[] work = new double[0];
    private double[] power = new double[0];

    /**
     * A meter at rest.
     *
     * @param weights one weight for each channel
     * @param rate sample rate, 8,000 Hz or more
     */
    public ProgrammeLoudnessMeter(ChannelWeights weights, SampleRate rate) {
        this.weights = weights;
        this.steps = new PowerSteps(rate.hertz());
        for (int c = 0; c < weights.weights().size(); c++) {
            filters.add(new SectionFilter(KWeighting.sections(rate.hertz())));
            peaks.add(new TruePeak());
        }
    }

    /**
     * Takes the next samples.
     *
     * @param block shape [channel][capacity], re full scale, left unchanged
     * @param count how many samples of each channel count
     */
    public void take(double[][] block, int count) {
        if (work.length < count) {
            work = new double[count];
            power = new double[count];
        }
        Arrays.fill(power, 0);
        for (int c = 0; c < filters.size(); c++) {
            peaks.get(c).take(block[c], count);
            System.arraycopy(block[c], 0, work, 0, count);
            filters.get(c).process(work, count);
            double weight = weights.weights().get(c);
            for (int n = 0; n < count; n++) {
                power[n] += weight * work[n] * work[n];
            }
        }
        steps.take(power, count);
    }

    /**
     * Ends the programme.
     *
     * @return its loudness
     */
    public ProgrammeLoudness finish() {
        double peak = peaks.stream().mapToDouble(TruePeak::finish).max().orElse(0);
        return new ProgrammeLoudness(
                Gating.integratedLufs(steps.means(MOMENTARY_STEPS, BLOCK_HOP_STEPS)),
                Gating.largestLufs(steps.means(MOMENTARY_STEPS, 1)),
                Gating.largestLufs(steps.means(SHORT_TERM_STEPS, 1)),
                rangeLu(),
                peak > 0 ? OptionalDouble.of(20 * Math.log10(peak)) : OptionalDouble.empty(),
                weights);
    }

    /** [EBU3342], 5, has 1.5 s of silence follow a recording, so that its last sound counts as much as any other. */
    private OptionalDouble rangeLu() {
        if (steps.count() < SHORT_TERM_STEPS) {
            return OptionalDouble.empty();
        }
        steps.addSilence(SHORT_TERM_STEPS / 2);
        return Gating.rangeLu(steps.means(SHORT_TERM_STEPS, BLOCK_HOP_STEPS));
    }
}
