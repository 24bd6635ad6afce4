package io.github.tapwright.chart;

import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Partial;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Optional;

/**
 * What a picture of a plucked note shows: level and decay time of every partial.
 *
 * @param title what was measured
 * @param subtitles lines below the title
 * @param partials at least one
 */
public record NotePicture(String title, List<String> subtitles, List<Stem> partials) implements Picture {

    /** Refuses a picture of nothing. */
    public NotePicture {
        subtitles = List.copyOf(subtitles);
        partials = List.copyOf(partials);
        if (partials.isEmpty()) {
            throw new IllegalArgumentException("a picture of a note needs a partial");
        }
    }

    /**
     * The picture of a note.
     *
     * @param name what the note is called
     * @param result what was found in it
     * @return empty if it has no partials
     */
    public static Optional<NotePicture> of(String name, NoteResult result) {
        if (result.partials().isEmpty()) {
            return Optional.empty();
        }
        String pitch = result.pitch()
                .found()
                .map(p -> Figures.text(p.hz()) + " Hz, " + p.nearest())
                .orElse("no pitch");
        return Optional.of(new NotePicture(
                "Partials of a plucked note",
                List.of(name + ": " + pitch),
                result.partials().stream().map(Stem::of).toList()));
    }

    /**
     * One partial.
     *
     * @param frequencyHz where
     * @param levelDb level just after the pluck, dB re a full-scale sine
     * @param earlySeconds 60 dB time of its fast stage, or of its only one; empty if refused, or if two stages cannot be told apart
     * @param lateSeconds 60 dB time of its slow stage; empty if it has none, or if it cannot be told
     */
    public record Stem(
            double frequencyHz, double levelDb, Optional<Double> earlySeconds, Optional<Double> lateSeconds) {

        private static Stem of(Partial p) {
            return new Stem(
                    p.frequencyHz().value(),
                    p.levelDb().value(),
                    p.decay().early().map(Estimate::value),
                    p.decay().late().map(Estimate::value));
        }
    }
}
