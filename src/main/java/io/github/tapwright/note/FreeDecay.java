package io.github.tapwright.note;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * The part of a recording in which the string dies away freely.
 *
 * @param pluck where it begins
 * @param end one past its last sample
 * @param disturbance what ended it, empty if it lasts to the end of the recording
 */
record FreeDecay(Pluck pluck, int end, Optional<Disturbance> disturbance) {

    private static final double GUARD_SECONDS = 0.008;

    /**
     * Finds the free decay after a pluck: until the first loop, second event, fade or stop.
     *
     * @param track the recording
     * @param pluck where the note begins
     * @return its free decay
     */
    static FreeDecay after(NoteTrack track, Pluck pluck) {
        double rate = track.rateHz();
        int end = track.signal().length;
        Optional<Disturbance> found = Optional.empty();
        OptionalInt loop = track.isCutShort() ? OptionalInt.empty() : Loop.find(track.tail(), track.tailRateHz());
        if (loop.isPresent()) {
            double at = track.durationSeconds() - loop.getAsInt() / track.tailRateHz();
            found = Optional.of(new Disturbance(Disturbance.Kind.LOOP, at));
            end = Math.min(end, (int) (at * rate));
        }
        OptionalInt event = SecondEvent.find(track.signal(), pluck.onset(), rate);
        if (event.isPresent() && event.getAsInt() < end) {
            found = Optional.of(new Disturbance(Disturbance.Kind.SECOND_EVENT, event.getAsInt() / rate));
            end = event.getAsInt() - (int) (GUARD_SECONDS * rate);
        }
        OptionalInt fade = Fade.find(track.signal(), pluck.onset(), end, rate);
        if (fade.isPresent()) {
            found = Optional.of(new Disturbance(Disturbance.Kind.FADE, fade.getAsInt() / rate));
            end = fade.getAsInt();
        }
        OptionalInt stop = Stop.find(track.signal(), pluck.onset(), end, rate);
        if (stop.isPresent()) {
            found = Optional.of(new Disturbance(Disturbance.Kind.STOP, stop.getAsInt() / rate));
            end = stop.getAsInt();
        }
        return new FreeDecay(pluck, Math.max(pluck.onset(), end), found);
    }
}
