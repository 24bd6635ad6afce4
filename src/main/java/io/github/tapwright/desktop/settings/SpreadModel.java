package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.desktop.part.SittingTitle;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** How far setting up again moves figures on this bench: what holds, and what a study of other sittings would say. */
public final class SpreadModel {

    private final UseCases use;
    private final SettingsModel settings;
    private final StudyKeeping keeping;
    private final Work work;
    private final ZoneId zone;
    private final LatestQuestion spreadAsked = new LatestQuestion();
    private final LatestQuestion sittingsAsked = new LatestQuestion();
    private final ReadOnlyObjectWrapper<Optional<BenchSpread>> held = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<BenchStudy>> tried = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<ShopNumber> instruments = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<ShopNumber>> instrument = new SimpleObjectProperty<>(Optional.empty());
    private final ObservableList<SittingSummary> sittings = FXCollections.observableArrayList();
    private final ObservableList<SittingId> ticked = FXCollections.observableArrayList();

    /**
     * What studies are made with.
     *
     * @param studyBench makes and keeps those of taps
     * @param studyPlaying knows those of notes and of plucks
     * @param listInstruments whose sittings there are
     * @param listSittings lists them
     */
    public record UseCases(
            StudyBench studyBench,
            StudyPlaying studyPlaying,
            ListInstruments listInstruments,
            ListSittings listSittings) {}

    /**
     * Nothing read yet.
     *
     * @param use the use cases
     * @param settings the maker's own spread, which goes before any study
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param zone the workshop's
     */
    public SpreadModel(UseCases use, SettingsModel settings, Work work, Notices notices, ZoneId zone) {
        this.use = use;
        this.settings = settings;
        this.work = work;
        this.zone = zone;
        this.keeping = new StudyKeeping(use.studyBench(), settings, work, notices);
        instrument.addListener((o, before, after) -> listSittings());
        settings.now().addListener((o, before, after) -> {
            if (!before.spread().equals(after.spread())) {
                readSpread();
            }
        });
    }

    /** What holds; empty until it was read. */
    ReadOnlyObjectProperty<Optional<BenchSpread>> held() {
        return held.getReadOnlyProperty();
    }

    /** The study of the ticked sittings, not kept; empty until it was asked for. */
    ReadOnlyObjectProperty<Optional<BenchStudy>> tried() {
        return tried.getReadOnlyProperty();
    }

    ObservableList<ShopNumber> instruments() {
        return instruments;
    }

    /** Whose sittings are offered; empty until chosen. */
    ObjectProperty<Optional<ShopNumber>> instrument() {
        return instrument;
    }

    /** Its sittings of taps, oldest first. */
    ObservableList<SittingSummary> sittings() {
        return sittings;
    }

    /** Those of them that are to be studied, as they were ticked. */
    ObservableList<SittingId> ticked() {
        return ticked;
    }

    /** What holds, in words. */
    List<String> sentences() {
        return held.get().map(s -> s.sentences(zone)).orElse(List.of());
    }

    /** What the study of the ticked sittings says; empty until it was asked for. */
    Optional<String> trial() {
        return tried.get()
                .map(study -> "Not kept: " + BenchSpread.words(study, zone) + " "
                        + study.spread()
                                .map(s -> "It says " + s.words()
                                        + (study.studiesLevels() ? "." : "; the level is assumed."))
                                .orElse("No resonance was found in every set-up, so there is nothing to keep."));
    }

    /** What a sitting is called; a covered hole and a mass make another body of it, which no study mixes with the first. */
    String title(SittingSummary sitting) {
        return new SittingTitle(zone).of(sitting)
                + (sitting.hole() == HoleState.COVERED ? ", hole covered" : "")
                + (sitting.loaded() ? ", mass added" : "")
                + " (sitting " + sitting.id() + ")";
    }

    /** Reads anew what holds, and what there is to study. */
    public void refresh() {
        readSpread();
        work.start(
                new Job<>(
                        "Listing instruments", progress -> use.listInstruments().shopNumbers()),
                instruments::setAll);
        listSittings();
    }

    private void readSpread() {
        long mine = spreadAsked.ask();
        work.start(new Job<>("Reading the study", progress -> BenchSpread.of(use, settings.spread())), read -> {
            if (spreadAsked.isLatest(mine)) {
                held.set(Optional.of(read));
            }
        });
    }

    private void listSittings() {
        long mine = sittingsAsked.ask();
        Optional<ShopNumber> of = instrument.get();
        work.start(new Job<>("Listing sittings", progress -> of.map(this::taps).orElse(List.of())), listed -> {
            if (sittingsAsked.isLatest(mine)) {
                sittings.setAll(listed);
                untickUnlisted();
            }
        });
    }

    private List<SittingSummary> taps(ShopNumber of) {
        return use.listSittings().of(of).stream()
                .filter(s -> s.procedure().equals(Procedure.BodyTaps.KEY))
                .toList();
    }

    private void untickUnlisted() {
        if (ticked.retainAll(sittings.stream().map(SittingSummary::id).toList())) {
            tried.set(Optional.empty());
        }
    }

    /** Ticks a sitting, or takes the tick away; what was tried with other ticks is put away. */
    void toggle(SittingId sitting) {
        if (!ticked.remove(sitting)) {
            ticked.add(sitting);
        }
        tried.set(Optional.empty());
    }

    /** Says what a study of the ticked sittings would give, and keeps nothing. */
    void tryOut() {
        List<SittingId> setUps = List.copyOf(ticked);
        work.start(
                new Job<>("Studying the set-ups", progress -> use.studyBench().study(setUps)), study -> {
                    if (setUps.equals(ticked)) {
                        tried.set(Optional.of(study));
                    }
                });
    }

    /** Keeps the study that was tried; it holds from then on, and that can be taken back where another held before. */
    void keep() {
        tried.get().ifPresent(study -> keeping.keep(List.copyOf(ticked), this::kept));
    }

    /** Forgets the studies kept; that can be taken back. */
    void forget() {
        keeping.forget(this::readSpread);
    }

    /** Whether a study of any kind is kept, though it may no longer hold. */
    boolean keepsOne() {
        return held.get().filter(BenchSpread::keepsOne).isPresent();
    }

    private void kept() {
        ticked.clear();
        tried.set(Optional.empty());
        readSpread();
    }
}
