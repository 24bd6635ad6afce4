package io.github.tapwright.desktop.response;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.ResponsePicture;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.desktop.part.SittingTitle;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.NameResonance;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Figures;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The sitting looked at, and those laid over it. */
public final class ResponseModel {

    private final ListSittings listSittings;
    private final ShowSitting showSitting;
    private final NameResonance nameResonance;
    private final ReanalyseSitting reanalyseSitting;
    private final Work work;
    private final Notices notices;
    private final SittingTitle title;
    private final ReadOnlyObjectWrapper<Optional<Sitting>> sitting = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<Sitting> overlays = FXCollections.observableArrayList();
    /** What shall lie over, read already or not; what is set aside since waits here until it is used again. */
    private final Set<SittingId> laid = new LinkedHashSet<>();

    private final LatestQuestion opened = new LatestQuestion();
    private final ObservableList<SittingSummary> choices = FXCollections.observableArrayList();

    /**
     * Nothing looked at yet.
     *
     * @param listSittings lists what can be looked at
     * @param showSitting reads one
     * @param nameResonance keeps the maker's names
     * @param reanalyseSitting analyses anew without a strike
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param zone the workshop's
     */
    public ResponseModel(
            ListSittings listSittings,
            ShowSitting showSitting,
            NameResonance nameResonance,
            ReanalyseSitting reanalyseSitting,
            Work work,
            Notices notices,
            ZoneId zone) {
        this.listSittings = listSittings;
        this.showSitting = showSitting;
        this.nameResonance = nameResonance;
        this.reanalyseSitting = reanalyseSitting;
        this.work = work;
        this.notices = notices;
        this.title = new SittingTitle(zone);
    }

    /**
     * The sitting looked at.
     *
     * @return empty until one is opened
     */
    public ReadOnlyObjectProperty<Optional<Sitting>> sitting() {
        return sitting.getReadOnlyProperty();
    }

    /**
     * The sittings laid over it.
     *
     * @return in the order they were laid
     */
    public ObservableList<Sitting> overlays() {
        return overlays;
    }

    /**
     * Every sitting for taps.
     *
     * @return what can be looked at or laid over
     */
    public ObservableList<SittingSummary> choices() {
        return choices;
    }

    /** Lists anew what can be looked at, and shows what is written down now where something was corrected. */
    public void refresh() {
        sitting.get().ifPresent(shown -> work.start(reading(shown.id()), this::showAnew));
        List.copyOf(laid).forEach(id -> work.start(reading(id), this::layOver));
        work.start(
                new Job<>(
                        "Listing sittings",
                        progress -> listSittings.inUse().stream()
                                .filter(s -> s.procedure().equals(Procedure.BodyTaps.KEY))
                                .toList()),
                choices::setAll);
    }

    /**
     * Looks at a sitting.
     *
     * @param id which
     */
    public void open(SittingId id) {
        long mine = opened.ask();
        work.start(reading(id), shown -> {
            if (opened.isLatest(mine)) {
                takeOff(id);
                sitting.set(Optional.of(shown));
            }
        });
    }

    private Job<Sitting> reading(SittingId id) {
        return new Job<>(
                "Reading sitting " + id, progress -> showSitting.show(id).requireTaps());
    }

    private void takeOff(SittingId id) {
        laid.remove(id);
        overlays.removeIf(o -> o.id().equals(id));
    }

    /**
     * Lays a sitting over the one looked at, or takes it away again.
     *
     * @param id which
     * @param wanted whether it shall lie there
     */
    public void lay(SittingId id, boolean wanted) {
        takeOff(id);
        if (wanted && sitting.get().filter(s -> s.id().equals(id)).isEmpty()) {
            laid.add(id);
            work.start(reading(id), this::layOver);
        }
    }

    /** By the time it is read it may have been taken off again, looked at, asked for twice, or set aside. */
    private void layOver(Sitting read) {
        if (read.setAside().isPresent()) {
            overlays.removeIf(o -> o.id().equals(read.id()));
        } else if (laid.contains(read.id()) && !overlays.contains(read)) {
            overlays.removeIf(o -> o.id().equals(read.id()));
            overlays.add(read);
        }
    }

