package io.github.tapwright.desktop.work;

import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Analyses sittings anew from their kept recordings, one after the other; what is done when it is given up, or fails, stays. */
public final class AnalyseAnew {

    private final ShowSitting showSitting;
    private final ReanalyseSitting reanalyseSitting;
    private final Work work;
    private final Notices notices;

    /**
     * Nothing analysed yet.
     *
     * @param showSitting reads sittings
     * @param reanalyseSitting analyses one
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public AnalyseAnew(ShowSitting showSitting, ReanalyseSitting reanalyseSitting, Work work, Notices notices) {
        this.showSitting = showSitting;
        this.reanalyseSitting = reanalyseSitting;
        this.work = work;
        this.notices = notices;
    }

    /** Analyses one of them. */
    private interface Step {

        /** Its latest analysis then. */
        Analysis run(SittingId id, Progress progress);
    }

    /**
     * Analyses sittings anew.
     *
     * @param ids which
     * @param by what levels of plucks are measured by
     * @param analysed runs when some were, or at least tried
     */
    public void start(List<SittingId> ids, LevelBasis by, Runnable analysed) {
        Step step = (id, progress) -> by.by().reanalyse(reanalyseSitting, id, progress);
        String what = "Analysing " + Analysed.names(ids) + " anew";
        work.start(new Job<>(what, progress -> all(ids, step, progress)), done -> {
            analysed.run();
            tell(what, done, analysed);
        });
    }

    private Analysed all(List<SittingId> ids, Step step, Progress progress) {
        List<Analysed.One> done = new ArrayList<>();
        for (SittingId id : ids) {
            try {
                Analysis before = showSitting.show(id).latest();
                done.add(new Analysed.One(id, before, step.run(id, naming(id, ids.size(), done.size(), progress))));
            } catch (RuntimeException e) {
                return new Analysed(done, Optional.of(e));
            }
        }
        return new Analysed(done, Optional.empty());
    }

    /** Of several it says which, so that one sees how many there are still to come. */
    private static Progress naming(SittingId id, int count, int done, Progress progress) {
        return count == 1
                ? progress
                : (step, at, all) ->
                        progress.at("sitting " + id + ", " + (done + 1) + " of " + count + ": " + step, at, all);
    }

    private void tell(String what, Analysed done, Runnable analysed) {
        if (done.failure().isPresent()) {
            failed(what, done.failure().get(), done);
        } else if (done.canBeTakenBack()) {
            notices.say(done.words(), () -> takeBack(done, analysed));
        } else {
            notices.say(done.words());
        }
    }

    private void failed(String what, RuntimeException failure, Analysed done) {
        String kept = done.all().isEmpty() ? "" : " (done before that: " + done.words() + ")";
        if (failure instanceof GivenUpException) {
            notices.trouble("Given up: " + what + kept);
        } else {
            notices.failed(what + kept, failure);
        }
    }

    /** Measured by what they were before, but for what was analysed again since; figures are the same as they were. */
    private void takeBack(Analysed done, Runnable analysed) {
        List<SittingId> ids = done.changed().stream().map(Analysed.One::id).toList();
        String what = "Analysing " + Analysed.names(ids) + " as before";
        work.start(
                new Job<>(what, progress -> all(ids, (id, told) -> asBefore(done.of(id), told), progress)), again -> {
                    analysed.run();
                    if (again.failure().isPresent()) {
                        failed(what, again.failure().get(), again);
                    } else if (again.changed().isEmpty()) {
                        notices.trouble(again.stays());
                    } else {
                        boolean all = again.changed().size() == again.all().size();
                        notices.say(again.words() + (all ? "" : ". " + again.stays()));
                    }
                });
    }

    private Analysis asBefore(Analysed.One done, Progress progress) {
        Analysis latest = showSitting.show(done.id()).latest();
        return done.wayBack()
                .filter(by -> latest.number() == done.after().number())
                .map(by -> by.reanalyse(reanalyseSitting, done.id(), progress))
                .orElse(latest);
    }
}
