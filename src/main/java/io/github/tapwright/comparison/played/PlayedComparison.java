package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.PluckComparison;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.HolmAdjustment;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What was played in two sittings, side by side.
 *
 * @param comparability whether they may be compared at all
 * @param changes one for each quantity
 * @param fastNotes notes that die away fast in either run; none for plucks
 */
public record PlayedComparison(Comparability comparability, List<PlayedChange> changes, List<FastNote> fastNotes) {

    /** Keeps copies of the lists. */
    public PlayedComparison {
        changes = List.copyOf(changes);
        fastNotes = List.copyOf(fastNotes);
    }

    /**
     * Compares two runs of notes, place by place.
     *
     * @param first before
     * @param second after
     * @param spread how far setting up and playing again moves figures
     * @param comparability whether they may be compared
     * @return the comparison
     */
    static PlayedComparison ofNotes(
            Fingerboard first, Fingerboard second, PlayingSpread spread, Comparability comparability) {
        List<PlayedChange> changes = Stream.of(
                        PlayedQuantity.EARLY_DECAY,
                        PlayedQuantity.DECAY_TIME,
                        PlayedQuantity.LEVEL,
                        PlayedQuantity.PITCH)
                .map(quantity -> {
                    NotePairs pairs = NotePairs.of(quantity, first, second);
                    return PlayedChange.of(
                            quantity,
                            pairs.strings(quantity),
                            pairs.places(quantity),
                            pairs.overall(),
                            spread.of(quantity),
                            comparability);
                })
                .toList();
        return new PlayedComparison(comparability, adjusted(changes), FastNote.of(first, second));
    }

    /**
     * Compares repeated plucks, string by string.
     *
     * @param first before
     * @param second after
     * @param spread how far setting up and plucking again moves figures
     * @param comparability whether they may be compared
     * @return the comparison
     */
    static PlayedComparison ofPlucks(
            PluckRun first, PluckRun second, PlayingSpread spread, Comparability comparability) {
        List<PlayedChange> changes = Stream.of(PlayedQuantity.LEVEL, PlayedQuantity.LOUDNESS)
                .map(quantity -> {
                    PluckComparison plucks = plucks(quantity, first, second);
                    List<OnString> strings = plucks.strings().stream()
                            .map(PlayedComparison::onString)
                            .toList();
                    return PlayedChange.of(
                            quantity, strings, List.of(), plucks.overall(), spread.of(quantity), comparability);
                })
                .toList();
        return new PlayedComparison(comparability, adjusted(changes), List.of());
    }

    private static PluckComparison plucks(PlayedQuantity quantity, PluckRun first, PluckRun second) {
        return PluckComparison.of(
                quantity.words(), Optional.empty(), first.plucks(), second.plucks(), figure(quantity));
    }

    /** How loud a pluck was. */
    static Function<Pluck, Optional<Double>> figure(PlayedQuantity quantity) {
        return quantity == PlayedQuantity.LEVEL ? Pluck::lafMaxDb : Pluck::momentaryMaxLufs;
    }

    private static OnString onString(PluckComparison.OnString s) {
        return new OnString(
                s.string(),
                s.first().count(),
                s.second().count(),
                s.first().mean(),
                s.second().mean(),
                s.difference());
    }

    private static List<PlayedChange> adjusted(List<PlayedChange> changes) {
        return HolmAdjustment.of(
                changes,
                c -> c.isAsked() ? OptionalDouble.of(c.probability()) : OptionalDouble.empty(),
                PlayedChange::adjusted);
    }

    /**
     * Whether there is anything to compare.
     *
     * @return false if no string was played in both, and no note at the same place
     */
    public boolean isAboutAnything() {
        return changes.stream().anyMatch(c -> !c.strings().isEmpty());
    }

    /**
     * Whether how far playing again moves any of it is assumed.
     *
     * @return false where all of it was studied, or said by the maker
     */
    public boolean restsOnAssumed() {
        return changes.stream()
                .filter(PlayedChange::isJudged)
                .anyMatch(c -> c.again().basis().isAssumed());
    }

    /**
     * How many questions were asked at once.
     *
     * @return quantities over all strings that are shown
     */
    public int questions() {
        return (int) changes.stream().filter(PlayedChange::isAsked).count();
    }
}
