package io.github.tapwright.desktop.timeline;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.TrendPicture;
import io.github.tapwright.comparison.trend.Event;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.desktop.settings.DeskSettings;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.report.picture.HistoryPictures;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.SittingOutline;
import java.nio.file.Path;
import java.time.ZoneId;
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
    private final SettingsModel settings;
    private final Work work;
    private final Notices notices;
    private final ZoneId zone;
    private final LatestQuestion question = new LatestQuestion();
    private final ObservableList<ShopNumber> instruments = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<ShopNumber>> instrument = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<History>> history = new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Nobody followed yet.
     *
     * @param listInstruments lists who can be followed
     * @param followInstrument follows
     * @param settings the window of the shop, and the maker's own spread of setting up
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param zone the workshop's
     */
    public TimelineModel(
            ListInstruments listInstruments,
            FollowInstrument followInstrument,
            SettingsModel settings,
            Work work,
            Notices notices,
            ZoneId zone) {
        this.listInstruments = listInstruments;
        this.followInstrument = followInstrument;
        this.settings = settings;
        this.work = work;
        this.notices = notices;
        this.zone = zone;
        instrument.addListener((o, before, after) -> follow());
    }

    /**
     * Who can be followed.
     *
     * @return shop numbers
     */
    public ObservableList<ShopNumber> instruments() {
        return instruments;
    }

    /**
     * Who is followed.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<ShopNumber>> instrument() {
        return instrument;
    }

    /**
     * The history.
     *
     * @return empty while nobody is followed
     */
    public ReadOnlyObjectProperty<Optional<History>> history() {
        return history.getReadOnlyProperty();
    }

    /**
     * The workshop's zone, in which days begin.
     *
     * @return the zone
     */
    public ZoneId zone() {
        return zone;
    }

    /** Lists anew who can be followed, and follows anew. */
    public void refresh() {
        work.start(new Job<>("Listing instruments", progress -> listInstruments.shopNumbers()), listed -> {
            instruments.setAll(listed);
            follow();
        });
    }

    /**
     * Follows an instrument.
     *
     * @param of which
     */
    public void open(ShopNumber of) {
        instrument.set(Optional.of(of));
    }

    private void follow() {
        Optional<ShopNumber> asked = instrument.get();
        long mine = question.ask();
        if (!history.get().map(History::instrument).equals(asked)) {
            history.set(Optional.empty());
        }
        asked.ifPresent(of -> follow(of, mine));
    }

    private void follow(ShopNumber of, long mine) {
        DeskSettings held = settings.now().get();
        work.start(new Job<>("Following instrument " + of, progress -> answer(of, held, mine)), made -> {
            if (question.isLatest(mine)) {
                history.set(made);
            }
        });
    }

    /** Nothing for an instrument that was overtaken by another, as when someone walks down the list. */
    private Optional<History> answer(ShopNumber of, DeskSettings held, long mine) {
        return question.isLatest(mine)
                ? Optional.of(followInstrument.follow(of, held.spread(), held.window()))
                : Optional.empty();
    }

    /**
     * The picture of the history.
     *
     * @return empty if there is nothing to draw
     */
    public Optional<TrendPicture> picture() {
        return history.get().flatMap(h -> HistoryPictures.of(h, zone));
    }

    /**
     * The history in sentences.
     *
     * @return what drifts first, then what to mind
     */
    public List<Sentence> sentences() {
        return history.get().map(h -> new HistorySentences(h).all()).orElse(List.of());
    }

    /**
     * Each quantity over time.
     *
     * @return resonance by resonance
     */
    public List<DriftRow> drifts() {
        return history.get().map(History::series).orElse(List.<Series>of()).stream()
                .map(DriftRow::new)
                .toList();
    }

    /**
     * The sittings that count.
     *
     * @return oldest first
     */
    public List<SittingOutline> sittings() {
        return history.get().map(History::sittings).orElse(List.of());
    }

    /**
     * What was done to the instrument.
     *
     * @return oldest first
     */
    public List<Event> events() {
        return history.get().map(History::events).orElse(List.of());
    }

    /**
     * What a report of this history is about.
     *
     * @return empty while nobody is followed
     */
    public Optional<ReportSubject> subject() {
        return instrument.get().map(i -> new ReportSubject.OfHistory(i, settings.spread(), settings.window()));
    }

    /**
     * Writes the picture.
     *
     * @param file ends in ".png" or ".svg"
     */
    public void savePicture(Path file) {
        Optional<TrendPicture> picture = picture();
        if (picture.isEmpty()) {
            notices.trouble("There is nothing to draw yet: choose an instrument with sittings");
            return;
        }
        work.start(
                new Job<>("Writing " + file.getFileName(), progress -> {
                    ChartFile.write(picture.get(), file);
                    return file;
                }),
                written -> notices.say("Wrote " + written));
    }
}
