package io.github.tapwright.desktop.notes;

import io.github.tapwright.note.Finding;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.statistics.Figures;

/** What a map of the fingerboard shows. */
public enum BoardQuantity {
    /** Loudness of each pluck. */
    LEVEL(
            "Level LAFmax",
            "dB re full scale",
            0,
            3,
            "How loud each pluck was at its loudest; the strength of the pluck is in it."),
    /** T30 or T20. */
    DECAY("Decay time", "s for 60 dB", 1, 0.5, "By T30 where the recording carries it, else T20."),
    /** EDT. */
    EARLY_DECAY("Early decay", "s for 60 dB", 1, 0.5, "The pace of the first 10 dB; dead notes are found by it."),
    /** Distance from the equally tempered fret. */
    PITCH(
            "Pitch off the fret",
            "cents",
            0,
            10,
            "Above (+) or below (−) equal temperament; how hard the finger pressed is in it."),
    /** Where the spectrum has its middle. */
    CENTROID("Spectral centroid", "Hz", 0, 200, "The middle of the spectrum: more is brighter.");

    private final String words;
    private final String unit;
    private final int places;
    private final double leastRange;
    private final String meaning;

    BoardQuantity(String words, String unit, int places, double leastRange, String meaning) {
        this.words = words;
        this.unit = unit;
        this.places = places;
        this.leastRange = leastRange;
        this.meaning = meaning;
    }

    /**
     * Its name with the unit.
     *
     * @return as on the choice
     */
    public String words() {
        return words + " (" + unit + ")";
    }

    /**
     * What the maker should know about it.
     *
     * @return one sentence
     */
    public String meaning() {
        return meaning;
    }

    /** The narrowest spread the whole ramp of shades stands for, so that tiny differences do not look large. */
    double leastRange() {
        return leastRange;
    }

    Finding<Double> of(Fingerboard.Note note, Tuning tuning) {
        return switch (this) {
            case LEVEL -> note.lafMaxDb();
            case DECAY -> note.decayTimeSeconds();
            case EARLY_DECAY -> note.earlyDecayTimeSeconds();
            case PITCH -> note.pitchErrorCents(tuning);
            case CENTROID -> note.result().spectralCentroidHz();
        };
    }

    /** The figure as it stands in a cell. */
    String text(double figure) {
        return this == PITCH ? Figures.difference(figure, places) : Figures.text(figure, places);
    }

    String unit() {
        return unit;
    }
}
