package io.github.tapwright.comparison;

import static io.github.tapwright.comparison.Grade.DOUBTFUL;
import static io.github.tapwright.comparison.Grade.FINE;
import static io.github.tapwright.comparison.Grade.REFUSED;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the instrument was held, struck and listened to.
 *
 * <p>Levels of taps are relative to the highest resonance of their own sitting, so that gain drops out of them; levels of notes and plucks are
 * not, and mean nothing across different gains without a calibration.
 */
final class BenchConditions {

    private static final double SAME_DISTANCE = 0.1;

    private BenchConditions() {}

    /** Whether a microphone stood at about the same distance. */
    static boolean isSameDistance(double mm, double otherMm) {
        return Math.abs(otherMm - mm) <= SAME_DISTANCE * mm;
    }

    static List<ConditionCheck> check(Sitting first, Sitting second) {
        Conditions a = first.conditions();
        Conditions b = second.conditions();
        boolean relative = first.latest().taps().isPresent();
        return List.of(
                text(
                        "support",
                        Pair.of(a, b, c -> c.placing().support()),
                        DOUBTFUL,
                        DOUBTFUL,
                        "a hand or a hard rest damps the body"),
                text(
                        "strike tool",
                        Pair.of(a, b, c -> c.placing().strikeTool()),
                        FINE,
                        DOUBTFUL,
                        "a harder tool excites more of the treble"),
                text(
                        "strike place",
                        Pair.of(a, b, c -> c.placing().strikePlace()),
                        FINE,
                        DOUBTFUL,
                        "each place excites the resonances differently"),
                text(
                        "microphone",
                        Pair.of(a, b, c -> c.microphone().model()),
                        FINE,
                        DOUBTFUL,
                        "each has its own frequency response"),
                distance(Pair.of(a, b, c -> c.microphone().distanceMm())),
                gain(first, second, relative));
    }

    private static ConditionCheck text(String name, Pair<String> pair, Grade decay, Grade level, String why) {
        String words = pair.words(Function.identity());
        return pair.same()
                ? ConditionCheck.all(name, FINE, words)
                : ConditionCheck.of(name, decay, decay, level, words + ": " + why);
    }

    private static ConditionCheck distance(Pair<Double> mm) {
        String words = mm.words(d -> Math.round(d) + " mm");
        boolean near = mm.known()
                && isSameDistance(mm.first().orElseThrow(), mm.second().orElseThrow());
        return near
                ? ConditionCheck.all("distance", FINE, words)
                : ConditionCheck.of(
                        "distance", FINE, FINE, DOUBTFUL, words + ": near sources weigh more in a near microphone");
    }

    private static ConditionCheck gain(Sitting first, Sitting second, boolean relative) {
        Pair<CalibrationId> calibrations = Pair.of(first, second, BenchConditions::calibration);
        Pair<String> gain =
                Pair.of(first, second, s -> s.conditions().microphone().gain());
        String words = gain.words(Function.identity());
        if (relative) {
            return ConditionCheck.all("gain", FINE, words + ": it drops out of levels of taps");
        }
        Optional<ConditionCheck> withdrawn = withdrawn(first, second);
        if (withdrawn.isPresent()) {
            return withdrawn.get();
        }
        if (calibrations.known()) {
            return ConditionCheck.all(
                    "gain", FINE, "calibrations " + calibrations.words(CalibrationId::toString) + " take it out");
        }
        if (calibrations.first().isPresent() != calibrations.second().isPresent()) {
            return ConditionCheck.of(
                    "gain",
                    FINE,
                    FINE,
                    REFUSED,
                    "calibrations " + calibrations.words(CalibrationId::toString)
                            + ": levels re 20 µPa and levels re full scale cannot stand side by side");
        }
        if (gain.same()) {
            return ConditionCheck.all("gain", FINE, words);
        }
        return ConditionCheck.of(
                "gain",
                FINE,
                FINE,
                REFUSED,
                words + ": levels without a calibration mean nothing at different or unknown gains"
                        + (gain.known() ? "" : "; write the gain down with sitting edit"));
    }

    /** Refuses levels that rest on a calibration withdrawn since; empty if neither sitting's do. */
    private static Optional<ConditionCheck> withdrawn(Sitting first, Sitting second) {
        String words = Stream.of(first, second)
                .flatMap(s -> s.latest().findings().plucks().flatMap(PluckRun::withdrawn).stream()
                        .map(why -> withdrawn("the calibration of sitting " + s.id(), s.id(), why)))
                .collect(Collectors.joining("; "));
        return words.isEmpty() ? Optional.empty() : Optional.of(ConditionCheck.of("gain", FINE, FINE, REFUSED, words));
    }

    /** That the calibration levels rest on is withdrawn, and what to do about it. */
    static String withdrawn(String calibration, SittingId sitting, OutOfUse why) {
        return calibration + " is withdrawn (" + why.reason() + "); measure its levels anew with sitting reanalyse "
                + sitting;
    }

    private static Optional<CalibrationId> calibration(Sitting sitting) {
        return sitting.latest().findings().plucks().flatMap(PluckRun::calibration);
    }
}
