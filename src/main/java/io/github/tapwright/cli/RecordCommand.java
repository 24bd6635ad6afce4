package io.github.tapwright.cli;

import io.github.tapwright.cli.Bench.OpenBench;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.KeptCapture;
import io.github.tapwright.sitting.live.LiveRecording;
import io.github.tapwright.sitting.live.LiveRequest;
import io.github.tapwright.sitting.live.LiveView;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.UnaryOperator;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Records from a microphone into a sitting. */
@Command(
        name = "record",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        description = {
            "Records from a live input into a sitting. Enter or Ctrl-C stops; what was recorded is kept.",
            "A recording that a crash broke off waits in the archive: --waiting lists, --recover keeps it."
        })
final class RecordCommand implements Callable<Integer> {

    private static final int LOOK_MILLIS = 50;

    private static final String RECOVER = "--recover";

    private final Bench bench;
    private final Terminal terminal;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", arity = "0..1", paramLabel = "INSTRUMENT", description = "Shop number.")
    private Optional<String> number = Optional.empty();

    @ArgGroup
    private Instead instead = new Instead();

    @Option(names = "--export", paramLabel = "FILE", description = "With --recover: copy it to this WAV file instead.")
    private Optional<Path> export = Optional.empty();

    @Mixin
    private ArchiveOption archive = new ArchiveOption();

    @Mixin
    private RecordOptions options = new RecordOptions();

    @Mixin
    private ProcedureOptions procedure = new ProcedureOptions();

    @Option(names = "--json", description = "Print one JSON document.")
    private boolean json;

    @Mixin
    private ConditionOptions conditions = new ConditionOptions();

    RecordCommand(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    /** What to do instead of recording. */
    static final class Instead {

        @Option(names = "--list-devices", description = "List the inputs of this machine and what they offer.")
        private boolean devices;

        @Option(names = "--waiting", description = "List recordings that wait to be kept.")
        private boolean waiting;

        @Option(names = RECOVER, paramLabel = "ID", description = "Keep a recording that waits as a sitting.")
        private Optional<Long> recover = Optional.empty();

        @Option(
                names = "--set-aside",
                paramLabel = "ID",
                description = "Stop offering a recording; its file stays in the archive.")
        private Optional<Long> setAside = Optional.empty();
    }

    @Override
    public Integer call() {
        Given.refuse(
                export.isPresent() && instead.recover.isEmpty(),
                "--export copies a recording that waits; say which with --recover ID");
        refuseWhatIsNotUsed();
        if (instead.devices) {
            return new RecordLists(bench, terminal).devices(bench.inputDevices());
        }
        try (OpenBench open = bench.open(archive.folder(), false, terminal.progress())) {
            return run(open);
        }
    }

    /** Only a recording that begins now asks how, and only one that is kept has conditions. */
    private void refuseWhatIsNotUsed() {
        if (instead.devices) {
            Given.onlyBeside(spec, "--list-devices", Set.of());
        } else if (instead.waiting) {
            Given.onlyBeside(spec, "--waiting", Set.of());
        } else if (instead.setAside.isPresent()) {
            Given.onlyBeside(spec, "--set-aside", Set.of());
        } else if (export.isPresent()) {
            Given.onlyBeside(spec, "--export", Set.of(RECOVER));
        } else if (instead.recover.isPresent()) {
            Set<String> kept = new HashSet<>(
                    CommandSpec.forAnnotatedObject(conditions).optionsMap().keySet());
            kept.addAll(List.of("--json", "INSTRUMENT"));
            Given.onlyBeside(spec, RECOVER, kept);
        }
    }

    private int run(OpenBench open) {
        if (instead.waiting) {
            return new RecordLists(bench, terminal).waiting(open.keepCapture().waiting());
        }
        if (instead.setAside.isPresent()) {
            Path where = open.keepCapture().setAside(captureId(instead.setAside.get()));
            terminal.say("Set aside, the recording lies in %s", where);
            return ExitCode.DONE;
        }
        return instead.recover.map(id -> recover(open, captureId(id))).orElseGet(() -> record(open));
    }

    private static CaptureId captureId(long number) {
        return Checked.entry(() -> new CaptureId(number));
    }

    private int recover(OpenBench open, CaptureId id) {
        if (export.isPresent()) {
            open.keepCapture().export(id, export.get());
            terminal.say("Copied to %s; the recording goes on waiting", export.get());
            return ExitCode.DONE;
        }
        return keep(open, id, this::corrected);
    }

    /** What was said with --recover goes over what was known when the recording began. */
    private CaptureNotes corrected(CaptureNotes notes) {
        Conditions said = conditions.applyTo(notes.conditions());
        ConditionsText.takenOff(notes.conditions(), said).ifPresent(terminal::note);
        CaptureNotes known = notes.with(said);
        return number.map(n -> known.with(new ShopNumber(n))).orElse(known);
    }

    private int keep(OpenBench open, CaptureId id, UnaryOperator<CaptureNotes> change) {
        KeptCapture kept = open.keepCapture().keep(id, change, terminal.progress());
        if (kept.before()) {
            terminal.note(kept.words() + ": sitting edit " + kept.sitting().id());
        }
        return new SittingAnswer(bench, terminal, json).give(open, kept.sitting());
    }

    private int record(OpenBench open) {
        ShopNumber instrument = new ShopNumber(number.orElseThrow(
                () -> new RefusedEntryException("record needs the shop number of an instrument; see record --help")));
        Procedure wanted = procedure.procedure();
        options.check(wanted instanceof Procedure.BodyTaps);
        open.showCalibration().refuseWithdrawn(wanted);
        LiveRequest request =
                new LiveRequest(instrument, wanted, conditions.conditions(), options.device(), options.format());
        int waiting = open.keepCapture().waiting().size();
        if (waiting > 0) {
            terminal.note(waiting + (waiting == 1 ? " recording waits" : " recordings wait")
                    + " to be kept; see record --waiting");
        }
        try (StopSignal stop = new StopSignal(System.in)) {
            int code = recordOrComplain(open, request, stop);
            stop.endWith(code);
            return code;
        }
    }

    private int recordOrComplain(OpenBench open, LiveRequest request, StopSignal stop) {
        try {
            return record(open, request, stop);
        } catch (RuntimeException e) {
            if (stop.isProgramEnding()) {
                return Complaints.complain(e, terminal.err());
            }
            throw e;
        }
    }

    private int record(OpenBench open, LiveRequest request, StopSignal stop) {
        LiveView last;
        CaptureId id;
        try (LiveRecording live = open.recordLive().start(request)) {
            id = live.id();
            LiveLine line = new LiveLine(terminal, live.notes());
            boolean enough = false;
            while (!enough && live.view().running() && !stop.isWantedWithin(LOOK_MILLIS)) {
                LiveView view = live.view();
                line.show(view);
                enough = options.isEnough(view);
            }
            last = live.stop();
            line.end(last);
        }
        if (last.trouble().isPresent() && last.seconds() == 0) {
            throw new UnreadableRecordingException(last.trouble().get());
        }
        return keep(open, id, notes -> notes);
    }
}
