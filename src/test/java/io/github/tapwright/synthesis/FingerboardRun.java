package io.github.tapwright.synthesis;

import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/**
 * A run over the fingerboard with known truth: stiff strings in two planes, each stopped by a finger before the next note.
 *
 * @param places in the order played
 * @param secondsEach from one pluck to the next
 * @param dead places that die away too fast, and to what part of the usual decay time; maybe none
 */
public record FingerboardRun(List<Fret> places, double secondsEach, Map<Fret, Double> dead) {

    private static final double LEAD_IN_SECONDS = 0.5;
    private static final double PAUSE_SECONDS = 0.15;
    private static final double STOP_SECONDS = 0.02;
    private static final double ROOM = 2e-5;

    /** Keeps copies. */
    public FingerboardRun {
        places = List.copyOf(places);
        dead = Map.copyOf(dead);
    }

    /** A run without dead notes. */
    public FingerboardRun(List<Fret> places, double secondsEach) {
        this(places, secondsEach, Map.of());
    }

    /** Four minutes: every string from the open note to the fifth fret, the lowest string first. */
    public static FingerboardRun fourMinutes() {
        List<Fret> places = new ArrayList<>();
        for (int string = 6; string >= 1; string--) {
            for (int fret = 0; fret <= 5; fret++) {
                places.add(new Fret(string, fret));
            }
        }
        return new FingerboardRun(places, 6.65);
    }

    /** The note of a place: 60 dB above its own noise, its highest partials dead soonest. */
    public StringNote note(Fret place) {
        double decay = (3.5 - 0.1 * place.fret() - 0.15 * (6 - place.string())) * dead.getOrDefault(place, 1.0);
        return StringNote.plain(
                        Tuning.CLASSICAL.hz(place),
                        2e-5 * (1 + place.string()),
                        decay,
                        secondsEach - PAUSE_SECONDS - 0.05)
                .inTwoPlanes(1.7 * decay, 0.3, 0.7)
                .damped(0.05)
                .inNoise(70, 0.05);
    }

    /** When each note is plucked. */
    public double onsetSeconds(int note) {
        return LEAD_IN_SECONDS + note * secondsEach + 0.05;
    }

    /** The recording, mono. */
    public Recording recording(double rateHz, RandomGenerator chance) {
        double[] all = new double[(int) ((LEAD_IN_SECONDS + places.size() * secondsEach) * rateHz)];
        double ramp = STOP_SECONDS * rateHz;
        for (int i = 0; i < places.size(); i++) {
            double[] note = note(places.get(i)).samples(rateHz, chance);
            int at = (int) ((LEAD_IN_SECONDS + i * secondsEach) * rateHz);
            for (int n = 0; n < note.length; n++) {
                all[at + n] = note[n] * Math.min(1, (note.length - n) / ramp);
            }
        }
        for (int n = 0; n < all.length; n++) {
            all[n] += ROOM * chance.nextGaussian();
        }
        return Recording.of(new SampleRate(rateHz), all);
    }
}
