package io.github.tapwright.cli;

import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.group.Evidence;
import io.github.tapwright.comparison.group.GroupDifference;
import io.github.tapwright.comparison.group.GroupFigures;
import io.github.tapwright.comparison.group.GroupStudy;
import io.github.tapwright.comparison.group.GroupWords;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.picture.GroupPictures;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Summary;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Groups against each other, for people: who is in them, the figures, the words. */
final class GroupText {

    private final Terminal terminal;

    GroupText(Terminal terminal) {
        this.terminal = terminal;
    }

    void print(GroupStudy study) {
        printMembers(study);
        printLeftOut(study.leftOut());
        if (study.differences().isEmpty()) {
            terminal.say("%nThere are no two groups to compare.");
            return;
        }
        study.pairs().forEach(differences -> printPair(differences, study));
    }

    /** Writes the mean response of each group into one picture. */
    void draw(GroupStudy study, Path file) {
        new PictureOption.Drawn(GroupPictures.of(study)).write(file, terminal, "there is no curve to draw");
    }

    private void printMembers(GroupStudy study) {
        terminal.say(
                "Groups by %s, sittings %s",
                study.settings().by().words(), study.settings().stage().words());
        for (GroupStudy.Membership group : study.members()) {
            terminal.say(
                    "  %s: %s %s (sittings %s)",
                    group.group(),
                    group.instruments().size() == 1 ? "instrument" : "instruments",
                    group.instruments().stream().map(ShopNumber::text).collect(Collectors.joining(", ")),
                    group.sittings().stream()
                            .map(SittingOutline::id)
                            .map(Object::toString)
                            .collect(Collectors.joining(", ")));
        }
        terminal.say(
                "Frequencies are corrected to %s, where the air of a sitting is known.",
                words(study.air().air()));
    }

    private static String words(Air air) {
        return air.relativeHumidityPercent()
                        .map(h -> Figures.text(h, 1) + " % relative humidity")
                        .orElse("no humidity (none is known)")
                + air.temperatureCelsius()
                        .map(t -> " and " + Figures.text(t, 1) + " °C")
                        .orElse("");
    }

    private void printLeftOut(List<LeftOut> leftOut) {
        if (!leftOut.isEmpty()) {
            terminal.say("%nLeft out");
            leftOut.forEach(l -> terminal.say("  sitting %s of %s: %s", l.sitting(), l.instrument(), l.reason()));
        }
    }

    private void printPair(List<GroupDifference> differences, GroupStudy study) {
        terminal.say("%n%s", GroupWords.pair(differences.get(0)));
        Table table = new Table(
                "first: n",
                "mean",
                "s",
                "second: n",
                "mean",
                "s",
                "difference",
                "g",
                "p",
                "dealt out",
                "all asked",
                "quantity");
        differences.forEach(d -> table.add(row(d)));
        table.lines().forEach(terminal.out()::println);
        if (differences.stream().noneMatch(d -> d.evidence().isPresent())) {
            terminal.say(
                    "  %s against %s: too few to say anything; measure %d of each at least.",
                    Figures.count(most(differences, true), "instrument"),
                    most(differences, false),
                    GroupFigures.FEWEST);
            return;
        }
        terminal.say(
                "  Difference ± half its 95 %% interval; g in standard deviations between instruments; p of the difference,");
        terminal.say(
                "  of dealing the instruments out anew, and corrected for all %d questions asked.", study.questions());
        terminal.say("%n  In words");
        differences.forEach(d -> terminal.say("  - %s", GroupWords.sentence(d, study.questions())));
        printMixed(differences);
    }

    private void printMixed(List<GroupDifference> differences) {
        List<GroupDifference> mixed = differences.stream()
                .filter(d -> d.evidence().flatMap(Evidence::mixed).isPresent())
                .toList();
        if (!mixed.isEmpty()) {
            terminal.say(
                    "%n  The same through every sitting (instruments differ at random; humidity with its own slope where marked)");
            mixed.forEach(d -> d.evidence()
                    .flatMap(Evidence::mixed)
                    .ifPresent(m -> terminal.say(
                            "  - %s: %s%s, %s",
                            d.subject().words(),
                            Figures.difference(m.difference()),
                            m.perPointOfHumidity()
                                    .map(h -> ", humidity " + Figures.difference(h) + " a point")
                                    .orElse(""),
                            Figures.count(m.sittings(), "sitting"))));
        }
    }

    private static int most(List<GroupDifference> differences, boolean second) {
        return differences.stream()
                .mapToInt(d -> (second ? d.second() : d.first()).count())
                .max()
                .orElse(0);
    }

    private static String[] row(GroupDifference d) {
        Optional<Evidence> evidence = d.evidence();
        int places = d.subject().quantity().unit().equals("s") ? 3 : 2;
        return new String[] {
            Integer.toString(d.first().count()),
            Figures.text(d.first().mean(), places),
            scatter(d.first(), places),
            Integer.toString(d.second().count()),
            Figures.text(d.second().mean(), places),
            scatter(d.second(), places),
            evidence.map(e -> Figures.difference(e.difference())).orElse("too few"),
            evidence.flatMap(Evidence::effectSize)
                    .map(g -> Figures.difference(g.value(), 1))
                    .orElse("–"),
            evidence.map(e -> figure(e.probability())).orElse("–"),
            evidence.map(e -> figure(e.permutation().probability())).orElse("–"),
            evidence.map(e -> figure(e.adjustedProbability())).orElse("–"),
            d.subject().wordsWithUnit()
        };
    }

    private static String figure(double probability) {
        return Figures.probability(probability);
    }

    private static String scatter(GroupFigures group, int places) {
        return group.summary()
                .map(Summary::standardDeviation)
                .map(s -> Figures.text(s, places))
                .orElse("–");
    }
}
