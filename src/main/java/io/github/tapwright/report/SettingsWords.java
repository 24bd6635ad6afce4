package io.github.tapwright.report;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** How recordings were read, in words. */
final class SettingsWords {

    private SettingsWords() {}

    static String of(Procedure procedure) {
        if (procedure instanceof Procedure.BodyTaps taps) {
            var s = taps.settings();
            return "taps; band " + Figures.plain(s.lowHz()) + " to " + Figures.plain(s.highHz()) + " Hz; at most "
                    + Figures.plain(s.longestDecaySeconds()) + " s of each decay; signal-to-noise ratio "
                    + Figures.plain(s.minimumSnrDb()) + " dB at least";
        }
        if (procedure instanceof Procedure.NoteRun run) {
            var s = run.settings();
            return "notes; A4 " + Figures.plain(s.notes().a4Hz()) + " Hz; open strings "
                    + openStrings(s.tuning().openHz()) + "; order "
                    + s.order().name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
        Procedure.OpenPlucks plucks = (Procedure.OpenPlucks) procedure;
        return "plucks; open strings " + openStrings(plucks.tuning().openHz()) + "; "
                + plucks.calibration()
                        .map(CalibrationId::toString)
                        .map(id -> "calibration " + id)
                        .orElse("no calibration, levels re full scale");
    }

    private static String openStrings(List<Double> openHz) {
        return openHz.stream().map(hz -> Figures.text(hz, 1)).collect(Collectors.joining(", ")) + " Hz";
    }
}
