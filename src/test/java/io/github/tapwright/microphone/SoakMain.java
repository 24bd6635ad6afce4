package io.github.tapwright.microphone;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.audio.SoundCard;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.LiveRecording;
import io.github.tapwright.sitting.live.LiveRequest;
import io.github.tapwright.sitting.live.LiveView;
import io.github.tapwright.sitting.live.RecordLive;
import io.github.tapwright.tap.TapSettings;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.Optional;

/** Records for a number of seconds into a new archive, taps followed; prints what it saw. A child of tests. */
public final class SoakMain {

    private SoakMain() {}

    /**
     * Records.
     *
     * @param args archive folder, seconds, rate, channels
     */
    public static void main(String[] args) throws InterruptedException {
        double seconds = Double.parseDouble(args[1]);
        try (Archive archive = Archive.open(Path.of(args[0]), Clock.systemUTC())) {
            ShopNumber number = new ShopNumber("T-17");
            if (archive.instruments().find(number).isEmpty()) {
                archive.instruments().add(Instrument.of(number, InstrumentKind.CLASSICAL));
            }
            RecordLive record =
                    new RecordLive(archive.instruments(), new SoundCard(), archive.captures(), Clock.systemUTC());
            LiveFormat format = new LiveFormat(Integer.parseInt(args[2]), Integer.parseInt(args[3]), 24);
            LiveRecording live = record.start(new LiveRequest(
                    number,
                    new Procedure.BodyTaps(TapSettings.STANDARD),
                    Conditions.UNKNOWN,
                    Optional.empty(),
                    format));
            System.out.println("recording " + live.id());
            watch(live, seconds);
            LiveView last = live.stop();
            System.out.printf(
                    Locale.ROOT,
                    "recorded %.3f losses %d frames-lost %d strikes %d used %d memory-mb %d%n",
                    last.seconds(),
                    last.losses().size(),
                    last.losses().stream().mapToLong(l -> l.frames()).sum(),
                    last.taps().strikes().size(),
                    last.taps().usedCount(),
                    (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) >> 20);
            last.losses().forEach(l -> System.out.println("loss " + l.text(format)));
            last.trouble().ifPresent(t -> System.out.println("trouble " + t));
        }
    }

    /** Prints each new strike with how long after its window's end it was shown, counted in recorded time. */
    private static void watch(LiveRecording live, double seconds) throws InterruptedException {
        int seen = 0;
        int fitted = 0;
        double told = 0;
        while (true) {
            LiveView view = live.view();
            if (view.seconds() > told) {
                told = view.seconds() + 0.1;
                System.out.printf(Locale.ROOT, "at %.3f%n", view.seconds());
            }
            int strikes = view.taps().strikes().size();
            for (; seen < strikes; seen++) {
                double onset = view.taps().strikes().get(seen).onsetSeconds();
                System.out.printf(
                        Locale.ROOT,
                        "strike %.3f shown-after-ms %.0f%n",
                        onset,
                        1000 * (view.seconds() - onset - TapSettings.STANDARD.longestDecaySeconds()));
            }
            if (view.taps().fittedStrikes() != fitted) {
                fitted = view.taps().fittedStrikes();
                System.out.printf(Locale.ROOT, "fit of %d at %.2f%n", fitted, view.seconds());
            }
            if (view.seconds() >= seconds || !view.running()) {
                return;
            }
            Thread.sleep(5);
        }
    }
}
