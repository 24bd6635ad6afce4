package io.github.tapwright.desktop.timeline;

import io.github.tapwright.chart.TrendPicture;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.comparison.trend.TrendWords;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.picture.HistoryPictures;
import io.github.tapwright.sitting.ListInstruments;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** One instrument over time. */
public final class TimelineModel {

    private final ListInstruments listInstruments;
    private final FollowInstrument followInstrument;
    private final Work work;
    private final ZoneId zone;
    private final ObservableList<Optional<ShopNumber>> instruments = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<ShopNumber>> chosen = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<History>> history = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Nobody followed yet.
     *
     * @param listInstruments lists whom one can follow
     * @param followInstrument follows
     * @param work does what takes long
     * @param zone the workshop's
     */
    public TimelineModel(
            ListInstruments listInstruments, FollowInstrument followInstrument, Work work, ZoneId zone) {
        this.listInstruments = listInstruments;
        this.followInstrument = followInstrument;
        this.work = work;
        this.zone = zone;
        chosen.addListener((o, before, after) -> after.ifPresent(this::follow));
    }

    /**
     * Whom one can follow.
     *
     * @return the shop numbers
     */
    public ObservableList<Optional<ShopNumber>> instruments() {
        return instruments;
    }

    /**
     * Who is followed.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<ShopNumber>> chosen() {
        return chosen;
    }

    /**
     * What came of it.
     *
     * @return empty until somebody was followed
     */
    public ReadOnlyObjectProperty<Optional<History>> history() {
        return history.getReadOnlyProperty();
    }

    /** Lists instruments anew, and follows the chosen one anew. */
    public void refresh() {
        work.start(
                new Job<>("Listing instruments", progress -> listInstruments.list().stream()
                        .map(Instrument::shopNumber)
                        .map(Optional::of)
                        .toList()),
                listed -> {
                    if (!listed.equals(instruments)) {
                        instruments.setAll(listed);
                    }
                    chosen.get().ifPresent(this::follow);
                });
    }

    private void follow(ShopNumber instrument) {
        work.start(
                new Job<>(
                        "Following instrument " + instrument,
                        progress -> followInstrument.follow(instrument, Optional.empty(), ShopWindow.USUAL)),
                followed -> history.set(Optional.of(followed)));
    }

    /**
     * The picture.
     *
     * @return empty where there is nothing to draw
     */
    public Optional<TrendPicture> picture() {
        return history.get().flatMap(h -> HistoryPictures.of(h, zone));
    }

    /**
     * What the history says, in sentences.
     *
     * @return drifts, doubts, what was left out
     */
    public List<String> words() {
        return history.get().map(TimelineModel::words).orElse(List.of());
    }

    private static List<String> words(History history) {
        List<String> words = new ArrayList<>();
        if (history.series().isEmpty()) {
            words.add("There is no sitting with a named resonance or with plucks that may be compared.");
        } else if (history.questions() > 0) {
            history.series().forEach(s -> words.add(TrendWords.sentence(s, history)));
        } else {
            int most = history.series().stream().mapToInt(Series::inStretch).max().orElse(0);
            words.add("Cannot tell: sittings " + TrendWords.stretch(history) + ": " + most + "; a drift takes "
                    + Drift.FEWEST + " at least.");
        }
        history.warnings().forEach(w -> words.add("Mind: " + w));
        history.leftOut().forEach(l -> words.add("Left out: sitting " + l.sitting() + ", " + l.reason()));
        words.add(TrendWords.CAUTION);
        return List.copyOf(words);
    }
}
