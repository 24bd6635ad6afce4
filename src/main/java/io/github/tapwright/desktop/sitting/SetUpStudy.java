package io.github.tapwright.desktop.sitting;

import io.github.tapwright.desktop.settings.StudyKeeping;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The same guitar set up again and again, until it is known how far setting up alone moves the numbers. */
public final class SetUpStudy {

    private final StudyKeeping keeping;
    private final Notices notices;
    private final ObservableList<SittingId> setUps = FXCollections.observableArrayList();
    private Runnable takenBack = () -> {};

    SetUpStudy(StudyKeeping keeping, Notices notices) {
        this.keeping = keeping;
        this.notices = notices;
    }

    /**
     * The set-ups so far.
     *
     * @return their sittings
     */
    public ObservableList<SittingId> setUps() {
        return setUps;
    }

    void add(SittingId sitting) {
        setUps.add(sitting);
        notices.say("Set-up " + setUps.size() + " kept. Take the guitar down, put it up again and record once more");
    }

    /** Keeps the study of these set-ups. */
    public void keep() {
        keeping.keep(List.copyOf(setUps), setUps::clear, takenBack);
    }

    /**
     * Whom to tell when a study kept here is taken back.
     *
     * @param told runs each time; in place of whoever was told before
     */
    public void whenTakenBack(Runnable told) {
        takenBack = told;
    }
}
