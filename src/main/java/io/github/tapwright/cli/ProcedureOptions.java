package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.tap.TapSettings;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What a sitting was made for. */
final class ProcedureOptions {

    @Option(
            names = "--procedure",
            paramLabel = "WHAT",
            description = "taps, notes (a run over the fingerboard) or plucks (of open strings); taps if left out.")
    private String procedure = Procedure.BodyTaps.KEY;

    @Option(
            names = "--band",
            paramLabel = "LO:HI",
            converter = BandConverter.class,
            description = "Taps: frequencies to report, in Hz; 60:1000 if left out.")
    private Optional<TapSettings> taps = Optional.empty();

    @Mixin
    private TuningOptions tuning = new TuningOptions();

    @Mixin
    private OrderOption order = new OrderOption();

    @Option(
            names = "--calibrated-by",
            paramLabel = "ID",
            converter = CalibrationChoice.CalibrationIdConverter.class,
            description = "Plucks: a calibration kept in the archive, by its number.")
    private Optional<CalibrationId> calibration = Optional.empty();

    Procedure procedure() {
        Procedure wanted = switch (procedure) {
            case Procedure.BodyTaps.KEY -> new Procedure.BodyTaps(taps.orElse(TapSettings.STANDARD));
            case Procedure.NoteRun.KEY ->
                new Procedure.NoteRun(new Fingerboard.Settings(tuning.tuning(), order.order(), tuning.noteSettings()));
            case Procedure.OpenPlucks.KEY -> new Procedure.OpenPlucks(tuning.tuning(), calibration);
            default ->
                throw new RefusedEntryException("a sitting is for taps, notes or plucks, not for '" + procedure + "'");
        };
        refuse(taps.isPresent() && !(wanted instanceof Procedure.BodyTaps), "--band is for taps");
        refuse(order.isGiven() && !(wanted instanceof Procedure.NoteRun), "--order is for notes");
        refuse(
                tuning.isGiven() && wanted instanceof Procedure.BodyTaps,
                "--tuning, --frets and --a4 are for notes and plucks");
        if (wanted instanceof Procedure.OpenPlucks) {
            tuning.refuseFrets();
        }
        refuse(calibration.isPresent() && !(wanted instanceof Procedure.OpenPlucks), "--calibrated-by is for plucks");
        return wanted;
    }

    private static void refuse(boolean misplaced, String why) {
        Given.refuse(misplaced, why + "; leave it out, or choose another --procedure");
    }
}
