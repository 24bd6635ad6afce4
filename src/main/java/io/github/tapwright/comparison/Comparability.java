package io.github.tapwright.comparison;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether two sittings may be compared, condition by condition, before any number is.
 *
 * <p>The rules are in {@link BodyConditions}, {@link BenchConditions}, {@link AirConditions}, {@link PlayedConditions} and {@link SharedRecordings}. What nobody wrote down counts as
 * doubtful, never as the same.
 *
 * @param checks one for each condition, in a fixed order; of recordings only where both sittings hold the same
 * @param despite why the maker wants to see refused figures all the same; empty if refused figures are not shown
 */
public record Comparability(List<ConditionCheck> checks, Optional<String> despite) {

    /** Keeps a copy of the list. */
    public Comparability {
        checks = List.copyOf(checks);
    }

    /**
     * Checks two sittings.
     *
     * @param first before
     * @param second after
     * @param bench what is known about this workshop
     * @param despite the maker's reason to see refused figures all the same
     * @return the check list
     */
    public static Comparability of(Sitting first, Sitting second, BenchKnowledge bench, Optional<String> despite) {
        List<ConditionCheck> checks = bodyAndBench(first, second);
        checks.addAll(AirConditions.check(
                first.conditions().air(), second.conditions().air(), bench));
        return new Comparability(checks, despite);
    }

    /**
     * Checks two sittings in which strings were played.
     *
     * @param first before
     * @param second after
     * @param window the humidity the workshop keeps
     * @param despite the maker's reason to see refused figures all the same
     * @return the check list
     */
    public static Comparability ofPlayed(Sitting first, Sitting second, ShopWindow window, Optional<String> despite) {
        List<ConditionCheck> checks = bodyAndBench(first, second);
        checks.addAll(PlayedConditions.check(first, second, window));
        return new Comparability(checks, despite);
    }

    private static List<ConditionCheck> bodyAndBench(Sitting first, Sitting second) {
        List<ConditionCheck> checks = new ArrayList<>();
        SharedRecordings.shared(first, second)
                .ifPresent(name -> checks.add(ConditionCheck.all(
                        "recording",
                        Grade.REFUSED,
                        "both hold " + name + ": one recording cannot differ from itself; record anew")));
        checks.addAll(BodyConditions.check(SittingOutline.of(first), SittingOutline.of(second)));
        checks.addAll(BenchConditions.check(first, second));
        return checks;
    }

    /**
     * What all conditions together do to one quantity.
     *
     * @param quantity which
     * @return the worst grade any condition gives it
     */
    public Grade grade(Quantity quantity) {
        return checks.stream().map(c -> c.grade(quantity)).reduce(Grade.FINE, Grade::or);
    }

    /**
     * Whether figures of a quantity are shown.
     *
     * @param quantity which
     * @return false if they are refused and the maker did not insist
     */
    public boolean shows(Quantity quantity) {
        return grade(quantity) != Grade.REFUSED || despite.isPresent();
    }

    /**
     * The conditions that are not fine.
     *
     * @return worst first
     */
    public List<ConditionCheck> troubles() {
        return checks.stream()
                .filter(c -> c.worst() != Grade.FINE)
                .sorted((a, b) -> b.worst().compareTo(a.worst()))
                .toList();
    }
}
