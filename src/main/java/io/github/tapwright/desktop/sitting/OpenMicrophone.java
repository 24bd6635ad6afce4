package io.github.tapwright.desktop.sitting;

import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.LiveRecording;
import io.github.tapwright.sitting.live.LiveView;
import io.github.tapwright.tap.Strike;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The recording of a visit while it runs, and after it was stopped until it is kept. */
final class OpenMicrophone implements AutoCloseable {

    private final ReadOnlyObjectWrapper<Optional<LiveView>> live = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<LiveRecording> recording = Optional.empty();

    ReadOnlyObjectProperty<Optional<LiveView>> live() {
        return live.getReadOnlyProperty();
    }

    void open(LiveRecording started) {
        recording = Optional.of(started);
    }

    /** Takes a look; false if the recording ended by itself. */
    boolean look() {
        recording.map(LiveRecording::view).map(Optional::of).ifPresent(live::set);
        return live.get().map(LiveView::running).orElse(true);
    }

    Optional<Strike> undoStrike() {
        return recording.flatMap(LiveRecording::undoLastStrike);
    }

    void toggle(Strike strike) {
        recording.ifPresent(r -> r.toggle(strike));
    }

    void stop() {
        recording.map(LiveRecording::stop).map(Optional::of).ifPresent(live::set);
    }

    /** What waits to be kept. */
    Optional<CaptureId> recorded() {
        return recording.map(LiveRecording::id);
    }

    void forget() {
        recording = Optional.empty();
        live.set(Optional.empty());
    }

    @Override
    public void close() {
        recording.ifPresent(LiveRecording::close);
    }
}
