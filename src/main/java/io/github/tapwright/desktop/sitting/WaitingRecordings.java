package io.github.tapwright.desktop.sitting;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.sitting.live.LeftCapture;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Recordings that wait to be kept, from this visit or from one that was broken off. */
public final class WaitingRecordings {

    private final KeepCapture captures;
    private final Work work;
    private final Notices notices;
    private final ObservableList<LeftCapture> all = FXCollections.observableArrayList();

    WaitingRecordings(KeepCapture captures, Work work, Notices notices) {
        this.captures = captures;
        this.work = work;
        this.notices = notices;
    }

    /**
     * All that wait.
     *
     * @return oldest first
     */
    public ObservableList<LeftCapture> all() {
        return all;
    }

    /** Looks for them anew. */
    void refresh() {
        work.start(new Job<>("Looking for recordings", progress -> captures.waiting()), all::setAll);
    }

    /**
     * Puts one out of the way; its file stays.
     *
     * @param id which
     */
    public void setAside(CaptureId id) {
        work.start(new Job<>("Setting the recording aside", progress -> captures.setAside(id)), where -> {
            notices.say("The recording lies in " + where);
            refresh();
        });
    }
}
