package io.github.tapwright.sitting.live;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.PossibleDates;
import io.github.tapwright.sitting.ShowInstrument;
import java.time.Clock;
import java.util.List;

/** Records from a live input, safely to disk from the first moment on. */
public final class RecordLive {

    private final ShowInstrument instruments;
    private final LiveInput input;
    private final CaptureStore captures;
    private final Clock clock;
    private final PossibleDates dates;

    /**
     * Joins the use case with what it needs.
     *
     * @param instruments where instruments are kept
     * @param input the machine's inputs
     * @param captures where sound goes to disk
     * @param clock what tells the time
     */
    public RecordLive(InstrumentStore instruments, LiveInput input, CaptureStore captures, Clock clock) {
        this.instruments = new ShowInstrument(instruments);
        this.input = input;
        this.captures = captures;
        this.clock = clock;
        this.dates = new PossibleDates(clock);
    }

    /**
     * What one can record from now.
     *
     * @return the machine's inputs
     */
    public List<InputDevice> devices() {
        return input.devices();
    }

    /**
     * Starts to record.
     *
     * @param request what is wanted
     * @return the running recording; the caller stops it
     * @throws io.github.tapwright.instrument.RefusedEntryException if the instrument or the device is unknown, the
     *     device does not offer the format, or the strings are said to be fitted on a day to come
     * @throws io.github.tapwright.recording.UnreadableRecordingException if there is no input, or it is in use
     */
    public LiveRecording start(LiveRequest request) {
        ShopNumber instrument = instruments.show(request.instrument()).shopNumber();
        dates.refuseLaterStrings(clock.instant(), request.conditions());
        RunningInput running = input.open(request.device(), request.format());
        boolean recording = false;
        try {
            CaptureNotes notes = new CaptureNotes(
                    instrument,
                    request.procedure(),
                    request.conditions(),
                    running.device(),
                    running.format(),
                    clock.instant());
            LiveRecording live = new LiveRecording(running, captures.begin(notes), notes);
            recording = true;
            return live;
        } finally {
            if (!recording) {
                running.close();
            }
        }
    }
}
