package io.github.tapwright.desktop.sitting;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The same guitar set up again and again, until it is known how far setting up alone moves the numbers. */
public final class SetUpStudy {

    private final StudyBench studyBench;
    private final Work work;
    private final Notices notices;
    private final ObservableList<SittingId> setUps = FXCollections.observableArrayList();

    SetUpStudy(StudyBench studyBench, Work work, Notices notices) {
        this.studyBench = studyBench;
        this.work = work;
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
        List<SittingId> ids = List.copyOf(setUps);
        work.start(new Job<>("Keeping the study", progress -> studyBench.keep(ids)), (BenchStudy study) -> {
            setUps.clear();
            notices.say("Kept: from now on comparisons know how far setting up alone moves the numbers");
        });
    }
}
