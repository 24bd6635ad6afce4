package io.github.tapwright.validation;

import io.github.tapwright.note.DecayTime;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Partial;
import io.github.tapwright.note.WholeDecay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Function;

/** Pitch, inharmonicity and decay of made notes; EDT, T20 and T30 of known decays. */
final class NoteSection implements Section {

    private static final String MADE = "derived: made by formula, seed 17";
    private static final String BY_DEFINITION =
            "by definition in [ISO3382-1]: all three times of one exponential are its 60 dB time";
    private static final double PITCH_HZ = 196;
    private static final double B = 5e-5;

    @Override
    public String title() {
        return "Notes and their decay";
    }

    @Override
    public String about() {
        return "Strings made by formula, in seeded noise, through the whole analysis of a note.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        string(checks);
        for (double seconds : new double[] {0.55, 1.5, 3}) {
            NoteResult note = new MadeNote(PITCH_HZ, B, n -> seconds, Math.max(0.9, seconds), 2e-5).analysed();
            String name = "one decay of " + Numbers.expected(seconds) + " s, ";
            decay(checks, name + "EDT", seconds, note, WholeDecay::early);
            decay(checks, name + "T20", seconds, note, WholeDecay::t20);
            decay(checks, name + "T30", seconds, note, WholeDecay::t30);
        }
        return checks;
    }

    private static void string(List<Check> checks) {
        MadeNote made = new MadeNote(PITCH_HZ, B, n -> 3.0 / n, 3, 1e-5);
        NoteResult note = made.analysed();
        Function<Integer, Partial> partial = n -> note.partials().stream()
                .filter(p -> p.number() == n)
                .findFirst()
                .orElseThrow();
        double first = made.partialHz(1);
        add(
                checks,
                "pitch of a G3",
                first,
                "Hz",
                Tolerance.within(first * 0.0003, "half a cent"),
                () -> note.pitch().found().orElseThrow().hz().value());
        add(
                checks,
                "inharmonicity B",
                B,
                "",
                Tolerance.within(0.02 * B, "2 %, the project's own promise"),
                () -> note.inharmonicity().found().orElseThrow().value());
        for (int n : new int[] {1, 2, 3, 4, 6}) {
            double seconds = 3.0 / n;
            add(
                    checks,
                    "decay time of partial " + n,
                    seconds,
                    "s",
                    Tolerance.within(0.03 * seconds, "3 %, the project's own promise"),
                    () -> partial.apply(n).decay().whole().orElseThrow().value());
        }
    }

    private static void decay(
            List<Check> checks,
            String quantity,
            double seconds,
            NoteResult note,
            Function<WholeDecay, Finding<DecayTime>> range) {
        checks.add(new Check(
                quantity,
                seconds,
                "s",
                BY_DEFINITION,
                Tolerance.within(0.03 * seconds, "3 %, the project's own promise in noise"),
                () -> range.apply(note.decay()).found().orElseThrow().seconds().value()));
    }

    private static void add(
            List<Check> checks,
            String quantity,
            double expected,
            String unit,
            Tolerance tolerance,
            DoubleSupplier computation) {
        checks.add(new Check(quantity, expected, unit, MADE, tolerance, computation));
    }
}
