package io.github.tapwright.desktop.work;

import io.github.tapwright.sitting.Progress;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/** A job under way, as the strip at the foot of the window shows it. */
public final class RunningJob {

    /** What a bar of progress takes for "nobody knows how far". */
    public static final double UNKNOWN = -1;

    private final String what;
    private final boolean asked;
    private final AtomicBoolean underWay = new AtomicBoolean();
    private final AtomicBoolean givenUp = new AtomicBoolean();
    private final ReadOnlyDoubleWrapper share = new ReadOnlyDoubleWrapper(UNKNOWN);
    private final ReadOnlyStringWrapper words;

    RunningJob(String what, boolean asked) {
        this.what = what;
        this.asked = asked;
        this.words = new ReadOnlyStringWrapper(what);
    }

    /**
     * What is being done.
     *
     * @return in words
     */
    public String what() {
        return what;
    }

    /**
     * How far it is.
     *
     * @return 0 to 1, or {@link #UNKNOWN}
     */
    public ReadOnlyDoubleProperty share() {
        return share.getReadOnlyProperty();
    }

    /**
     * What is being done just now.
     *
     * @return in words
     */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Whether the maker asked for it and waits. */
    boolean isAsked() {
        return asked;
    }

    void begin() {
        underWay.set(true);
    }

    boolean isUnderWay() {
        return underWay.get();
    }

    /** Asks the job to end at its next step; its result, if it still comes, is not used. */
    public void giveUp() {
        givenUp.set(true);
    }

    boolean isGivenUp() {
        return givenUp.get();
    }

    Progress progress(java.util.concurrent.Executor screen) {
        return (step, done, all) -> {
            if (isGivenUp()) {
                throw new GivenUpException();
            }
            screen.execute(() -> {
                words.set(step);
                share.set(all > 0 ? (double) done / all : UNKNOWN);
            });
        };
    }
}
