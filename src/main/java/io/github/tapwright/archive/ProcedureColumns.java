package io.github.tapwright.archive;

import io.github.tapwright.note.NoteName;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.run.PlayingOrder;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.TapSettings;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a live recording is for, with its settings; lists are numbers with blanks between them. */
final class ProcedureColumns {

    private ProcedureColumns() {}

    static void put(Insert row, Procedure procedure) {
        row.put("procedure", procedure.key());
        if (procedure instanceof Procedure.BodyTaps taps) {
            put(row, taps.settings());
        } else if (procedure instanceof Procedure.NoteRun run) {
            put(row, run.settings());
        } else if (procedure instanceof Procedure.OpenPlucks plucks) {
            put(row, plucks.tuning()).put("calibration_id", plucks.calibration().map(CalibrationId::number));
        }
    }

    private static void put(Insert row, TapSettings taps) {
        row.put("low_hz", taps.lowHz())
                .put("high_hz", taps.highHz())
                .put("longest_decay_s", taps.longestDecaySeconds())
                .put("minimum_snr_db", taps.minimumSnrDb())
                .put(
                        "set_aside_s",
                        numbers(taps.setAside().stream()
                                .map(SetAside::onsetSeconds)
                                .toList()));
    }

    private static void put(Insert row, Fingerboard.Settings run) {
        put(row, run.tuning())
                .put("playing_order", run.order().name().toLowerCase(Locale.ROOT))
                .put("a4_hz", run.notes().a4Hz())
                .put("lowest_pitch_hz", run.notes().lowestPitchHz())
                .put("highest_pitch_hz", run.notes().highestPitchHz())
                .put("highest_partial_hz", run.notes().highestPartialHz())
                .put("expected", run.notes().expected().map(NoteName::toString));
    }

    private static Insert put(Insert row, Tuning tuning) {
        return row.put("open_strings_hz", numbers(tuning.openHz())).put("fret_count", tuning.fretCount());
    }

    static Procedure read(Row row) throws SQLException {
        return switch (row.requiredKey("procedure", Optional::of)) {
            case Procedure.BodyTaps.KEY -> new Procedure.BodyTaps(taps(row));
            case Procedure.NoteRun.KEY -> new Procedure.NoteRun(run(row));
            case Procedure.OpenPlucks.KEY ->
                new Procedure.OpenPlucks(
                        tuning(row), row.optionalInteger("calibration_id").map(CalibrationId::new));
            default ->
                throw new ArchiveException("the archive holds a recording of a kind this program does not know; use"
                        + " the program that made it");
        };
    }

    private static TapSettings taps(Row row) throws SQLException {
        return new TapSettings(
                row.number("low_hz"),
                row.number("high_hz"),
                row.number("longest_decay_s"),
                row.number("minimum_snr_db"),
                numbers(row.text("set_aside_s")).stream()
                        .map(onset -> new SetAside(0, onset))
                        .toList());
    }

    private static Fingerboard.Settings run(Row row) throws SQLException {
        return new Fingerboard.Settings(
                tuning(row),
                row.requiredKey("playing_order", ProcedureColumns::order),
                new NoteSettings(
                        row.number("a4_hz"),
                        row.number("lowest_pitch_hz"),
                        row.number("highest_pitch_hz"),
                        row.number("highest_partial_hz"),
                        row.key("expected", NoteName::read)));
    }

    private static Tuning tuning(Row row) throws SQLException {
        return new Tuning(numbers(row.text("open_strings_hz")), row.integer("fret_count"));
    }

    private static Optional<PlayingOrder> order(String key) {
        return Arrays.stream(PlayingOrder.values())
                .filter(o -> o.name().toLowerCase(Locale.ROOT).equals(key))
                .findFirst();
    }

    private static String numbers(List<Double> values) {
        return values.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static List<Double> numbers(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(" ")).map(Double::valueOf).toList();
    }
}
