package io.github.tapwright.desktop.settings;

import io.github.tapwright.desktop.part.LevelBasis;
import io.github.tapwright.desktop.work.AnalyseAnew;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.OutOfUseChange;
import io.github.tapwright.desktop.work.TakingOutOfUse;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.ListCalibrations;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.ShowCalibration;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.WithdrawCalibration;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The calibrations of the archive: withdraws a wrong one, takes it back, and analyses anew what rests on it. */
public final class CalibrationsModel {

    private final UseCases use;
    private final Work work;
    private final Notices notices;
    private final TakingOutOfUse taking;
    private final AnalyseAnew analyseAnew;
    private final ObservableList<CalibrationRow> rows = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<CalibrationRow>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final ObservableList<LevelBasis> bases = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<LevelBasis>> basis = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty reason = new SimpleStringProperty("");
    private final LatestQuestion reading = new LatestQuestion();
    private Runnable corrected = () -> {};

    /**
     * What is asked of the program.
     *
     * @param listCalibrations lists them
     * @param showCalibration shows one
     * @param withdrawCalibration withdraws one, and takes it back
     * @param showSitting shows what rests on one
     * @param reanalyseSitting analyses that anew
     * @param zone the workshop's
     */
    public record UseCases(
            ListCalibrations listCalibrations,
            ShowCalibration showCalibration,
            WithdrawCalibration withdrawCalibration,
            ShowSitting showSitting,
            ReanalyseSitting reanalyseSitting,
            ZoneId zone) {}

    /**
     * Nothing read yet.
     *
     * @param use the use cases
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public CalibrationsModel(UseCases use, Work work, Notices notices) {
        this.use = use;
        this.work = work;
        this.notices = notices;
        this.taking = new TakingOutOfUse(work, notices, this::follow);
        this.analyseAnew = new AnalyseAnew(use.showSitting(), use.reanalyseSitting(), work, notices);
        chosen.addListener((o, before, after) -> {
            if (!id(before).equals(id(after))) {
                reason.set("");
                basis.set(Optional.empty());
            }
            offerBases();
        });
    }

    private static Optional<CalibrationId> id(Optional<CalibrationRow> row) {
        return row.map(r -> r.kept().id());
    }

    /** Oldest tone first. */
    ObservableList<CalibrationRow> rows() {
        return rows;
    }

    /** The one looked at. */
    ObjectProperty<Optional<CalibrationRow>> chosen() {
        return chosen;
    }

    /** What levels that rest on the chosen one can be measured by instead. */
    ObservableList<LevelBasis> bases() {
        return bases;
    }

    /** What they shall be measured by. */
    ObjectProperty<Optional<LevelBasis>> basis() {
        return basis;
    }

    /** What is wrong with the chosen one. */
    StringProperty reason() {
        return reason;
    }

    ZoneId zone() {
        return use.zone();
    }

    /**
     * Lets somebody follow what is put right, or taken back.
     *
     * @param follows runs each time something was
     */
    public void whenCorrected(Runnable follows) {
        corrected = follows;
    }

    /** Reads the calibrations anew; the one chosen stays chosen. */
    public void refresh() {
        long mine = reading.ask();
        work.start(new Job<>("Reading the calibrations", progress -> read()), fresh -> {
            if (reading.isLatest(mine)) {
                Optional<CalibrationId> looked = id(chosen.get());
                rows.setAll(fresh);
                chosen.set(fresh.stream()
                        .filter(row -> looked.equals(Optional.of(row.kept().id())))
                        .findFirst()
                        .or(() -> fresh.stream().findFirst()));
                offerBases(); // the one looked at may be the same while others came or went
            }
        });
    }

    private List<CalibrationRow> read() {
        return use.listCalibrations().all().stream()
                .map(kept -> new CalibrationRow(kept, use.withdrawCalibration().restingOn(kept.id())))
                .toList();
    }

    /** What was chosen stays chosen as long as it is offered. */
    private void offerBases() {
        Optional<LevelBasis> was = basis.get();
        List<KeptCalibration> kept = rows.stream().map(CalibrationRow::kept).toList();
        bases.setAll(chosen.get()
                .filter(row -> !row.resting().isEmpty())
                .map(row -> LevelBasis.insteadOf(row.kept(), kept, use.zone()))
                .orElse(List.of()));
        basis.set(was.filter(bases::contains).or(() -> bases.stream().findFirst()));
    }

    /** Withdraws the chosen one for the reason typed; it can be taken back. */
    void withdraw() {
        chosen.get().map(row -> row.kept().id()).ifPresent(id -> {
            String what = "Withdrawing calibration " + id;
            try {
                change(what, id, Optional.of(OutOfUse.requireReason(reason.get())));
            } catch (RefusedEntryException e) {
                notices.failed(what, e);
            }
        });
    }

    /** Takes the chosen one back into use; it can be withdrawn again. */
    void useAgain() {
        chosen.get()
                .map(row -> row.kept().id())
                .ifPresent(id -> change("Using calibration " + id + " again", id, Optional.empty()));
    }

    private void change(String what, CalibrationId id, Optional<String> why) {
        TakingOutOfUse.Named named = new TakingOutOfUse.Named("Calibration " + id, "withdrawn", new Kept(use, id));
        taking.change(what, named, why, done -> {
            if (done.changed()) {
                reason.set("");
            }
        });
    }

    /** Measures every sitting that rests on the chosen one by what was chosen instead. */
    void analyseAnew() {
        chosen.get()
                .filter(row -> !row.resting().isEmpty())
                .ifPresent(row -> basis.get().ifPresent(by -> analyseAnew.start(row.resting(), by, this::follow)));
    }

    private void follow() {
        refresh();
        corrected.run();
    }

    /** A calibration as the archive keeps it. */
    private record Kept(UseCases use, CalibrationId id) implements OutOfUseChange.Kept {

        @Override
        public Optional<OutOfUse> now() {
            return use.showCalibration().show(id).withdrawn();
        }

        @Override
        public void takeOut(String reason) {
            use.withdrawCalibration().withdraw(id, reason);
        }

        @Override
        public void takeBack() {
            use.withdrawCalibration().takeBack(id);
        }
    }
}
