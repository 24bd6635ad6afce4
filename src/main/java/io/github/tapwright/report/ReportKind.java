package io.github.tapwright.report;

import io.github.tapwright.instrument.Keyed;

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
}
