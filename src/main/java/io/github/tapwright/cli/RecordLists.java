package io.github.tapwright.cli;

import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.live.InputDevice;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.statistics.Figures;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What one can record from, and recordings that wait. */
final class RecordLists {

    private final Bench bench;
    private final Terminal terminal;

    RecordLists(Bench bench, Terminal terminal) {
        this.bench = bench;
        this.terminal = terminal;
    }

    int devices(List<InputDevice> devices) {
        if (devices.isEmpty()) {
            throw new UnreadableRecordingException("this machine has no sound input; plug in a microphone or an audio"
                    + " interface, and check that no other program holds it");
        }
        Table table = new Table("input", "sample rates (kHz)", "channels", "bits");
        for (InputDevice device : devices) {
            table.add(
                    device.name(),
                    each(device.formats().stream().map(f -> Figures.plain(f.rateHz() / 1000.0))),
                    each(device.formats().stream().map(LiveFormat::channelCount)),
                    each(device.formats().stream().map(LiveFormat::bits)));
        }
        table.lines().forEach(terminal.out()::println);
        terminal.note("the system may convert on the way; choose the rate the interface itself runs at");
        return ExitCode.DONE;
    }

    private static String each(Stream<?> values) {
        return values.map(Objects::toString).distinct().sorted().collect(Collectors.joining(", "));
    }

    int waiting(List<LeftCapture> waiting) {
        if (waiting.isEmpty()) {
            terminal.say("No recording waits.");
            return ExitCode.DONE;
        }
        Table table = new Table("id", "instrument", "for", "begun", "length (s)", "how it ended");
        for (LeftCapture left : waiting) {
            table.add(
                    left.id().toString(),
                    left.notes().instrument().text(),
                    left.notes().procedure().key(),
                    Moment.at(left.notes().startedAt()).text(bench.clock().getZone()),
                    Figures.text(left.seconds(), 1),
                    left.finished() ? "stopped, not kept" : "broken off");
        }
        table.lines().forEach(terminal.out()::println);
        terminal.say(
                "Keep one with record --recover ID, copy it with --recover ID --export FILE, or record --set-aside ID.");
        return ExitCode.DONE;
    }
}
