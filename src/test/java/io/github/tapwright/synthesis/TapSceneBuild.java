package io.github.tapwright.synthesis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;

/** Turns a scene into samples. */
final class TapSceneBuild {

    private static final double TAIL_SECONDS = 1.5;
    private static final double ENDING_SECONDS = 0.12;
    private static final double TOO_EARLY_SECONDS = 0.2;
    private static final double FLAT_SECONDS = 0.15;
    private static final double TOO_QUIET_DB = 3;
    private static final double CLIPPED_PEAK = 1.6;

    private final TapScene scene;
    private final Random random;
    private final Ringing ringing;
    private final double[] secondStrengths;

    TapSceneBuild(TapScene scene) {
        this.scene = scene;
        this.random = Chance.seeded(scene.seed);
        this.ringing = new Ringing(scene.modes, scene.directGain, scene.rateHz);
        this.secondStrengths = new double[scene.strikeCount];
    }

    SyntheticTaps build() {
        List<TrueStrike> strikes = scaledToPeak(drawStrikes());
        double end = strikes.get(strikes.size() - 1).onsetSeconds() + tailSeconds();
        int length = (int) Math.round(end * scene.rateHz);
        double[] noise =
                scene.pinkish ? RoomNoise.pinkish(random, length, scene.rateHz) : RoomNoise.white(random, length);
        scale(noise, noiseGain(strikes, noise));
        strikes = withFaultyStrengths(strikes);
        double[] samples = noise.clone();
        for (int i = 0; i < strikes.size(); i++) {
            addStrike(samples, strikes, i);
        }
        addRoom(samples);
        cutFlatTops(samples, strikes);
        limit(samples);
        return new SyntheticTaps(scene.recording(samples), scene.modes, strikes, Levels.rms(noise));
    }

    private List<TrueStrike> drawStrikes() {
        List<TrueStrike> strikes = new ArrayList<>();
        double[] onsets = drawOnsets();
        for (int i = 0; i < scene.strikeCount; i++) {
            double strength = Levels.ratio(scene.strengthSpreadDb * random.nextGaussian());
            List<Double> factors = scene.modes.stream()
                    .map(m -> 1 + scene.placeSpread * random.nextGaussian())
                    .toList();
            Optional<PlantedFault> fault = Optional.ofNullable(scene.faults.get(i));
            OptionalDouble second = OptionalDouble.empty();
            if (fault.equals(Optional.of(PlantedFault.DOUBLE_STRIKE))) {
                double drawn = 0.015 + 0.105 * random.nextDouble();
                secondStrengths[i] = 0.3 + 0.6 * random.nextDouble();
                second = OptionalDouble.of(onsets[i] + scene.secondContactSeconds.getOrDefault(i, drawn));
            }
            HalfSineContact contact = new HalfSineContact(scene.contactSeconds);
            strikes.add(new TrueStrike(onsets[i], contact, strength, factors, fault, second));
        }
        return strikes;
    }

    private double[] drawOnsets() {
        double[] onsets = new double[scene.strikeCount];
        for (int i = 0; i < onsets.length; i++) {
            double jitter = 0.1 * scene.spacingSeconds * (random.nextDouble() - 0.5);
            onsets[i] = scene.firstSeconds + i * scene.spacingSeconds + jitter;
            if (i > 0 && scene.faults.get(i - 1) == PlantedFault.NEXT_TOO_EARLY) {
                onsets[i] = onsets[i - 1] + TOO_EARLY_SECONDS + 0.02 * random.nextDouble();
            }
        }
        return onsets;
    }

    private List<TrueStrike> scaledToPeak(List<TrueStrike> strikes) {
        double loudest = strikes.stream()
                .filter(s -> s.good() || strikes.stream().noneMatch(TrueStrike::good))
                .mapToDouble(this::peakOf)
                .max()
                .orElseThrow();
        double gain = Levels.ratio(scene.peakDbfs) / loudest;
        return strikes.stream().map(s -> s.scaled(gain)).toList();
    }

    private List<TrueStrike> withFaultyStrengths(List<TrueStrike> strikes) {
        return strikes.stream()
                .map(s -> switch (s.fault().orElse(PlantedFault.NEXT_TOO_EARLY)) {
                    case CLIPPED -> s.scaled(CLIPPED_PEAK / peakOf(s));
                    case TOO_QUIET ->
                        s.scaled(Levels.ratio(-Math.min(scene.snrDb - TOO_QUIET_DB, 60))
                                * median(strikes).strength()
                                / s.strength());
                    default -> s;
                })
                .toList();
    }

