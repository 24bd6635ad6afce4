package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.AddInstrument;
import io.github.tapwright.sitting.EditInstrument;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.ListCalibrations;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;

/** What stands on the shelf. */
public final class ShelfModel {

    private static final String ADDING = "Adding the instrument";

    private final UseCases use;
    private final Work work;
    private final Notices notices;
    private final ObservableList<ShelfRow> rows = FXCollections.observableArrayList();
    private final FilteredList<ShelfRow> found = new FilteredList<>(rows);
    private final StringProperty search = new SimpleStringProperty("");
    private final CorrectInstrumentModel correctInstrument;
    private final CorrectSittingModel correctSitting;
    private final SetAsideModel setAside;
    private final AnalyseAnewModel analyseAnew;
    private Runnable corrected = () -> {};
    private final ReadOnlyObjectWrapper<Optional<Correction>> correcting =
            new ReadOnlyObjectWrapper<>(Optional.empty());
    private final BooleanBinding isCorrecting =
            Bindings.createBooleanBinding(() -> correcting.get().isPresent(), correcting);
    private final LatestQuestion reading = new LatestQuestion();
    private final ReadOnlyBooleanWrapper read = new ReadOnlyBooleanWrapper();

    /**
     * What the shelf asks of the program.
     *
     * @param listInstruments lists them
     * @param listSittings lists their sittings
     * @param showSitting shows the one a sketch is drawn from, or that is corrected
     * @param addInstrument puts a new one up
     * @param editInstrument corrects one
     * @param editSitting corrects a sitting
     * @param setSittingAside sets a sitting aside, and takes it back
     * @param reanalyseSitting analyses a sitting anew
     * @param listCalibrations lists what its levels can be measured by
     * @param zone the workshop's
     */
    public record UseCases(
            ListInstruments listInstruments,
            ListSittings listSittings,
            ShowSitting showSitting,
            AddInstrument addInstrument,
            EditInstrument editInstrument,
            EditSitting editSitting,
            SetSittingAside setSittingAside,
            ReanalyseSitting reanalyseSitting,
            ListCalibrations listCalibrations,
            ZoneId zone) {}

    /**
     * A shelf nobody has looked at yet.
     *
     * @param use the use cases
     * @param settings the unit of temperatures
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public ShelfModel(UseCases use, SettingsModel settings, Work work, Notices notices) {
        this.use = use;
        this.work = work;
        this.notices = notices;
        this.correctInstrument =
                new CorrectInstrumentModel(use.editInstrument(), work, notices, this::isFree, this::followCorrected);
        this.correctSitting =
                new CorrectSittingModel(use, settings, work, notices, this::isFree, this::followCorrected);
        this.setAside = new SetAsideModel(use, work, notices, this::isFree, this::followCorrected);
        this.analyseAnew = new AnalyseAnewModel(use, work, notices, this::isFree, this::followCorrected);
        forms().map(Correction::open).forEach(open -> open.addListener((o, before, after) -> lookForForm()));
        search.addListener((o, before, after) -> found.setPredicate(row -> row.answers(after)));
    }

    /**
     * The instruments the search finds.
     *
     * @return by shop number
     */
    public ObservableList<ShelfRow> found() {
        return found;
    }

    /**
     * What is searched for.
     *
     * @return words, all of which must fit
     */
    public StringProperty search() {
        return search;
    }

    /**
     * Whether the shelf has been read once.
     *
     * @return true from then on
     */
    public ReadOnlyBooleanProperty read() {
        return read.getReadOnlyProperty();
    }

    /**
     * Lets somebody follow what is put right, or taken back.
     *
     * @param follows runs each time something was
     */
    public void whenCorrected(Runnable follows) {
        corrected = follows;
    }

    private void followCorrected() {
        refresh();
        corrected.run();
    }

    /** Reads the shelf anew; the sketches follow one by one whenever there is nothing else to do. */
    public void refresh() {
        long mine = reading.ask();
        work.start(new Job<>("Reading the shelf", progress -> rowsNow()), fresh -> {
            rows.setAll(fresh);
            read.set(true);
            fresh.forEach(row -> sketch(row, mine));
        });
    }

