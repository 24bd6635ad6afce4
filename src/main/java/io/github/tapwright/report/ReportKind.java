package io.github.tapwright.report;

import io.github.tapwright.instrument.Keyed;
import java.util.Optional;

/** Whom a report is for. */
public enum ReportKind implements Keyed {
    /** Whoever plays or buys the instrument: plain words, one or two pages. */
    CLIENT("client", "client report"),
    /** The workshop: every number with its uncertainty, every setting, every hash. */
    WORKSHOP("workshop", "workshop report");

    private final String key;
    private final String words;

    ReportKind(String key, String words) {
        this.key = key;
        this.words = words;
    }

    @Override
    public String key() {
        return key;
    }

    @Override
    public String words() {
        return words;
    }

    /**
     * Finds a kind by its key or its words.
     *
     * @param text key or words, any case
     * @return the value, or empty if none fits
     */
    public static Optional<ReportKind> find(String text) {
        return Keyed.find(values(), text);
    }
}
