package io.github.tapwright.validation;

import io.github.tapwright.mode.TapResult;
import io.github.tapwright.validation.MadeTaps.Mode;
import java.util.ArrayList;
import java.util.List;

/** Resonances of bodies whose truth is known because they were made here. */
final class KnownTapsSection implements Section {

    private static final List<Mode> BODY = List.of(
            new Mode(98, 24, 0.10),
            new Mode(125, 28, 0.04),
            new Mode(188, 32, 0.12),
            new Mode(205, 30, 0.09),
            new Mode(232, 36, 0.07),
            new Mode(270, 26, 0.05),
            new Mode(330, 40, 0.05),
            new Mode(395, 34, 0.06),
            new Mode(480, 44, 0.04));
    private static final List<Mode> PAIR = List.of(new Mode(200, 30, 0.2), new Mode(206.5, 30, 0.16));

    @Override
    public String title() {
        return "Resonances of a known body";
    }

    @Override
    public String about() {
        return "Six strikes of a made body in white noise, from samples to resonances, and a pair 6.5 Hz apart.";
    }

    @Override
    public List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        body(checks, "nine modes", BODY, new MadeTaps(BODY, 6, 3e-4, 11).analysed());
        body(checks, "close pair", PAIR, new MadeTaps(PAIR, 6, 3e-4, 13).analysed());
        return checks;
    }

    private static void body(List<Check> checks, String name, List<Mode> modes, TapResult found) {
        String source = "derived: made in closed form, seeded";
        checks.add(new Check(
                name + ", how many were found",
                modes.size(),
                "",
                source,
                Tolerance.within(0, "none missed and none invented"),
                () -> found.resonances().size()));
        for (Mode mode : modes) {
            String at = name + ", " + Numbers.expected(mode.hertz()) + " Hz";
            checks.add(new Check(
                    at + ", frequency",
                    mode.hertz(),
                    "Hz",
                    source,
                    Tolerance.within(0.1, "the project's own promise"),
                    () -> MadeTaps.nearest(found, mode.hertz()).frequencyHz().value()));
            checks.add(new Check(
                    at + ", Q",
                    mode.q(),
                    "",
                    source,
                    Tolerance.within(0.02 * mode.q(), "2 %, the project's own promise"),
                    () -> MadeTaps.nearest(found, mode.hertz()).q().value()));
        }
    }
}
