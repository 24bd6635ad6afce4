package io.github.tapwright.desktop.compare;

import io.github.tapwright.chart.Trace;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Two sittings side by side. */
public final class CompareModel {

    private final ListSittings listSittings;
    private final CompareSittings compareSittings;
    private final Work work;
    private final Notices notices;
    private final ZoneId zone;
    private final ObservableList<Optional<SittingSummary>> choices = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<SittingSummary>> first = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<SittingSummary>> second = new SimpleObjectProperty<>(Optional.empty());
    private final StringProperty despite = new SimpleStringProperty("");
    private final ReadOnlyObjectWrapper<Optional<CompareSittings.Compared>> compared =
            new ReadOnlyObjectWrapper<>(Optional.empty());

    /**
     * Nothing compared yet.
     *
     * @param listSittings lists what can be compared
     * @param compareSittings compares
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param zone the workshop's
     */
    public CompareModel(
            ListSittings listSittings, CompareSittings compareSittings, Work work, Notices notices, ZoneId zone) {
        this.listSittings = listSittings;
        this.compareSittings = compareSittings;
        this.work = work;
        this.notices = notices;
        this.zone = zone;
    }

    /**
     * Every sitting for taps.
     *
     * @return what can be chosen
     */
    public ObservableList<Optional<SittingSummary>> choices() {
        return choices;
    }

    /**
     * The earlier one, A.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<SittingSummary>> first() {
        return first;
    }

    /**
     * The later one, B.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<SittingSummary>> second() {
        return second;
    }

    /**
     * The maker's reason for comparing what the conditions forbid.
     *
     * @return blank for none
     */
    public StringProperty despite() {
        return despite;
    }

    /**
     * What came of it.
     *
     * @return empty until two sittings were compared
     */
    public ReadOnlyObjectProperty<Optional<CompareSittings.Compared>> compared() {
        return compared.getReadOnlyProperty();
    }

    /** Lists anew what can be chosen. */
    public void refresh() {
        work.start(
                new Job<>("Listing sittings", progress -> listSittings.all().stream()
                        .filter(s -> s.procedure().equals(Procedure.BodyTaps.KEY))
                        .map(Optional::of)
                        .toList()),
                listed -> {
                    if (!listed.equals(choices)) {
                        choices.setAll(listed);
                    }
                });
    }

    /** Compares the two that are chosen. */
    public void compare() {
        if (first.get().isEmpty() || second.get().isEmpty()) {
            notices.trouble("Choose two sittings to compare");
            return;
        }
        Optional<String> reason = Optional.of(despite.get().strip()).filter(r -> !r.isEmpty());
        work.start(
                new Job<>(
                        "Comparing",
                        progress -> compareSittings.compare(
                                first.get().get().id(),
                                second.get().get().id(),
                                new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, reason))),
                done -> compared.set(Optional.of(done)));
    }

    /**
     * What a sitting is called here.
     *
     * @param sitting which
     * @return instrument, day, stage
     */
    public String title(SittingSummary sitting) {
        return sitting.instrument() + ", " + sitting.takenAt().text(zone)
                + sitting.stage().map(Stage::words).map(w -> ", " + w).orElse("");
    }

    private String title(String letter, Sitting sitting) {
        return letter + ": " + sitting.instrument() + ", " + sitting.takenAt().text(zone);
    }

    /**
     * Both curves.
     *
     * @return none until two sittings were compared
     */
    public List<Trace> traces() {
        return compared.get().stream()
                .flatMap(c -> Stream.of(
                        trace(title("A", c.first()), c.first()), trace(title("B", c.second()), c.second())))
                .flatMap(Optional::stream)
                .toList();
    }

    private static Optional<Trace> trace(String label, Sitting sitting) {
        return sitting.latest()
                .taps()
                .flatMap(t -> t.curve())
                .map(curve -> new Trace(label, curve, CurvePicture.marks(sitting)));
    }

    /**
     * What the comparison says, in sentences: what differs first, then what nobody can tell.
     *
     * @return one sentence after the other
     */
    public List<String> words() {
        return compared.get().map(this::words).orElse(List.of());
    }

    private List<String> words(CompareSittings.Compared done) {
        List<ResonanceChange> changes = done.comparison().changes();
        if (changes.isEmpty()) {
            return List.of("No resonance of A could be found again in B.");
        }
        List<String> words = new ArrayList<>();
        for (ResonanceChange change : changes) {
            change.differences().stream()
                    .filter(d -> d.verdict() == Difference.Verdict.DIFFERS)
                    .forEach(d -> words.add(
                            InWords.sentence(name(change), d, done.bench().spread())));
        }
        if (words.isEmpty()) {
            words.add("Nothing differs by more than setting up again and chance explain.");
        }
        together(changes, Difference.Verdict.CANNOT_TELL, "Cannot tell").ifPresent(words::add);
        together(changes, Difference.Verdict.REFUSED, "Not compared, the conditions forbid it")
                .ifPresent(words::add);
        alone("A", done.comparison().onlyFirst()).ifPresent(words::add);
        alone("B", done.comparison().onlySecond()).ifPresent(words::add);
        return List.copyOf(words);
    }

    /** Sentences that say the same of many figures are said once. */
    private static Optional<String> together(
            List<ResonanceChange> changes, Difference.Verdict verdict, String words) {
        String of = changes.stream()
                .map(c -> named(c, verdict))
                .filter(t -> !t.isEmpty())
                .collect(Collectors.joining("; "));
        return of.isEmpty() ? Optional.empty() : Optional.of(words + ": " + of + ".");
    }

    private static String named(ResonanceChange change, Difference.Verdict verdict) {
        String quantities = change.differences().stream()
                .filter(d -> d.verdict() == verdict)
                .map(d -> d.quantity().words())
                .collect(Collectors.joining(", "));
        return quantities.isEmpty() ? "" : name(change) + " (" + quantities + ")";
    }

    private static Optional<String> alone(String letter, List<ShownResonance> resonances) {
        String all = resonances.stream()
                .map(r -> r.name().map(n -> n + " ").orElse("")
                        + Figures.text(r.found().resonance().frequencyHz().value(), 1) + " Hz")
                .collect(Collectors.joining(", "));
        return all.isEmpty() ? Optional.empty() : Optional.of("In " + letter + " alone: " + all + ".");
    }

    /**
     * What a resonance is called.
     *
     * @param change which
     * @return its name, or its frequency
     */
    static String name(ResonanceChange change) {
        return change.name()
                .orElseGet(() ->
                        "the resonance at " + Figures.text(change.first().frequencyHz().value(), 0) + " Hz");
    }
}