    /**
     * The curves, the sitting looked at first.
     *
     * @return none where nothing was found
     */
    public List<Trace> traces() {
        return Stream.concat(sitting.get().stream(), overlays.stream())
                .flatMap(s -> trace(s).stream())
                .toList();
    }

    /**
     * The resonances of the sitting looked at.
     *
     * @return lowest first
     */
    public List<ShownResonance> resonances() {
        return sitting.get().map(s -> s.resonances(s.latest())).orElse(List.of());
    }

    private Optional<Trace> trace(Sitting of) {
        return of.latest()
                .taps()
                .flatMap(t -> t.curve())
                .map(curve -> new Trace(title(of), curve, CurvePicture.marks(of)));
    }

    /**
     * What a sitting is called here.
     *
     * @param of which
     * @return instrument, day, stage
     */
    public String title(Sitting of) {
        return title.of(of);
    }

    /**
     * What a sitting is called here.
     *
     * @param of which
     * @return instrument, day, stage
     */
    public String title(SittingSummary of) {
        return title.of(of);
    }

    /**
     * Gives a resonance the maker's name; it can be taken back.
     *
     * @param resonance which
     * @param name the name; blank for none
     */
    public void name(ShownResonance resonance, String name) {
        sitting.get().map(Sitting::id).ifPresent(id -> {
            Optional<String> before = resonance.name();
            rename(
                    id,
                    resonance,
                    Optional.of(name.strip()).filter(n -> !n.isEmpty()),
                    () -> notices.say(
                            "Named " + figure(resonance), () -> rename(id, resonance, before, notices::dismiss)));
        });
    }

    private static String figure(ShownResonance resonance) {
        return "the resonance at " + Figures.text(resonance.found().resonance().frequencyHz(), 2) + " Hz";
    }

    /** The sitting is named, not looked up: by the time something is taken back another may be on the screen. */
    private void rename(SittingId id, ShownResonance resonance, Optional<String> name, Runnable after) {
        work.start(
                new Job<>("Naming the resonance", progress -> nameResonance.atOrdinal(id, resonance.ordinal(), name)),
                named -> {
                    showAnew(named);
                    after.run();
                });
    }

    private void showAnew(Sitting fresh) {
        if (sitting.get()
                .filter(s -> s.id().equals(fresh.id()) && !s.equals(fresh))
                .isPresent()) {
            sitting.set(Optional.of(fresh));
        }
    }

    /**
     * Sets a strike aside, or takes it back, and analyses anew; it can be taken back.
     *
     * @param strike which
     */
    public void toggle(Strike strike) {
        sitting.get()
                .ifPresent(of -> of.latest().taps().map(TapResult::settings).ifPresent(settings -> {
                    boolean used = strike.used();
                    TapSettings toggled = settings.toggled(SetAside.of(strike));
                    reanalyse(
                            of.id(),
                            toggled,
                            () -> notices.say(
                                    used
                                            ? "Set the strike aside and analysed anew"
                                            : "Took the strike back and analysed anew",
                                    () -> reanalyse(of.id(), settings, notices::dismiss)));
                }));
    }

    private void reanalyse(SittingId id, TapSettings settings, Runnable after) {
        work.start(
                new Job<>("Analysing sitting " + id + " anew", progress -> {
                    reanalyseSitting.reanalyse(id, Optional.of(settings), progress);
                    return showSitting.show(id);
                }),
                fresh -> {
                    showAnew(fresh);
                    after.run();
                });
    }

    /**
     * Writes the curves as a picture.
     *
     * @param file ends in ".png" or ".svg"
     */
    public void savePicture(Path file) {
        List<Trace> traces = traces();
        if (traces.isEmpty()) {
            notices.trouble("There is no curve to save: open a sitting first");
            return;
        }
        ResponsePicture picture = new ResponsePicture(
                "Response to taps", traces.stream().map(Trace::label).toList(), traces);
        work.start(
                new Job<>("Writing " + file.getFileName(), progress -> {
                    ChartFile.write(picture, file);
                    return file;
                }),
                written -> notices.say("Wrote " + written));
    }
}
