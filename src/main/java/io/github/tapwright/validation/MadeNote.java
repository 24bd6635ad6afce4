package io.github.tapwright.validation;

import io.github.tapwright.note.NoteAnalysis;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.function.IntToDoubleFunction;

/**
 * A plucked string whose truth is known: partial n at n·f₀·√(1 + B·n²) Hz with amplitude 1/n, each dying away by its own 60 dB time,
 * after 0.2 s of the room's noise, which goes on under it.
 *
 * @param fundamentalHz f₀ of the string without stiffness
 * @param inharmonicity B
 * @param decaySeconds 60 dB time of each partial, by its number
 * @param recordedSeconds how long after the pluck
 * @param noiseRms of the room, where the note's first partial begins at 0.25
 */
record MadeNote(
        double fundamentalHz,
        double inharmonicity,
        IntToDoubleFunction decaySeconds,
        double recordedSeconds,
        double noiseRms) {

    private static final double RATE_HZ = 22_050;
    private static final double LEAD_SECONDS = 0.2;
    private static final int PARTIALS = 12;
    private static final double FIRST = 0.25;
    private static final long SEED = 17;

    double partialHz(int number) {
        return number * fundamentalHz * Math.sqrt(1 + inharmonicity * number * number);
    }

    NoteResult analysed() {
        double[] samples = MadeSound.of(RATE_HZ, LEAD_SECONDS + recordedSeconds, t -> at(t - LEAD_SECONDS));
        MadeSound.addNoise(samples, noiseRms, SEED);
        return NoteAnalysis.analyse(Recording.of(new SampleRate(RATE_HZ), samples).stream(), NoteSettings.STANDARD);
    }

    private double at(double t) {
        double sum = 0;
        for (int n = 1; t >= 0 && n <= PARTIALS; n++) {
            double fall = Math.exp(-Math.log(1000) * t / decaySeconds.applyAsDouble(n));
            sum += FIRST / n * fall * Math.sin(2 * Math.PI * partialHz(n) * t + n);
        }
        return sum;
    }
}
