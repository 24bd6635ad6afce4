package io.github.tapwright.cli;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.LiveView;
import java.util.Optional;
import picocli.CommandLine.Option;

/** From what, how and for how long to record. */
final class RecordOptions {

    @Option(
            names = "--device",
            paramLabel = "NAME",
            description = "Input to record from, or a part of its name; the system's choice if left out.")
    private Optional<String> device = Optional.empty();

    @Option(names = "--rate", paramLabel = "HZ", description = "44100, 48000 or 96000; 48000 if left out.")
    private int rateHz = LiveFormat.STANDARD.rateHz();

    @Option(names = "--channels", paramLabel = "N", description = "1 or 2; 1 if left out.")
    private int channels = LiveFormat.STANDARD.channelCount();

    @Option(names = "--bits", paramLabel = "N", description = "16 or 24; 24 if left out.")
    private int bits = LiveFormat.STANDARD.bits();

    @Option(names = "--seconds", paramLabel = "N", description = "Stop after so long.")
    private Optional<Double> seconds = Optional.empty();

    @Option(names = "--taps", paramLabel = "N", description = "Stop once so many strikes can be used.")
    private Optional<Integer> taps = Optional.empty();

    Optional<String> device() {
        return device;
    }

    LiveFormat format() {
        return new LiveFormat(rateHz, channels, bits);
    }

    /** Refuses what cannot end a recording. */
    void check(boolean forTaps) {
        if (seconds.isPresent() && !(seconds.get() > 0)) {
            throw new RefusedEntryException("--seconds needs a time above 0");
        }
        if (taps.isPresent() && (taps.get() < 1 || !forTaps)) {
            throw new RefusedEntryException("--taps counts strikes, from 1, and is for taps; leave it out, or say how"
                    + " long with --seconds");
        }
    }

    boolean isEnough(LiveView view) {
        return seconds.map(s -> view.seconds() >= s).orElse(false)
                || taps.map(n -> view.taps().usedCount() >= n).orElse(false);
    }
}
