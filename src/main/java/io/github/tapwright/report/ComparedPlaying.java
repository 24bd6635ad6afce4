package io.github.tapwright.report;

import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.FastNote;
import io.github.tapwright.comparison.played.PlayedComparison;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.comparison.played.PlayedWords;
import io.github.tapwright.report.picture.PlayedMaps;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What a report says of two sittings of notes, or of two of plucks. */
final class ComparedPlaying implements ComparedFindings {

    private static final int MOST_FAST_NOTES = 8;
    /** What a client can read at a glance, as on the maps of one sitting. */
    private static final Set<PlayedQuantity> AT_A_GLANCE = EnumSet.of(PlayedQuantity.EARLY_DECAY, PlayedQuantity.LEVEL);

    private final ComparePlayed.Compared compared;
    private final PlayedComparison comparison;

    ComparedPlaying(ComparePlayed.Compared compared) {
        this.compared = compared;
        this.comparison = compared.comparison();
    }

    @Override
    public TwoSittings two() {
        return compared;
    }

    @Override
    public SetUpSpread spread() {
        return compared.again().otherwise();
    }

    @Override
    public List<Node> inBrief() {
        List<Node> content = inWords(MOST_FAST_NOTES);
        if (comparison.isAboutAnything()) {
            content.add(Words.quiet(
                    "B against A, over all strings. In brackets: where the true difference lies, 19 times in 20,"
                            + " setting up and playing again included: that moves "
                            + PlayedWords.again(comparison.changes())
                            + ". What listeners notice is known from published tests with other sounds. " + terms()));
            if (isOfPlucks()) {
                comparison.changes().stream()
                        .filter(c -> c.quantity() == PlayedQuantity.LEVEL)
                        .forEach(c -> PlayedTables.strings(c, content));
            }
        }
        return content;
    }

    @Override
    public List<Node> inFull() {
        List<Node> content = inWords(Integer.MAX_VALUE);
        if (comparison.isAboutAnything()) {
            content.addAll(new PlayedTables(comparison).inFull());
        }
        return content;
    }

    private List<Node> inWords(int mostFastNotes) {
        if (!comparison.isAboutAnything()) {
            return new ArrayList<>(List.of(Words.paragraph(PlayedWords.NOTHING)));
        }
        List<Node> content = new ArrayList<>();
        content.add(Element.of(Tag.H3, "In words"));
        content.add(Words.list(
                comparison.changes().stream().map(PlayedWords::sentence).toList()));
        List<FastNote> fast = comparison.fastNotes();
        if (!fast.isEmpty()) {
            content.add(Element.of(Tag.H3, "Notes that die away much faster than their neighbours"));
            Stream<String> more = fast.size() > mostFastNotes
                    ? Stream.of("and " + (fast.size() - mostFastNotes) + " more, which the workshop's report names")
                    : Stream.of();
            content.add(
                    Words.list(Stream.concat(fast.stream().limit(mostFastNotes).map(FastNote::words), more)
                            .toList()));
        }
        return content;
    }

    private boolean isOfPlucks() {
        return compared.second().latest().findings().plucks().isPresent();
    }

    private String terms() {
        return isOfPlucks()
                ? "LAFmax: the largest A-weighted level, time weighting fast; momentary loudness: the largest over 400 ms."
                : "Early decay: how fast a note dies away at first; decay time: how fast further on; both as the time to a thousandth of"
                        + " its pressure. LAFmax: its largest A-weighted level, time weighting fast.";
    }

    @Override
    public Optional<Illustration> drawn(ReportKind kind) {
        return PlayedMaps.onPage(comparison, q -> kind == ReportKind.WORKSHOP || AT_A_GLANCE.contains(q))
                .map(p -> new Illustration(
                        p,
                        "Over the fingerboard, B minus A: " + ClientReport.quantities(p),
                        "B minus A at every place played in both, the highest string on top, the nut to the left. Darker is more in"
                                + " B. Framed: dies away much faster than the frets around it, in A or in B. Single notes"
                                + " scatter; the words speak of all of them together."
                                + comparison
                                        .comparability()
                                        .despite()
                                        .map(why -> " Shown although the conditions forbid it: " + why)
                                        .orElse("")));
    }

    @Override
    public List<String> cannotTell() {
        List<String> cannot = new ArrayList<>();
        cannot.add("why A and B differ: strings, air, player, place and guitar all have their part in it");
        if (comparison.restsOnAssumed()) {
            cannot.add(
                    "how much of it playing again on the same day would bring; a study of one guitar played anew five times"
                            + " would show it");
        }
        if (!isOfPlucks()) {
            cannot.add(
                    "whether a single note is louder or rings longer: each was played once or a few times in each sitting");
        }
        return cannot;
    }
}
