package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Keeps studies of the bench, with a way back to the one that held before. */
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
     * Keeps the study of some set-ups; from then on it holds for comparisons.
     *
     * @param setUps their sittings
     * @param done runs when it is kept, and once more when that was taken back
     */
    public void keep(List<SittingId> setUps, Runnable done) {
        work.start(new Job<>("Keeping the study", progress -> keep(setUps)), before -> {
            done.run();
            before.ifPresentOrElse(
                    former -> notices.say(words(), () -> takeBack(former, done)), () -> notices.say(words()));
        });
    }

    /** The study that held before. */
    private Optional<List<SittingId>> keep(List<SittingId> setUps) {
        Optional<List<SittingId>> before = held();
        studyBench.keep(setUps);
        return before;
    }

    /** One that no longer holds is none to go back to. */
    private Optional<List<SittingId>> held() {
        try {
            return studyBench
                    .latest()
                    .map(study ->
                            study.sittings().stream().map(SittingOutline::id).toList());
        } catch (RefusedEntryException e) {
            return Optional.empty();
        }
    }

    /**
     * Forgets the studies kept; sittings stay.
     *
     * @param done runs when they are forgotten, and once more when that was taken back
     */
    public void forget(Runnable done) {
        work.start(new Job<>("Forgetting the studies", progress -> studyBench.forget()), forgotten -> {
            done.run();
            String words = "Forgotten; no sitting was deleted, and comparisons count with "
                    + (settings.spread().isEmpty() ? "cautious figures until a study is kept" : "your own figures");
            notices.say(words, () -> remember(forgotten, done));
        });
    }

    private void remember(Map<String, List<SittingId>> forgotten, Runnable done) {
        Job<Boolean> job = new Job<>("Taking the studies back", progress -> {
            studyBench.takeBack(forgotten);
            return true;
        });
        work.start(job, taken -> done.run());
    }

    /** Studies are only ever added: the former one holds again because it is kept once more. */
    private void takeBack(List<SittingId> former, Runnable done) {
        work.start(new Job<>("Taking the study back", progress -> studyBench.keep(former)), study -> done.run());
    }

    private String words() {
        return settings.spread().isEmpty()
                ? "Kept: from now on comparisons know how far setting up alone moves the numbers"
                : "Kept; comparisons go on counting with your own figures until you empty them on the Workshop screen";
    }
}
