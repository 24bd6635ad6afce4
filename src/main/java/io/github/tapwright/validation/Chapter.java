package io.github.tapwright.validation;

import java.util.List;

/**
 * A section that has been run.
 *
 * @param title its heading
 * @param about what was calculated
 * @param outcomes one for each check
 */
public record Chapter(String title, String about, List<Outcome> outcomes) {

    /** Keeps a copy of the list. */
    public Chapter {
        outcomes = List.copyOf(outcomes);
    }

    static Chapter run(Section section) {
        return new Chapter(section.title(), section.about(), outcomes(section));
    }

    /** A section whose list cannot even be made has failed as a whole; the others still run. */
    private static List<Outcome> outcomes(Section section) {
        try {
            return section.checks().stream().map(Check::run).toList();
        } catch (RuntimeException e) {
            Check whole = new Check(
                    "the whole section",
                    0,
                    "",
                    "this program",
                    Tolerance.within(0, "it must be possible to make the list"),
                    () -> {
                        throw e;
                    });
            return List.of(whole.run());
        }
    }

    /**
     * How many lie within their tolerance.
     *
     * @return at most as many as there are
     */
    public int within() {
        return (int) outcomes.stream().filter(Outcome::isWithin).count();
    }
}