    private double peakOf(TrueStrike strike) {
        double[] alone = alone(strike, 0.05);
        return Levels.peak(alone);
    }

    /** One strike by itself, starting with its onset. */
    private double[] alone(TrueStrike strike, double seconds) {
        double[] alone = new double[(int) Math.round(seconds * scene.rateHz)];
        ringing.addTo(alone, 0, strike.contact(), strike.strength(), strike.modeFactors());
        return alone;
    }

    private double noiseGain(List<TrueStrike> strikes, double[] noise) {
        if (Double.isInfinite(scene.snrDb)) {
            return 0;
        }
        TrueStrike median = median(strikes);
        int contact = (int) Math.ceil(scene.contactSeconds * scene.rateHz);
        double[] alone = alone(median, scene.contactSeconds + 2 * Levels.BLOCK_SECONDS);
        int block = (int) Math.round(Levels.BLOCK_SECONDS * scene.rateHz);
        double[] decay = Arrays.copyOfRange(alone, contact, contact + block);
        double signal = scene.noiseLevel.rms(decay, scene.rateHz);
        return signal / Levels.ratio(scene.snrDb) / scene.noiseLevel.rms(noise, scene.rateHz);
    }

    private static TrueStrike median(List<TrueStrike> strikes) {
        List<TrueStrike> good = strikes.stream()
                .filter(s -> s.good() || strikes.stream().noneMatch(TrueStrike::good))
                .sorted(Comparator.comparingDouble(TrueStrike::strength))
                .toList();
        return good.get(good.size() / 2);
    }

    private void addStrike(double[] samples, List<TrueStrike> strikes, int i) {
        TrueStrike strike = strikes.get(i);
        double[] alone = new double[samples.length];
        ringing.addTo(alone, strike.onsetSeconds(), strike.contact(), strike.strength(), strike.modeFactors());
        strike.secondOnsetSeconds()
                .ifPresent(onset -> ringing.addTo(
                        alone, onset, strike.contact(), strike.strength() * secondStrengths[i], strike.modeFactors()));
        for (int n = 0; n < samples.length; n++) {
            samples[n] += alone[n];
        }
    }

    /** A preamplifier cuts whatever comes, the room's noise with it. */
    private void cutFlatTops(double[] samples, List<TrueStrike> strikes) {
        for (TrueStrike strike : strikes) {
            if (strike.fault().equals(Optional.of(PlantedFault.FLAT_TOPPED))) {
                double ceiling = peakOf(strike) / 2;
                int from = (int) Math.floor(strike.onsetSeconds() * scene.rateHz);
                int to = (int) Math.min(samples.length, from + FLAT_SECONDS * scene.rateHz);
                for (int n = from; n < to; n++) {
                    samples[n] = Math.max(-ceiling, Math.min(ceiling, samples[n]));
                }
            }
        }
    }

    private void addRoom(double[] samples) {
        if (scene.humDbfs > Double.NEGATIVE_INFINITY) {
            double[] hum = RoomNoise.hum(random, samples.length, scene.rateHz, scene.mainsHz);
            addScaled(samples, hum, Levels.ratio(scene.humDbfs));
        }
        if (scene.speechDbfs > Double.NEGATIVE_INFINITY) {
            double[] talk = Speech.samples(random, samples.length, scene.rateHz);
            addScaled(samples, talk, Levels.ratio(scene.speechDbfs));
        }
    }

    private double tailSeconds() {
        boolean ends = scene.faults.get(scene.strikeCount - 1) == PlantedFault.RECORDING_ENDS;
        return ends ? ENDING_SECONDS : TAIL_SECONDS;
    }

    private static void limit(double[] samples) {
        for (int n = 0; n < samples.length; n++) {
            samples[n] = Math.max(-1, Math.min(1, samples[n]));
        }
    }

    private static void scale(double[] samples, double gain) {
        for (int n = 0; n < samples.length; n++) {
            samples[n] *= gain;
        }
    }

    private static void addScaled(double[] samples, double[] more, double gain) {
        for (int n = 0; n < samples.length; n++) {
            samples[n] += gain * more[n];
        }
    }
}
