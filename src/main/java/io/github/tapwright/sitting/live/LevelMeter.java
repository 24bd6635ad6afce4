package io.github.tapwright.sitting.live;

import io.github.tapwright.signal.FullScaleRun;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Follows the level of a running input in steps of 50 ms; of several channels the louder one counts. */
final class LevelMeter {

    private static final double STEP_SECONDS = 0.05;
    private static final int STEPS_NOW = 6;
    private static final int STEPS_OF_CLIPPING = 40;
    private static final int STEPS_OF_NOISE = 200;
    private static final int FEWEST_STEPS_OF_NOISE = 20;
    private static final double NOISY_DBFS = -45;

    private final int stepFrames;
    private final List<FullScaleRun> fullScale;
    private final double[] squares;
    private final Deque<Step> steps = new ArrayDeque<>();
    private double peak;
    private boolean clipped;
    private int frames;

    private record Step(double peak, double meanSquare, boolean clipped) {}

    LevelMeter(LiveFormat format) {
        stepFrames = (int) (STEP_SECONDS * format.rateHz());
        fullScale =
                Stream.generate(FullScaleRun::new).limit(format.channelCount()).toList();
        squares = new double[format.channelCount()];
    }

    void feed(double[][] samples) {
        for (int n = 0; n < samples[0].length; n++) {
            for (int c = 0; c < samples.length; c++) {
                take(c, samples[c][n]);
            }
            if (++frames == stepFrames) {
                endStep();
            }
        }
    }

    private void take(int channel, double x) {
        squares[channel] += x * x;
        peak = Math.max(peak, Math.abs(x));
        clipped |= fullScale.get(channel).take(x);
    }

    private void endStep() {
        double loudest = 0;
        for (int c = 0; c < squares.length; c++) {
            loudest = Math.max(loudest, squares[c]);
            squares[c] = 0;
        }
        steps.addLast(new Step(peak, loudest / frames, clipped));
        if (steps.size() > STEPS_OF_NOISE) {
            steps.removeFirst();
        }
        peak = 0;
        clipped = false;
        frames = 0;
    }

    LevelNow now() {
        List<Step> all = new ArrayList<>(steps);
        List<Step> last = all.subList(Math.max(0, all.size() - STEPS_NOW), all.size());
        boolean recentlyClipped = all.subList(Math.max(0, all.size() - STEPS_OF_CLIPPING), all.size()).stream()
                .anyMatch(Step::clipped);
        Optional<Double> noise = noiseFloorDbfs(all);
        return new LevelNow(
                decibels(last.stream()
                        .mapToDouble(s -> s.peak() * s.peak())
                        .max()
                        .orElse(0)),
                decibels(last.stream().mapToDouble(Step::meanSquare).average().orElse(0)),
                noise,
                recentlyClipped,
                hints(all, noise, recentlyClipped));
    }

    private static Optional<Double> noiseFloorDbfs(List<Step> all) {
        if (all.size() < FEWEST_STEPS_OF_NOISE) {
            return Optional.empty();
        }
        return decibels(all.stream()
                .mapToDouble(Step::meanSquare)
                .sorted()
                .skip(all.size() / 10)
                .findFirst()
                .orElse(0));
    }

    private static List<String> hints(List<Step> all, Optional<Double> noise, boolean clipped) {
        List<String> hints = new ArrayList<>();
        if (clipped) {
            hints.add("the input is cut flat at full scale: turn the gain down, or tap softer");
        }
        if (all.size() >= FEWEST_STEPS_OF_NOISE && all.stream().allMatch(s -> s.peak() == 0)) {
            hints.add("the input gives nothing but zeros: it may be muted, unplugged or not permitted");
        }
        noise.filter(n -> n > NOISY_DBFS)
                .ifPresent(n -> hints.add("the quiet moments lie at " + Figures.text(n, 0)
                        + " dBFS: silence the room, or move the microphone closer and turn the gain down"));
        return hints;
    }

    private static Optional<Double> decibels(double meanSquare) {
        return meanSquare > 0 ? Optional.of(10 * Math.log10(meanSquare)) : Optional.empty();
    }
}
