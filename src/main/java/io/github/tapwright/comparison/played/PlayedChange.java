package io.github.tapwright.comparison.played;

import io.github.tapwright.comparison.Audibility;
import io.github.tapwright.comparison.Comparability;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.HearingThreshold;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Interval;
import io.github.tapwright.statistics.StudentProbability;
import io.github.tapwright.statistics.UncertaintyBudget;
import io.github.tapwright.statistics.UncertaintyBudget.Component;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * One quantity of what was played in two sittings, string by string and over all strings.
 *
 * <p>Over all strings: the mean of the strings' differences, each weighing the same, with u² = u²(notes or plucks) + 2·s² for the spread s of
 * setting up and playing again ([GUM], 5.1.2), which is what {@link PlayedScatter#counted} says where it was studied. It has no more degrees of
 * freedom than s: effective ones would be many where s happens to come out small, and intervals too short. Nor has it more than notes or plucks
 * where s is assumed: an assumption makes no answer surer.
 *
 * @param quantity what is compared
 * @param strings one for each string both sittings have
 * @param places one for each place both runs have; none for plucks
 * @param again how far setting up and playing again moves it, on the scale of comparison; without meaning where it is not judged
 * @param overall over all strings, on the scale of comparison; empty where too little was played, and for pitch
 * @param grade what the conditions do to it
 * @param shown whether figures may be shown
 * @param adjustedProbability of a difference so great by chance alone, made larger for all questions asked at once; 1 where there is none
 */
public record PlayedChange(
        PlayedQuantity quantity,
        List<OnString> strings,
        List<AtPlace> places,
        KnownScatter again,
        Optional<UncertaintyBudget> overall,
        Grade grade,
        boolean shown,
        double adjustedProbability) {

    private static final String AGAIN = "setting up and playing again, A and B";

    /** Keeps copies of the lists. */
    public PlayedChange {
        strings = List.copyOf(strings);
        places = List.copyOf(places);
    }

    static PlayedChange of(
            PlayedQuantity quantity,
            List<OnString> strings,
            List<AtPlace> places,
            Optional<Estimate> played,
            KnownScatter again,
            Comparability comparability) {
        Optional<UncertaintyBudget> overall = !quantity.isJudged()
                ? Optional.empty()
                : played.map(p -> new UncertaintyBudget(
                        p.value(),
                        List.of(
                                new Component("notes or plucks of these days", p, 1),
                                new Component(AGAIN, both(again), 1)),
                        List.of()));
        return new PlayedChange(
                quantity,
                strings,
                places,
                again,
                overall,
                comparability.grade(quantity.kind()),
                comparability.shows(quantity.kind()),
                overall.map(b -> StudentProbability.twoSided(combined(b, again)))
                        .orElse(1.0));
    }

    /** By one and the same estimate: two parts would pretend twice its degrees of freedom. */
    private static Estimate both(KnownScatter again) {
        return again.estimate().times(Math.sqrt(2));
    }

    private static Estimate combined(UncertaintyBudget budget, KnownScatter again) {
        return budget.combinedAssuming(again.assumed(AGAIN).collect(Collectors.toSet()))
                .knownNoBetterThan(again.estimate());
    }

    PlayedChange adjusted(double probability) {
        return new PlayedChange(quantity, strings, places, again, overall, grade, shown, probability);
    }

    /**
     * Whether anything is said of it.
     *
     * @return false for pitch: the player tunes
     */
    public boolean isJudged() {
        return quantity.isJudged();
    }

    /** Whether it is a question with an answer. */
    boolean isAsked() {
        return shown && overall.isPresent();
    }

    /**
     * Over all strings.
     *
     * @return second less first on the scale of comparison, setting up and playing again included; empty as {@link #overall}
     */
    public Optional<Estimate> estimate() {
        return overall.map(b -> combined(b, again));
    }

    /**
     * Over all strings, in the quantity's unit.
     *
     * @return where the true difference lies, 19 times of 20
     */
    public Optional<Interval> interval95() {
        return estimate().map(e -> quantity.inUnit(e.interval95()));
    }

    /**
     * How often chance alone brings so great a difference, this question asked alone.
     *
     * @return two-sided, 0 to 1; 1 where there is none
     */
    public double probability() {
        return estimate().map(StudentProbability::twoSided).orElse(1.0);
    }

    /**
     * What one may say of it.
     *
     * @return the verdict
     */
    public Verdict verdict() {
        return estimate()
                .map(e -> Verdict.of(shown, e, adjustedProbability))
                .orElse(shown ? Verdict.CANNOT_TELL : Verdict.REFUSED);
    }

    /**
     * Whether people are likely to hear it.
     *
     * @return by the whole 95 % interval; empty where there is none
     */
    public Optional<Audibility> audibility() {
        double hundred = quantity.kind() == Quantity.DECAY_TIME ? 100 : 1;
        return interval95().map(i -> HearingThreshold.of(quantity.kind()).judge(i, hundred));
    }
}
