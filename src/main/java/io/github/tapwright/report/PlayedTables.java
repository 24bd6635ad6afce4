package io.github.tapwright.report;

import io.github.tapwright.comparison.played.AtPlace;
import io.github.tapwright.comparison.played.PlayedChange;
import io.github.tapwright.comparison.played.PlayedComparison;
import io.github.tapwright.comparison.played.PlayedQuantity;
import io.github.tapwright.comparison.played.PlayedWords;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.report.xhtml.Element;
import io.github.tapwright.report.xhtml.Node;
import io.github.tapwright.report.xhtml.Tag;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Every number of two sittings of notes or plucks: over all strings, string by string, place by place. */
final class PlayedTables {

    private static final String NONE = "–";
    private static final String REFUSED = "refused";

    private final List<PlayedChange> changes;
    private final int questions;

    PlayedTables(PlayedComparison comparison) {
        this.changes = comparison.changes().stream()
                .filter(c -> !c.strings().isEmpty())
                .toList();
        this.questions = comparison.questions();
    }

    List<Node> inFull() {
        List<Node> content = new ArrayList<>();
        overall(content);
        changes.forEach(c -> strings(c, content));
        boolean shares = changes.stream().anyMatch(c -> isShare(c.quantity()));
        content.add(Words.quiet(
                "B minus A, ± half the 95 % interval of what was played on these days; setting up and playing"
                        + " again is not in it." + (shares ? " Of decay times in per cent of A's." : "")));
        places(content);
        return content;
    }

    private void overall(List<Node> content) {
        Grid grid = Grid.of("quantity|", "unit|", "B minus A", "95 % interval", "p", "p, all asked", "conditions|");
        changes.stream()
                .filter(PlayedChange::isJudged)
                .forEach(c -> grid.add(
                        c.quantity().words(),
                        c.quantity().unit(),
                        figure(c, c.estimate().map(e -> PlayedWords.difference(c.quantity(), e))),
                        figure(c, c.interval95().map(Figures::interval)),
                        figure(c, c.overall().map(o -> Figures.probability(c.probability()))),
                        figure(c, c.overall().map(o -> Figures.probability(c.adjustedProbability()))),
                        c.grade().words()));
        content.add(Element.of(Tag.H3, "Over all strings"));
        content.add(grid.element());
        content.add(Words.quiet("± half the 95 % interval, setting up and playing again included: that moves "
                + PlayedWords.again(changes) + ". p: of a difference so great by chance; " + questions
                + " questions were asked at once."));
    }

    private static String figure(PlayedChange change, Optional<String> figure) {
        return change.shown() ? figure.orElse(NONE) : REFUSED;
    }

    /** One quantity, string by string. */
    static void strings(PlayedChange change, List<Node> content) {
        Grid grid = Grid.of(PlayedWords.headings(change.quantity()));
        change.strings().forEach(s -> grid.add(PlayedWords.row(change, s)));
        content.add(Element.of(Tag.H3, "String by string: " + change.quantity().words()));
        content.add(grid.element());
    }

    /** A line for each place both runs have. */
    private void places(List<Node> content) {
        List<PlayedChange> placed =
                changes.stream().filter(c -> !c.places().isEmpty()).toList();
        if (placed.isEmpty()) {
            return;
        }
        Grid grid = Grid.of(Stream.concat(Stream.of("place|"), placed.stream().flatMap(PlayedTables::headings))
                .toArray(String[]::new));
        placed.stream()
                .flatMap(c -> c.places().stream())
                .map(AtPlace::place)
                .distinct()
                .sorted()
                .forEach(place -> grid.add(Stream.concat(
                                Stream.of(words(place)), placed.stream().flatMap(c -> figures(c, place)))
                        .toArray(String[]::new)));
        content.add(Element.of(Tag.H3, "Place by place"));
        content.add(grid.element());
        content.add(Words.quiet("Place: string/fret. Pitch: off the fret."));
    }

    private static Stream<String> headings(PlayedChange change) {
        PlayedQuantity quantity = change.quantity();
        return Stream.of(
                quantity.words() + " A (" + quantity.figureUnit() + ")",
                "B",
                "B\u00A0−\u00A0A (" + quantity.unit() + ")");
    }

    private static Stream<String> figures(PlayedChange change, Fret place) {
        PlayedQuantity quantity = change.quantity();
        return change.places().stream()
                .filter(p -> p.place().equals(place))
                .findFirst()
                .map(p -> Stream.of(
                        PlayedWords.figure(quantity, p.first()),
                        PlayedWords.figure(quantity, p.second()),
                        change.shown() ? Figures.difference(p.difference(), places(quantity)) : REFUSED))
                .orElseGet(() -> Stream.of(NONE, NONE, NONE));
    }

    private static int places(PlayedQuantity quantity) {
        return isShare(quantity) ? 0 : 1;
    }

    private static boolean isShare(PlayedQuantity quantity) {
        return quantity.unit().equals("%");
    }

    private static String words(Fret place) {
        return place.string() + "/" + place.fret();
    }
}
