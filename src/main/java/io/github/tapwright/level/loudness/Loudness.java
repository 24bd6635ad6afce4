package io.github.tapwright.level.loudness;

import java.util.Arrays;
import java.util.List;

/**
 * Loudness of a steady sound, method of Zwicker. Source: [ISO532-1].
 *
 * @param loudnessSone N
 * @param loudnessLevelPhon LN
 * @param specificLoudness N' at 0.1, 0.2 … 24 Bark, sone per Bark, 240 values
 * @param field how the sound reached the microphone
 */
public record Loudness(double loudnessSone, double loudnessLevelPhon, List<Double> specificLoudness, SoundField field) {

    /** Keeps a copy. */
    public Loudness {
        specificLoudness = List.copyOf(specificLoudness);
    }

    /**
     * The loudness of a steady sound from its third-octave levels.
     *
     * <p>Errors against the standard's own program: below 0.01 % from levels (its signal 1).
     *
     * @param levels dB SPL
     * @param field free or diffuse
     * @return the loudness
     * @throws IllegalArgumentException if a band up to 250 Hz exceeds 120 dB, where the method does not hold
     */
    public static Loudness ofSteadySound(ThirdOctaveLevels levels, SoundField field) {
        double[] levelsDb = levels.toArray();
        if (!CoreLoudness.applicable(levelsDb)) {
            throw new IllegalArgumentException("loudness is not defined above 120 dB in a band up to 250 Hz");
        }
        LoudnessPattern pattern = new LoudnessPattern();
        pattern.trace(new CoreLoudness(field).of(levelsDb));
        List<Double> specific = Arrays.stream(pattern.specific()).boxed().toList();
        return new Loudness(pattern.totalSone(), LoudnessLevel.phon(pattern.totalSone()), specific, field);
    }
}
