package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.AddInstrument;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingSummary;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import javafx.collections.transformation.FilteredList;

/** What stands on the shelf. */
public final class ShelfModel {

    private final ListInstruments listInstruments;
    private final ListSittings listSittings;
    private final ShowSitting showSitting;
    private final AddInstrument addInstrument;
    private final Work work;
    private final Notices notices;
    private final ObservableList<ShelfRow> rows = FXCollections.observableArrayList();
    private final FilteredList<ShelfRow> found = new FilteredList<>(rows);
    private final StringProperty search = new SimpleStringProperty("");
    private final LatestQuestion reading = new LatestQuestion();
    private final ReadOnlyBooleanWrapper read = new ReadOnlyBooleanWrapper();

    /**
     * A shelf nobody has looked at yet.
     *
     * @param listInstruments lists them
     * @param listSittings lists their sittings
     * @param showSitting shows the one a sketch is drawn from
     * @param addInstrument puts a new one up
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public ShelfModel(
            ListInstruments listInstruments,
            ListSittings listSittings,
            ShowSitting showSitting,
            AddInstrument addInstrument,
            Work work,
            Notices notices) {
        this.listInstruments = listInstruments;
        this.listSittings = listSittings;
        this.showSitting = showSitting;
        this.addInstrument = addInstrument;
        this.work = work;
        this.notices = notices;
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
                listSittings.all().stream().collect(Collectors.groupingBy(SittingSummary::instrument));
        return listInstruments.list().stream()
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
                                ? ShelfRow.sketch(showSitting.show(taps.get().id()))
                                : List.<Double>of()),
                drawn -> {
                    int place = rows.indexOf(row);
                    if (place >= 0 && reading.isLatest(mine)) {
                        rows.set(place, row.withSketch(drawn));
                    }
                });
    }

    /**
     * Puts a new instrument on the shelf.
     *
     * @param number its shop number
     * @param kind what it is
     * @param construction how its soundboard is built
     * @param nickname what the shop calls it; may be blank
     * @param added runs once it stands there
     */
    public void add(
            String number,
            InstrumentKind kind,
            Optional<ConstructionKind> construction,
            String nickname,
            Runnable added) {
        work.start(
                new Job<>("Adding the instrument", progress -> {
                    Instrument bare = Instrument.of(new ShopNumber(number.strip()), kind);
                    Instrument whole = new Instrument(
                            bare.shopNumber(),
                            kind,
                            bare.body(),
                            new Construction(
                                    construction, Layer.UNKNOWN, Layer.UNKNOWN, Layer.UNKNOWN, Optional.empty()),
                            Optional.of(nickname.strip()).filter(n -> !n.isEmpty()),
                            Optional.empty());
                    addInstrument.add(whole);
                    return whole;
                }),
                instrument -> {
                    notices.say("Instrument " + instrument.shopNumber() + " stands on the shelf");
                    refresh();
                    added.run();
                });
    }
}
