package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** Keeps studies of the bench, with a way back to what held before. */
public final class StudyKeeping {

    private final StudyBench studyBench;
    private final SettingsModel settings;
    private final Work work;
    private final Notices notices;

    /**
     * Nothing kept yet.
     *
     * @param studyBench keeps studies
     * @param settings the maker's own spread, which goes before any study
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public StudyKeeping(StudyBench studyBench, SettingsModel settings, Work work, Notices notices) {
        this.studyBench = studyBench;
        this.settings = settings;
        this.work = work;
        this.notices = notices;
    }

    /**
     * Keeps the study of some set-ups; from then on it holds for comparisons of taps.
     *
     * @param setUps their sittings
     * @param kept runs when it is kept
     * @param takenBack runs when that was taken back
     */
    public void keep(List<SittingId> setUps, Runnable kept, Runnable takenBack) {
        keep(StudyKind.TAPS, setUps, studyBench::keep, kept, takenBack);
    }

    /** Keeps the study of sittings of notes or plucks in the same way. */
    void keepPlaying(
            StudyKind kind, List<SittingId> sittings, StudyPlaying playing, Runnable kept, Runnable takenBack) {
        keep(kind, sittings, playing::keep, kept, takenBack);
    }

    private void keep(
            StudyKind kind,
            List<SittingId> sittings,
            Consumer<List<SittingId>> keeping,
            Runnable kept,
            Runnable takenBack) {
        Job<Map<String, List<SittingId>>> job = new Job<>("Keeping the study", progress -> {
            Map<String, List<SittingId>> before = studyBench.rested();
            keeping.accept(sittings);
            return before;
        });
        work.start(job, before -> {
            kept.run();
            notices.say(words(kind), () -> takeBack(sittings, before, takenBack));
        });
    }

    private void takeBack(List<SittingId> kept, Map<String, List<SittingId>> before, Runnable done) {
        Job<Boolean> job = new Job<>("Taking the study back", progress -> {
            studyBench.takeBackKept(kept, before);
            return true;
        });
        work.start(job, taken -> done.run());
    }

    /** Forgets the study of one kind; sittings stay. Done is run when it is forgotten, and once more when that was taken back. */
    void forget(StudyKind kind, Runnable done) {
        Job<Map<String, List<SittingId>>> job =
                new Job<>("Forgetting the study", progress -> studyBench.forget(List.of(kind.procedure())));
        work.start(job, forgotten -> {
            done.run();
            String words = "Forgotten; no sitting was deleted, and comparisons of " + kind.procedure() + " count with "
                    + (settings.spread().isEmpty() ? "cautious figures until a study is kept" : "your own figures");
            notices.say(words, () -> remember(forgotten, done));
        });
    }

    private void remember(Map<String, List<SittingId>> forgotten, Runnable done) {
        Job<Boolean> job = new Job<>("Taking the study back", progress -> {
            studyBench.takeBack(forgotten);
            return true;
        });
        work.start(job, taken -> done.run());
    }

    private String words(StudyKind kind) {
        return settings.spread().isEmpty()
                ? "Kept: comparisons of " + kind.procedure() + " rest on this study from now on"
                : "Kept; comparisons go on counting with your own figures until you empty them on the Workshop screen";
    }
}
