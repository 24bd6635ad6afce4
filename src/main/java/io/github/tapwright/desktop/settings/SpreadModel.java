package io.github.tapwright.desktop.settings;

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
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** How far setting up or playing again moves figures on this bench: what holds, and what a study of other sittings would say. */
public final class SpreadModel {

    private final UseCases use;
    private final SettingsModel settings;
    private final StudyKeeping keeping;
    private final Work work;
    private final ZoneId zone;
    private final LatestQuestion spreadAsked = new LatestQuestion();
    private final LatestQuestion sittingsAsked = new LatestQuestion();
    private final ReadOnlyObjectWrapper<Optional<BenchSpread>> held = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Study>> tried = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObjectProperty<StudyKind> kind = new SimpleObjectProperty<>(StudyKind.TAPS);
    private final ObservableList<ShopNumber> instruments = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<ShopNumber>> instrument = new SimpleObjectProperty<>(Optional.empty());
    private final ObservableList<SittingSummary> sittings = FXCollections.observableArrayList();
    private final ObservableList<SittingId> ticked = FXCollections.observableArrayList();

    /**
     * What studies are made with.
     *
     * @param studyBench makes and keeps those of taps
     * @param studyPlaying makes and keeps those of notes and of plucks
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
        kind.addListener((o, before, after) -> {
            ticked.clear();
            tried.set(Optional.empty());
            listSittings();
        });
        settings.now().addListener((o, before, after) -> {
            if (!before.spread().equals(after.spread())) {
                readSpread();
            }
        });
    }

    /** What is studied, and what is told of. */
    ObjectProperty<StudyKind> kind() {
        return kind;
    }

    /** What holds; empty until it was read. */
    ReadOnlyObjectProperty<Optional<BenchSpread>> held() {
        return held.getReadOnlyProperty();
    }

    /** The study of the ticked sittings, not kept; empty until it was asked for. */
    ReadOnlyObjectProperty<Optional<Study>> tried() {
        return tried.getReadOnlyProperty();
    }

    ObservableList<ShopNumber> instruments() {
        return instruments;
    }

    /** Whose sittings are offered; empty until chosen. */
    ObjectProperty<Optional<ShopNumber>> instrument() {
        return instrument;
    }

    /** Its sittings of the kind, oldest first. */
    ObservableList<SittingSummary> sittings() {
        return sittings;
    }

    /** Those of them that are to be studied, as they were ticked. */
    ObservableList<SittingId> ticked() {
        return ticked;
    }

    /** What holds for the kind, in words. */
    List<String> sentences() {
        return held.get().map(s -> s.sentences(kind.get(), zone)).orElse(List.of());
    }

    /** What the study of the ticked sittings says, sentence by sentence; empty until it was asked for. */
    List<String> trial() {
        return tried.get()
                .map(study -> Stream.concat(
                                Stream.of(
                                        "Not kept: " + BenchSpread.words(study.sittings(), kind.get(), zone),
                                        study.moves()),
                                study.cautions().stream())
                        .toList())
                .orElse(List.of());
    }

    /** The study whose figures are of interest: the one that was tried, else the one that holds. */
    Optional<Study> shown() {
        return tried.get().or(() -> held.get().flatMap(s -> s.study(kind.get())));
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
        work.start(
                new Job<>(
                        "Reading the study",
                        progress -> BenchSpread.of(use.studyBench(), use.studyPlaying(), settings.spread())),
                read -> {
                    if (spreadAsked.isLatest(mine)) {
                        held.set(Optional.of(read));
                    }
                });
    }

    private void listSittings() {
        long mine = sittingsAsked.ask();
        Optional<ShopNumber> of = instrument.get();
        StudyKind wanted = kind.get();
        work.start(
                new Job<>(
                        "Listing sittings",
                        progress -> of.map(o -> made(o, wanted)).orElse(List.of())),
                listed -> {
                    if (sittingsAsked.isLatest(mine)) {
                        sittings.setAll(listed);
                        untickUnlisted();
                    }
                });
    }

    private List<SittingSummary> made(ShopNumber of, StudyKind wanted) {
        return use.listSittings().of(of).stream()
                .filter(s ->
                        s.procedure().equals(wanted.procedure()) && s.setAside().isEmpty())
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
        List<SittingId> chosen = List.copyOf(ticked);
        StudyKind wanted = kind.get();
        work.start(new Job<>("Studying the " + wanted.called(), progress -> study(wanted, chosen)), study -> {
            if (chosen.equals(ticked)) {
                tried.set(Optional.of(study));
            }
        });
    }

    private Study study(StudyKind wanted, List<SittingId> chosen) {
        return wanted == StudyKind.TAPS
                ? new Study.OfTaps(use.studyBench().study(chosen))
                : new Study.OfPlaying(use.studyPlaying().study(chosen));
    }

    /** Keeps the study that was tried; it holds from then on, and that can be taken back. */
    void keep() {
        tried.get().ifPresent(study -> {
            List<SittingId> chosen = List.copyOf(ticked);
            // Kept once: a second press would find it kept already and leave nothing to take back.
            tried.set(Optional.empty());
            if (kind.get() == StudyKind.TAPS) {
                keeping.keep(chosen, () -> kept(chosen), this::readSpread);
            } else {
                keeping.keepPlaying(kind.get(), chosen, use.studyPlaying(), () -> kept(chosen), this::readSpread);
            }
        });
    }

    /** Forgets the study kept of the kind that is chosen; that can be taken back. */
    void forget() {
        keeping.forget(kind.get(), this::readSpread);
    }

    /** Whether a study of that kind is kept, though it may no longer hold. */
    boolean keepsOne() {
        return held.get().filter(h -> h.keepsOne(kind.get())).isPresent();
    }

    /** What was ticked meanwhile stays. */
    private void kept(List<SittingId> chosen) {
        if (ticked.equals(chosen)) {
            ticked.clear();
        }
        readSpread();
    }
}
