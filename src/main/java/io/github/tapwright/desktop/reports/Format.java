package io.github.tapwright.desktop.reports;

/** How a report is written. */
public enum Format {
    /** To print and to send. */
    PDF("PDF", "pdf"),
    /** To read in a browser. */
    HTML("HTML", "html");

    private final String words;
    private final String ending;

    Format(String words, String ending) {
        this.words = words;
        this.ending = ending;
    }

    /**
     * How it reads.
     *
     * @return in words
     */
    public String words() {
        return words;
    }

    /**
     * How its files end.
     *
     * @return without the dot
     */
    public String ending() {
        return ending;
    }
}
