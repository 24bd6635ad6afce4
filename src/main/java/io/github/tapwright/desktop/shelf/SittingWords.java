package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.sitting.ConditionLine;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.WrittenDown;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the correction of a sitting did, in words.
 *
 * @param zone the workshop's
 */
record SittingWords(ZoneId zone) {

    /** What was changed, and whether figures were analysed anew for it. */
    String of(EditSitting.Edited edited, Units units) {
        WrittenDown after = WrittenDown.of(edited.sitting());
        return Stream.concat(
                        Stream.of(Written.inShort(changes(edited.before(), after, units)))
                                .filter(words -> !words.isEmpty()),
                        analysed(edited).stream())
                .collect(Collectors.joining(". "));
    }

    /** What would change, and whether it asks for a new analysis. */
    String preview(WrittenDown before, WrittenDown after, boolean ofTaps, Units units) {
        return Written.preview(changes(before, after, units))
                + (before.instrument().equals(after.instrument())
                        ? ""
                        : " Recordings, results and names go with it to that instrument.")
                + (!ofTaps || before.conditions().hole() == after.conditions().hole()
                        ? ""
                        : " The recordings are analysed anew, because the soundhole decides which names are suggested;"
                                + " earlier results stay.");
    }

    private List<String> changes(WrittenDown before, WrittenDown after, Units units) {
        return Written.changes(lines(before, units), lines(after, units));
    }

    private static Optional<String> analysed(EditSitting.Edited edited) {
        if (edited.added().isPresent()) {
            return Optional.of("Analysed anew for what is written down now; earlier results stay beside it");
        }
        return edited.holeChanged()
                ? Optional.of("Analysed anew for this soundhole: every name and every figure is the same")
                : Optional.empty();
    }

    private List<Written> lines(WrittenDown of, Units units) {
        return Stream.concat(
                        Stream.of(
                                new Written(
                                        "instrument",
                                        Optional.of(of.instrument().text())),
                                new Written("taken", Optional.of(of.takenAt().text(zone)))),
                        ConditionLine.of(of.conditions()).stream().map(line -> written(line, of.conditions(), units)))
                .toList();
    }

    private static Written written(ConditionLine line, Conditions of, Units units) {
        return new Written(
                line.name(),
                line.name().equals("temperature")
                        ? of.air().temperatureCelsius().map(t -> units.text(t) + " " + units.sign())
                        : line.words());
    }
}