    private List<ShelfRow> rowsNow() {
        Map<ShopNumber, List<SittingSummary>> byInstrument =
                use.listSittings().all().stream().collect(Collectors.groupingBy(SittingSummary::instrument));
        return use.listInstruments().list().stream()
                .map(i -> new ShelfRow(i, latestFirst(byInstrument.getOrDefault(i.shopNumber(), List.of())), List.of()))
                .toList();
    }

    private static List<SittingSummary> latestFirst(List<SittingSummary> sittings) {
        return sittings.stream()
                .sorted(Comparator.comparing((SittingSummary s) -> s.takenAt().instant())
                        .reversed())
                .toList();
    }

    /** None once the shelf is read anew, which sketches it all again. */
    private void sketch(ShelfRow row, long mine) {
        Optional<SittingSummary> taps = row.latestTaps();
        if (taps.isEmpty()) {
            return;
        }
        work.startWhenIdle(
                new Job<>(
                        "Sketching instrument " + row.instrument().shopNumber(),
                        progress -> reading.isLatest(mine)
                                ? ShelfRow.sketch(
                                        use.showSitting().show(taps.get().id()))
                                : List.<Double>of()),
                drawn -> {
                    int place = rows.indexOf(row);
                    if (place >= 0 && reading.isLatest(mine)) {
                        rows.set(place, row.withSketch(drawn));
                    }
                });
    }

    /** Corrects what is written down about an instrument. */
    CorrectInstrumentModel correctInstrument() {
        return correctInstrument;
    }

    /** Corrects what is written down about a sitting. */
    CorrectSittingModel correctSitting() {
        return correctSitting;
    }

    /**
     * Opens the form that corrects an instrument, unless another form is open.
     *
     * @param kept what is written down
     */
    void correct(Instrument kept) {
        if (requireNoCorrection()) {
            correctInstrument.open(kept);
        }
    }

    /**
     * Opens the form that corrects a sitting's day and conditions, unless another form is open.
     *
     * @param id which sitting
     */
    public void correct(SittingId id) {
        if (requireNoCorrection()) {
            correctSitting.open(id);
        }
    }

    /** Sets sittings aside. */
    SetAsideModel setAside() {
        return setAside;
    }

    /**
     * Opens the form that asks why a sitting is set aside, unless another form is open.
     *
     * @param id which sitting
     */
    public void setAside(SittingId id) {
        if (requireNoCorrection()) {
            setAside.open(id);
        }
    }

    /**
     * Takes a sitting that was set aside back into use; it can be taken back.
     *
     * @param id which sitting
     */
    public void useAgain(SittingId id) {
        setAside.useAgain(id);
    }

    /** Analyses sittings anew. */
    AnalyseAnewModel analyseAnew() {
        return analyseAnew;
    }

    /** Analyses a sitting anew, or asks first what its levels shall be measured by, unless another form is open. */
    void analyseAnew(SittingId id) {
        if (requireNoCorrection()) {
            analyseAnew.open(id);
        }
    }

    /** The form that is open; empty while the shelf itself is looked at. */
    ReadOnlyObjectProperty<Optional<Correction>> correcting() {
        return correcting.getReadOnlyProperty();
    }

    /**
     * Whether a form that corrects something is open.
     *
     * @return true from the first look at it until it is kept or left
     */
    public ObservableBooleanValue isCorrecting() {
        return isCorrecting;
    }

    /** Whether the shelf itself is looked at; says what to do first if a form is open. */
    boolean requireNoCorrection() {
        boolean free = isFree();
        if (!free) {
            notices.trouble(OpenForm.FIRST);
        }
        return free;
    }

    private boolean isFree() {
        return correcting.get().isEmpty();
    }

    private void lookForForm() {
        correcting.set(forms().filter(c -> c.open().get()).findFirst());
    }

    private Stream<Correction> forms() {
        return Stream.of(correctSitting, correctInstrument, setAside, analyseAnew);
    }

    /** Puts a new instrument on the shelf; what is to be done then runs once it stands there. */
    void add(String number, InstrumentForm form, Runnable added) {
        Instrument typed;
        try {
            typed = form.read(new ShopNumber(number.strip()));
        } catch (RefusedEntryException e) {
            notices.failed(ADDING, e);
            return;
        }
        work.start(
                new Job<>(ADDING, progress -> {
                    use.addInstrument().add(typed);
                    return typed;
                }),
                instrument -> {
                    notices.say("Instrument " + instrument.shopNumber() + " stands on the shelf");
                    refresh();
                    added.run();
                });
    }
}
