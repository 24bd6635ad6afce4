package io.github.tapwright.chart;

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
     * One partial.
     *
     * @param frequencyHz where
     * @param levelDb level just after the pluck, dB re full scale
     * @param earlySeconds 60 dB time of its fast stage, or of its only one; empty if refused
     * @param lateSeconds 60 dB time of its slow stage; empty if it has none
     */
    public record Stem(
            double frequencyHz, double levelDb, Optional<Double> earlySeconds, Optional<Double> lateSeconds) {}
}
