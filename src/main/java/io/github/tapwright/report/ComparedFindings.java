package io.github.tapwright.report;

import io.github.tapwright.chart.Picture;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.report.xhtml.Node;
import java.util.List;
import java.util.Optional;

/** What a report says of two sittings once it has said whether they may be compared. */
interface ComparedFindings {

    /** Which two, and whether they may be compared. */
    TwoSittings two();

    /** How far setting up again moves figures of taps, as the comparison took it. */
    SetUpSpread spread();

    /** For a client. */
    List<Node> inBrief();

    /** For the workshop, with every number. */
    List<Node> inFull();

    /** Both sittings in one picture; empty if there is nothing to draw. */
    Optional<Illustration> drawn(ReportKind kind);

    /** What the comparison cannot tell, besides what the later sitting alone cannot. */
    default List<String> cannotTell() {
        return List.of();
    }

    /**
     * A picture with its words.
     *
     * @param picture what is drawn
     * @param alternative what it shows, for those who cannot see it
     * @param caption how to read it
     */
    record Illustration(Picture picture, String alternative, String caption) {}
}
