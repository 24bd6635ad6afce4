package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.desktop.work.AnalyseAnew;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Analyses a sitting anew; where levels can rest on several calibrations, asks for one first. */
final class AnalyseAnewModel implements Correction {

    private final ShelfModel.UseCases use;
    private final Work work;
    private final Runnable analysed;
    private final AnalyseAnew analyseAnew;
    private final ObjectProperty<LevelBasis> basis = new SimpleObjectProperty<>(LevelBasis.AS_BEFORE);
    private final LatestQuestion asked = new LatestQuestion();
    private final OpenForm state;
    private Optional<Read> shown = Optional.empty();

    /** A sitting, and what its levels can be measured by; nothing where no levels were measured. */
    private record Read(Sitting sitting, List<LevelBasis> bases) {}

    /**
     * Nothing is being analysed.
     *
     * @param use the use cases
     * @param free whether no form is open
     * @param analysed runs when something was
     */
    AnalyseAnewModel(ShelfModel.UseCases use, Work work, Notices notices, BooleanSupplier free, Runnable analysed) {
        this.use = use;
        this.work = work;
        this.analysed = analysed;
        this.analyseAnew = new AnalyseAnew(use.showSitting(), use.reanalyseSitting(), work, notices);
        this.state = new OpenForm(notices, free);
        state.tell(List.of(basis), this::preview);
    }

    /** What the levels shall be measured by. */
    ObjectProperty<LevelBasis> basis() {
        return basis;
    }

    /** What they can be measured by. */
    List<LevelBasis> bases() {
        return shown.map(Read::bases).orElse(List.of());
    }

    @Override
    public OpenForm state() {
        return state;
    }

    private String preview() {
        return shown.flatMap(read -> plucks(read.sitting()))
                .map(run ->
                        "So far its levels are in " + run.levelUnit() + ". They are measured anew from the recordings;"
                                + " earlier results stay beside the new ones.")
                .orElse("");
    }

    private static Optional<PluckRun> plucks(Sitting sitting) {
        return sitting.latest().findings().plucks();
    }

    @Override
    public Keeping keeping() {
        return new Keeping("_Analyse anew", "Measures the levels anew (Enter)", "Enter analyses anew, Escape leaves.");
    }

    /** Analyses at once where there is nothing to choose. */
    void open(SittingId id) {
        long mine = asked.ask();
        work.start(new Job<>("Reading sitting " + id, progress -> read(id)), read -> {
            if (!asked.isLatest(mine)) {
                return;
            }
            if (read.bases().size() > 1) {
                state.open(() -> fill(read), "Analyse anew " + Correction.name(read.sitting()));
            } else {
                analyse(id, LevelBasis.AS_BEFORE);
            }
        });
    }

    private Read read(SittingId id) {
        Sitting sitting = use.showSitting().show(id);
        return new Read(
                sitting,
                plucks(sitting)
                        .map(run -> LevelBasis.of(run, use.listCalibrations().all(), use.zone()))
                        .orElse(List.of()));
    }

    private void fill(Read read) {
        shown = Optional.of(read);
        basis.set(read.bases().get(0));
    }

    @Override
    public void leave() {
        state.leave(false);
    }

    /** The form need not wait for the work, which shows how far it is at the foot of the window. */
    @Override
    public void save() {
        shown.map(read -> read.sitting().id()).ifPresent(id -> {
            state.close();
            analyse(id, basis.get());
        });
    }

    private void analyse(SittingId id, LevelBasis by) {
        analyseAnew.start(List.of(id), by, analysed);
    }
}
