package io.github.tapwright.cli;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.List;

/** Calibrations and what they hold for, for people. */
final class CalibrationText {

    private static final String UNKNOWN = "unknown";

    private final Terminal terminal;
    private final ZoneId zone;

    CalibrationText(Terminal terminal, ZoneId zone) {
        this.terminal = terminal;
        this.zone = zone;
    }

    /** Beside a result, so that nobody trusts it for another microphone. */
    void print(AppliedCalibration applied) {
        String which = applied.id().map(id -> "calibration " + id + ", ").orElse("")
                + applied.takenAt().map(t -> t.text(zone) + ", ").orElse("");
        terminal.say("Calibrated by %s%s", which, applied.toneFile());
        figures(applied.calibration());
        holdsFor(applied.input());
        terminal.say("");
    }

    void printKept(KeptCalibration kept) {
        terminal.say(
                "Kept as calibration %s, %s, %s",
                kept.id(), kept.takenAt().text(zone), kept.tone().fileName());
        figures(kept.calibration());
        holdsFor(kept.input());
        terminal.say("Use it with: tapwright level FILE --calibrated-by %s", kept.id());
    }

    void printList(List<KeptCalibration> calibrations) {
        if (calibrations.isEmpty()) {
            terminal.say("No calibrations yet; add one with: tapwright calibration add FILE --level 94");
            return;
        }
        Table table = new Table("calibration", "taken", "tone", "full scale (dB re 20 µPa)", "microphone", "gain", "");
        calibrations.forEach(k -> table.add(
                k.id().toString(),
                k.takenAt().text(zone),
                Figures.plain(k.calibration().tone().levelDb()) + " dB",
                Figures.text(k.calibration().fullScaleLevel()),
                k.input().microphone().orElse(UNKNOWN),
                k.input().gain().orElse(UNKNOWN),
                k.withdrawn().map(why -> "withdrawn: " + why.reason()).orElse("")));
        table.lines().forEach(terminal.out()::println);
        terminal.say("Each holds for its microphone, input and gain alone.");
    }

    private void figures(Calibration calibration) {
        terminal.say(
                "  tone of %s ± %s dB at %s Hz; steady within ±%s dB over %s s, distortion and noise %s %%",
                Figures.plain(calibration.tone().levelDb()),
                Figures.plain(calibration.tone().levelToleranceDb()),
                Figures.text(calibration.toneFrequencyHz(), 1),
                Figures.text(calibration.fluctuationDb(), 2),
                Figures.text(calibration.steadySeconds(), 1),
                Figures.text(calibration.impurityPercent(), 2));
        terminal.say(
                "  full scale is %s dB re 20 µPa; every level shares this uncertainty, and the microphone's own comes on top",
                Figures.text(calibration.fullScaleLevel()));
    }

    private void holdsFor(CalibratedInput input) {
        terminal.say(
                "  holds for one microphone, input and gain alone: microphone %s, gain %s",
                input.microphone().orElse(UNKNOWN), input.gain().orElse(UNKNOWN));
    }
}
