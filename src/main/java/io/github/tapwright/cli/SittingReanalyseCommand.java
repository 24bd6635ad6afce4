package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.TapSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Computes results anew from the kept originals. */
@Command(
        name = "reanalyse",
        description = "Computes results anew from the originals; earlier results stay beside the new ones.")
final class SittingReanalyseCommand extends ArchiveCommand {

    @ArgGroup(multiplicity = "1")
    private Which which = new Which();

    @Option(
            names = "--band",
            paramLabel = "LO:HI",
            converter = BandConverter.class,
            description = "Frequencies to report, in Hz; as before if left out.")
    private Optional<TapSettings> settings = Optional.empty();

    @Option(
            names = "--set-aside",
            paramLabel = "N",
            split = ",",
            description = "Strikes not to use, by their numbers in sitting show; as before if left out.")
    private List<Integer> unwanted = List.of();

    @Option(names = "--use-all", description = "Take back every strike that was set aside.")
    private boolean all;

    @Option(
            names = "--calibrated-by",
            paramLabel = "ID",
            converter = CalibrationChoice.CalibrationIdConverter.class,
            description =
                    "Plucks: another calibration kept in the archive; the one before if left out, none if that was withdrawn.")
    private Optional<CalibrationId> calibration = Optional.empty();

    SittingReanalyseCommand(Bench bench, Terminal terminal) {
        super(bench, terminal);
    }

    /** Some sittings, or all. */
    static final class Which {

        @Parameters(
                arity = "1..*",
                paramLabel = "SITTING",
                converter = SittingIdConverter.class,
                description = "Numbers of sittings.")
        private List<SittingId> some = List.of();

        @Option(names = "--all", description = "Every sitting of the archive.")
        private boolean all;
    }

    @Override
    int run(OpenBench open) {
        if (!unwanted.isEmpty() && (all || which.all || which.some.size() != 1)) {
            throw new RefusedEntryException(
                    "--set-aside numbers the strikes of one sitting; name one, without --use-all");
        }
        Given.refuse(
                calibration.isPresent() && (which.all || settings.isPresent() || all || !unwanted.isEmpty()),
                "--calibrated-by goes with numbers of sittings of plucks alone");
        List<SittingId> ids = which.all ? every(open) : which.some;
        ids.forEach(id -> reanalyse(open, id));
        return ExitCode.DONE;
    }

    /** Every sitting that what was said can be about. */
    private List<SittingId> every(OpenBench open) {
        boolean tapsOnly = settings.isPresent() || all;
        List<SittingId> ids = new ArrayList<>();
        for (SittingSummary sitting : open.listSittings().all()) {
            if (tapsOnly && !sitting.procedure().equals(Procedure.BodyTaps.KEY)) {
                terminal().say("Sitting %s: left out, it is not for taps", sitting.id());
            } else {
                ids.add(sitting.id());
            }
        }
        return ids;
    }

    private void reanalyse(OpenBench open, SittingId id) {
        Sitting before = open.showSitting().show(id);
        ReanalyseSitting reanalyse = open.reanalyseSitting();
        Analysis latest = calibration
                .map(c -> reanalyse.reanalyse(id, c, terminal().progress()))
                .orElseGet(() ->
                        reanalyse.reanalyse(id, settings(before), terminal().progress()));
        if (latest.number() == before.latest().number()) {
            terminal().say("Sitting %s: every figure is the same, nothing added", id);
            return;
        }
        terminal()
                .say(
                        "Sitting %s: analysis %d by method %s, %s; before, method %s, %s",
                        id,
                        latest.number(),
                        latest.methodVersion(),
                        latest.findings().inShort(),
                        before.latest().methodVersion(),
                        before.latest().findings().inShort());
    }

    /** What was said, over what the latest analysis of taps had. */
    private Optional<TapSettings> settings(Sitting before) {
        Optional<TapResult> taps = before.latest().taps();
        Given.refuse(
                taps.isEmpty() && (!unwanted.isEmpty() || all),
                "sitting " + before.id() + " is not for taps; strikes are set aside in sittings for taps only, leave "
                        + (all ? "--use-all" : "--set-aside") + " out");
        if (taps.isEmpty() || (settings.isEmpty() && unwanted.isEmpty() && !all)) {
            return settings;
        }
        TapSettings known = taps.get().settings();
        TapSettings wanted = settings.orElse(known);
        if (all) {
            return Optional.of(wanted.withSetAside(List.of()));
        }
        return Optional.of(wanted.withSetAside(
                unwanted.isEmpty()
                        ? known.setAside()
                        : unwanted.stream().map(n -> strike(taps.get(), n)).toList()));
    }

    private static SetAside strike(TapResult taps, int number) {
        if (number < 1 || number > taps.strikes().size()) {
            throw new RefusedEntryException("there is no strike " + number + "; sitting show numbers them from 1 to "
                    + taps.strikes().size());
        }
        return SetAside.of(taps.strikes().get(number - 1));
    }
}
