package io.github.tapwright.sitting.live;

import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A running recording. One thread carries sound from the input to disk, one looks for strikes, one fits resonances; any
 * may ask and steer it.
 */
public final class LiveRecording implements AutoCloseable {

    private static final Duration PATIENCE = Duration.ofMillis(100);
    private static final double SILENT_INPUT_SECONDS = 3;

    private final RunningInput input;
    private final Capture capture;
    private final LevelMeter meter;
    private final Optional<FollowTaps> follow;
    private final Function<TapLook.Verdicts, TapsSoFar> fitting;
    private final Thread recorder;
    private final Object lock = new Object();

    private CaptureNotes notes;
    private TapsSoFar taps = TapsSoFar.NOTHING;
    private Optional<String> notFollowed = Optional.empty();
    private Optional<String> notFitted = Optional.empty();
    private Optional<TapLook.Verdicts> toFit = Optional.empty();
    private Optional<String> trouble = Optional.empty();
    private long frames;
    private int lossesNoted;
    private boolean running = true;

    LiveRecording(RunningInput input, Capture capture, CaptureNotes notes) {
        this(input, capture, notes, TapLook.Verdicts::fitted);
    }

    /** Takes another way to fit, too, so that one that fails can be tried. */
    LiveRecording(
            RunningInput input, Capture capture, CaptureNotes notes, Function<TapLook.Verdicts, TapsSoFar> fitting) {
        this.input = input;
        this.capture = capture;
        this.notes = notes;
        this.fitting = fitting;
        this.meter = new LevelMeter(input.format());
        this.follow = notes.procedure() instanceof Procedure.BodyTaps wanted
                ? Optional.of(new FollowTaps(
                        input.format(), wanted.settings(), notes.conditions().hole()))
                : Optional.empty();
        this.recorder = new Thread(this::record, "tapwright-recorder");
        recorder.start();
        follow.ifPresent(following -> {
            startBeside(() -> listen(following), "tapwright-listener", this::listeningFailed);
            startBeside(this::fit, "tapwright-fitter", this::fittingFailed);
        });
    }

    /** Work that may be given up at any moment; whatever becomes of it, the recording is more than the view of it. */
    private static void startBeside(Runnable work, String name, Consumer<RuntimeException> failed) {
        Thread thread = new Thread(
                () -> {
                    try {
                        work.run();
                    } catch (RuntimeException e) {
                        failed.accept(e);
                    }
                },
                name);
        thread.setDaemon(true);
        thread.start();
    }

    private void listeningFailed(RuntimeException why) {
        synchronized (lock) {
            notFollowed = Optional.of("the taps cannot be followed any more (" + why.getMessage() + "); the recording"
                    + " goes on, and is analysed when it is kept");
        }
    }

    private void fittingFailed(RuntimeException why) {
        synchronized (lock) {
            notFitted = Optional.of("resonances cannot be fitted any more while it runs (" + why.getMessage()
                    + "); the recording goes on, and is analysed when it is kept");
        }
    }

