package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.Grade.DOUBTFUL;
import static io.github.tapwright.comparison.Grade.FINE;
import static io.github.tapwright.comparison.Grade.REFUSED;

import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingOutline;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What was on and in the instrument: procedure, soundhole, strings, stage, added mass.
 *
 * <p>A covered hole takes the main air away and moves the main top [ChristensenVistisen1980]; free strings drain the body and beat with
 * it; strings pull at the bridge and weigh on the top (common practice, no source).
 */
final class BodyConditions {

    private BodyConditions() {}

    static List<ConditionCheck> check(SittingOutline first, SittingOutline second) {
        Conditions a = first.conditions();
        Conditions b = second.conditions();
        boolean taps = procedure(first).equals(Procedure.BodyTaps.KEY);
        return List.of(
                procedures(first, second),
                method(first, second),
                hole(Pair.of(a, b, BodyConditions::hole)),
                strings(Pair.of(a, b, c -> c.strings().state())),
                stringSet(Pair.of(a, b, c -> c.strings().setName()), taps),
                stage(Pair.of(a, b, Conditions::stage)),
                addedMass(Pair.of(a, b, Conditions::addedMass)));
    }

    private static ConditionCheck procedures(SittingOutline first, SittingOutline second) {
        boolean same = procedure(first).equals(procedure(second));
        return ConditionCheck.all(
                "procedure",
                same ? FINE : REFUSED,
                same
                        ? procedure(first)
                        : procedure(first) + " / " + procedure(second) + ": these do not measure the same thing");
    }

    private static String procedure(SittingOutline sitting) {
        return sitting.procedure();
    }

    private static ConditionCheck method(SittingOutline first, SittingOutline second) {
        String a = first.methodVersion();
        String b = second.methodVersion();
        return ConditionCheck.all(
                "method",
                a.equals(b) ? FINE : DOUBTFUL,
                a.equals(b) ? a : a + " / " + b + ": analyse the older one again with sitting reanalyse");
    }

    private static ConditionCheck hole(Pair<HoleState> hole) {
        String words = hole.words(h -> h.name().toLowerCase(Locale.ROOT));
        if (hole.differ()) {
            return ConditionCheck.all("soundhole", REFUSED, words + ": covering it makes another body of it");
        }
        return ConditionCheck.all(
                "soundhole", hole.same() ? FINE : DOUBTFUL, hole.same() ? words : words + ": write it down");
    }

    private static Optional<HoleState> hole(Conditions conditions) {
        return Optional.of(conditions.hole()).filter(h -> h != HoleState.UNKNOWN);
    }

    private static ConditionCheck strings(Pair<StringState> strings) {
        String words = strings.words(StringState::words);
        if (strings.same()) {
            return ConditionCheck.all("strings", FINE, words);
        }
        if (!strings.known()) {
            return ConditionCheck.all("strings", DOUBTFUL, words + ": write it down");
        }
        boolean bothOn = !strings.first().equals(Optional.of(StringState.OFF))
                && !strings.second().equals(Optional.of(StringState.OFF));
        return bothOn
                ? ConditionCheck.all("strings", REFUSED, words + ": free strings ring along and drain the body")
                : ConditionCheck.all(
                        "strings", DOUBTFUL, words + ": their pull and weight move every resonance of the top");
    }

    private static ConditionCheck stringSet(Pair<String> set, boolean taps) {
        String words = set.words(s -> s);
        Grade otherwise = taps ? FINE : DOUBTFUL;
        return ConditionCheck.of(
                "string set",
                FINE,
                set.same() ? FINE : otherwise,
                set.same() ? FINE : otherwise,
                set.same() || taps ? words : words + ": another set, or an older one, sounds different by itself");
    }

    private static ConditionCheck stage(Pair<Stage> stage) {
        String words = stage.words(Stage::words);
        if (!stage.known()) {
            return ConditionCheck.all("stage", DOUBTFUL, words + ": write it down");
        }
        boolean strungAlike =
                stage.first().map(StageClass::of).equals(stage.second().map(StageClass::of));
        return ConditionCheck.all(
                "stage",
                strungAlike ? FINE : DOUBTFUL,
                strungAlike ? words : words + ": bridge and strings were added in between");
    }

    /** An absent mass is none, not an unknown one; an unknown place may be another one. */
    private static ConditionCheck addedMass(Pair<AddedMass> mass) {
        String words = mass.first().map(BodyConditions::words).orElse("none") + " / "
                + mass.second().map(BodyConditions::words).orElse("none");
        if (mass.first().equals(mass.second())) {
            return ConditionCheck.all("added mass", FINE, words);
        }
        boolean alike = mass.known()
                && mass.first().map(AddedMass::grams).equals(mass.second().map(AddedMass::grams));
        boolean placesKnown = mass.first().flatMap(AddedMass::place).isPresent()
                && mass.second().flatMap(AddedMass::place).isPresent();
        return alike && !placesKnown
                ? ConditionCheck.all("added mass", DOUBTFUL, words + ": write down where it sat")
                : ConditionCheck.all(
                        "added mass", REFUSED, words + ": a mass makes another body of it, which is what it is for");
    }

    private static String words(AddedMass mass) {
        return String.format(Locale.ROOT, "%.4g g", mass.grams())
                + mass.place().map(p -> " on " + p).orElse(", place unknown");
    }
}