    private void record() {
        try {
            carry();
        } catch (RuntimeException e) {
            // The disk or the archive; what was written before is safe, and the maker must know.
            synchronized (lock) {
                trouble = Optional.of(String.valueOf(e.getMessage()));
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            input.close();
            end();
        }
    }

    private void end() {
        try {
            noteLosses();
            capture.close();
        } catch (RuntimeException e) {
            synchronized (lock) {
                trouble = trouble.or(() -> Optional.of(String.valueOf(e.getMessage())));
            }
        } finally {
            synchronized (lock) {
                running = false;
                lock.notifyAll();
            }
        }
    }

    private void carry() throws InterruptedException {
        double silentSeconds = 0;
        while (!input.isOver()) {
            Optional<SoundBlock> block = input.next(PATIENCE);
            if (block.isPresent()) {
                silentSeconds = 0;
                take(block.get());
                noteLosses();
            } else {
                silentSeconds += PATIENCE.toMillis() / 1000.0;
                if (silentSeconds > SILENT_INPUT_SECONDS) {
                    refuse("the input '" + input.device() + "' gives no sound any more; check its plug, then record"
                            + " again. What was recorded is safe");
                    return;
                }
            }
        }
        if (isRunning()) {
            refuse("the input '" + input.device() + "' ended by itself; check its plug, then record again. What was"
                    + " recorded is safe");
        }
    }

    private void refuse(String why) {
        synchronized (lock) {
            trouble = Optional.of(why);
        }
    }

    private void take(SoundBlock block) {
        capture.append(block);
        double[][] samples = block.samples();
        synchronized (lock) {
            frames += block.frames();
            meter.feed(samples);
            follow.ifPresent(f -> {
                f.feed(samples);
                if (f.isDue()) {
                    lock.notifyAll();
                }
            });
        }
    }

    private void noteLosses() {
        List<Loss> losses = input.losses();
        for (; lossesNoted < losses.size(); lossesNoted++) {
            capture.note(losses.get(lossesNoted));
        }
    }

    /** Verdicts and curves: quick, and never kept waiting by a fit. */
    private void listen(FollowTaps following) {
        try {
            FollowTaps.rehearse();
            for (Optional<TapLook> look = nextLook(following); look.isPresent(); look = nextLook(following)) {
                TapLook.Verdicts verdicts = look.get().verdicts();
                synchronized (lock) {
                    taps = verdicts.shown().withResonancesOf(taps);
                    following.know(verdicts);
                    toFit = Optional.of(verdicts);
                    lock.notifyAll();
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Optional<TapLook> nextLook(FollowTaps following) throws InterruptedException {
        synchronized (lock) {
            while (!following.isDue() && running) {
                lock.wait();
            }
            return running ? Optional.of(following.look()) : Optional.empty();
        }
    }

    /** Resonances: slow; of looks that came meanwhile only the latest is fitted. */
    private void fit() {
        try {
            for (Optional<TapLook.Verdicts> next = nextToFit(); next.isPresent(); next = nextToFit()) {
                TapsSoFar fitted = fitting.apply(next.get());
                synchronized (lock) {
                    taps = taps.withResonancesOf(fitted);
                }
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Optional<TapLook.Verdicts> nextToFit() throws InterruptedException {
        synchronized (lock) {
            while (toFit.isEmpty() && running) {
                lock.wait();
            }
            Optional<TapLook.Verdicts> next = running ? toFit : Optional.empty();
            toFit = Optional.empty();
            return next;
        }
    }

    private boolean isRunning() {
        synchronized (lock) {
            return running;
        }
    }

    /**
     * The recording at this moment.
     *
     * @return level, strikes, curve and resonances as far as they are known
     */
    public LiveView view() {
        List<Loss> losses = input.losses();
        synchronized (lock) {
            double seconds = (double) frames / input.format().rateHz();
            return new LiveView(seconds, meter.now(), shown(), losses, running, trouble);
        }
    }

    /** What failed stands beside the taps and not among them: every look brings other taps, and the maker must see it. */
    private TapsSoFar shown() {
        TapsSoFar shown = notFollowed.map(taps::withNote).orElse(taps);
        return notFitted.map(shown::withNote).orElse(shown);
    }

    /**
     * What is known about it.
     *
     * @return the notes as they are on disk
     */
    public CaptureNotes notes() {
        synchronized (lock) {
            return notes;
        }
    }

    /**
     * Its number in the archive.
     *
     * @return under which it can be kept once it was stopped
     */
    public CaptureId id() {
        return capture.id();
    }

    /**
     * Sets a strike aside, or takes it back; the recording stays as it is.
     *
     * @param strike one of {@link TapsSoFar#strikes()}
     */
    public void toggle(Strike strike) {
        CaptureNotes before = notes();
        if (follow.isPresent() && before.procedure() instanceof Procedure.BodyTaps wanted) {
            Procedure.BodyTaps changed =
                    new Procedure.BodyTaps(wanted.settings().toggled(SetAside.of(strike)));
            change(before.with(changed));
            synchronized (lock) {
                follow.get().setAside(changed.settings().setAside());
                lock.notifyAll();
            }
        }
    }

    /**
     * Sets the last used strike aside.
     *
     * @return the strike; empty if none is used
     */
    public Optional<Strike> undoLastStrike() {
        Optional<Strike> last =
                view().taps().strikes().stream().filter(Strike::used).reduce((earlier, later) -> later);
        last.ifPresent(this::toggle);
        return last;
    }

    private void change(CaptureNotes changed) {
        capture.note(changed);
        synchronized (lock) {
            notes = changed;
        }
    }

    /**
     * Stops; when this returns, all of it is on disk and it can be kept.
     *
     * @return its last view; the strikes of the last moment may be missing in it, not in the recording
     */
    public LiveView stop() {
        synchronized (lock) {
            running = false;
            lock.notifyAll();
        }
        input.close();
        join(recorder);
        return view();
    }

    private static void join(Thread thread) {
        boolean interrupted = false;
        while (true) {
            try {
                thread.join();
                break;
            } catch (InterruptedException e) {
                interrupted = true; // the sound must reach the disk all the same
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() {
        stop();
    }
}
