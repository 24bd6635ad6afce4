package io.github.tapwright.desktop.compare;

import io.github.tapwright.chart.ChartFile;
import io.github.tapwright.chart.Picture;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.ConditionCheck;
import io.github.tapwright.comparison.Grade;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.desktop.part.SittingTitle;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** Two sittings of the same kind, and what may be said of how they differ. */
public final class CompareModel {

    private final ListSittings listSittings;
    private final CompareSittings compareSittings;
    private final ComparePlayed comparePlayed;
    private final SettingsModel settings;
    private final Work work;
    private final Notices notices;
    private final SittingTitle title;
    private final ObservableList<Side> choices = FXCollections.observableArrayList();
    private final ObjectProperty<Optional<Side>> first = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<Side>> second = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> despite = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Answer>> result = new ReadOnlyObjectWrapper<>(Optional.empty());
    /** The same two are only turned about, or read anew. */
    private boolean sameTwo;

    private final LatestQuestion wanted = new LatestQuestion();

    /** What was asked; an answer to another question comes too late. */
    private record Question(Side first, Side second, Optional<String> despite) {}

    /**
     * Nothing compared yet.
     *
     * @param listSittings lists what can be compared
     * @param compareSittings compares sittings of taps
     * @param comparePlayed compares sittings of notes or plucks
     * @param settings the window of the shop, and the maker's own spread of setting up
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param zone the workshop's
     */
    public CompareModel(
            ListSittings listSittings,
            CompareSittings compareSittings,
            ComparePlayed comparePlayed,
            SettingsModel settings,
            Work work,
            Notices notices,
            ZoneId zone) {
        this.listSittings = listSittings;
        this.compareSittings = compareSittings;
        this.comparePlayed = comparePlayed;
        this.settings = settings;
        this.work = work;
        this.notices = notices;
        this.title = new SittingTitle(zone);
        first.addListener((o, before, after) -> chosenAnew());
        second.addListener((o, before, after) -> chosenAnew());
    }

    /**
     * What can be compared: the latest taps of each instrument, then every sitting.
     *
     * @return the choices
     */
    public ObservableList<Side> choices() {
        return choices;
    }

    /**
     * The first side, from which differences are counted.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<Side>> first() {
        return first;
    }

    /**
     * The second side.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<Side>> second() {
        return second;
    }

    /**
     * The maker's reason to compare what the conditions forbid.
     *
     * @return empty unless one was given for these two
     */
    public ReadOnlyObjectProperty<Optional<String>> despite() {
        return despite.getReadOnlyProperty();
    }

    /**
     * What came of it.
     *
     * @return empty while nothing is compared
     */
    public ReadOnlyObjectProperty<Optional<Answer>> result() {
        return result.getReadOnlyProperty();
    }

    /** Lists anew what can be compared, and compares anew. */
    public void refresh() {
        work.start(new Job<>("Listing sittings", progress -> list()), listed -> {
            choices.setAll(listed);
            reread(first);
            reread(second);
            compare();
        });
    }

    /** A sitting may have been moved to another instrument, or have got another stage, since it was chosen. */
    private void reread(ObjectProperty<Optional<Side>> side) {
        Optional<SittingId> id = side.get().flatMap(Side::sitting);
        choices.stream()
                .filter(c -> id.isPresent() && c.sitting().equals(id))
                .findFirst()
                .ifPresent(fresh -> change(side, fresh));
    }

    /** Under another instrument it is another comparison, which needs another reason to be made despite all. */
    private void change(ObjectProperty<Optional<Side>> side, Side fresh) {
        sameTwo = side.get().filter(fresh::isSameAs).isPresent();
        side.set(Optional.of(fresh));
        sameTwo = false;
    }

    private List<Side> list() {
        List<SittingSummary> all = listSittings.inUse().stream()
                .sorted(Comparator.comparing(
                                (SittingSummary s) -> s.instrument().text())
                        .thenComparing(s -> s.takenAt().instant()))
                .toList();
        Stream<Side> latest = all.stream()
                .filter(s -> isOfTaps(s) && !s.loaded())
                .map(SittingSummary::instrument)
                .distinct()
                .map(Side::latestOf);
        return Stream.concat(latest, all.stream().map(this::side)).toList();
    }

    private static boolean isOfTaps(SittingSummary sitting) {
        return sitting.procedure().equals(Procedure.BodyTaps.KEY);
    }

    private Side side(SittingSummary sitting) {
        return new Side(
                sitting.instrument(),
                Optional.of(sitting.id()),
                title.of(sitting) + " (sitting " + sitting.id()
                        + (isOfTaps(sitting) ? ")" : ", " + sitting.procedure() + ")"));
    }

    /** Turns the two about. */
    public void swap() {
        Optional<Side> before = first.get();
        sameTwo = true;
        first.set(second.get());
        second.set(before);
        sameTwo = false;
        compare();
    }

    /** Other sittings need another reason. */
    private void chosenAnew() {
        if (!sameTwo) {
            despite.set(Optional.empty());
            compare();
        }
    }

    /**
     * Compares what the conditions forbid; it can be taken back.
     *
     * @param reason the maker's, which stays on the result
     */
    public void compareDespite(String reason) {
        if (reason.isBlank()) {
            notices.trouble("Write your reason first: it stays beside the figures, here and on every report");
            return;
        }
        despite.set(Optional.of(reason.strip()));
        compare();
        notices.say("Compared in spite of the conditions", this::refuseAgain);
    }

    /** Takes the reason back. */
    public void refuseAgain() {
        despite.set(Optional.empty());
        compare();
    }

    private void compare() {
        result.set(Optional.empty());
        long mine = wanted.ask();
        asked().ifPresent(question ->
                work.start(new Job<>("Comparing", progress -> answer(question, mine)), compared -> {
                    if (wanted.isLatest(mine)) {
                        result.set(compared);
                    }
                }));
    }

    /**
     * Nothing to a question that was overtaken by another, as when someone walks down a list of choices, nor where an
     * instrument's latest sitting is set against itself.
     */
    private Optional<Answer> answer(Question question, long mine) {
        if (!wanted.isLatest(mine)) {
            return Optional.empty();
        }
        SittingId a = id(question.first());
        SittingId b = id(question.second());
        if (a.equals(b)) {
            return Optional.empty();
        }
        CompareSittings.Settings how = settings(question.despite());
        return Optional.of(
                comparePlayed.takes(a)
                        ? new Answer.OfPlayed(comparePlayed.compare(a, b, how))
                        : new Answer.OfTaps(compareSittings.compare(a, b, how), passedOver(question)));
    }

    private List<LeftOut> passedOver(Question question) {
        return Stream.of(question.first(), question.second())
                .filter(side -> side.sitting().isEmpty())
                .flatMap(side -> compareSittings.passedOver(side.instrument()).stream())
                .toList();
    }

    private Optional<Question> asked() {
        return first.get()
                .flatMap(a -> second.get().filter(b -> !b.isSameAs(a)).map(b -> new Question(a, b, despite.get())));
    }

    private SittingId id(Side side) {
        return side.sitting().orElseGet(() -> compareSittings.latest(side.instrument()));
    }

    private CompareSittings.Settings settings(Optional<String> despite) {
        return new CompareSittings.Settings(settings.spread(), settings.window(), despite);
    }

    /**
     * Whether the two may be compared: every condition, the worst first.
     *
     * @return none while nothing is compared
     */
    public List<ConditionCheck> conditions() {
        return result.get()
                .map(r -> r.compared().comparability().checks().stream()
                        .sorted(Comparator.comparing(ConditionCheck::worst).reversed())
                        .toList())
                .orElse(List.of());
    }

    /**
     * Whether a figure is refused, or would be without the maker's reason.
     *
     * @return whether a reason is asked for
     */
    public boolean refuses() {
        return conditions().stream().anyMatch(c -> c.worst() == Grade.REFUSED);
    }

    /**
     * The figures of everything found in both.
     *
     * @return rows of a table
     */
    public List<ComparedFigure> figures() {
        return result.get().map(Answer::figures).orElse(List.of());
    }

    /**
     * The result in sentences.
     *
     * @return none while nothing is compared
     */
    public List<Sentence> sentences() {
        return result.get().map(Answer::sentences).orElse(List.of());
    }

    /**
     * Both curves, the first on top.
     *
     * @return none while nothing is compared, and where nothing was tapped
     */
    public List<Trace> traces() {
        return result.get().map(r -> r.traces(title)).orElse(List.of());
    }

    /**
     * Maps of where two runs of notes differ.
     *
     * @return empty for anything else
     */
    public Optional<? extends Picture> maps() {
        return result.get().filter(Answer.OfPlayed.class::isInstance).flatMap(r -> r.picture(title));
    }

    /**
     * What a report of this comparison is about: the second sitting, set against the first, with the reason there is.
     *
     * @return empty while nothing is compared
     */
    public Optional<ReportSubject> subject() {
        return result.get()
                .map(Answer::compared)
                .map(r -> new ReportSubject.OfTwo(r.second().id(), r.first().id(), settings(despite.get())));
    }

    /**
     * Writes the curves or the maps as a picture.
     *
     * @param file ends in ".png" or ".svg"
     */
    public void savePicture(Path file) {
        result.get()
                .ifPresentOrElse(
                        r -> savePicture(r, file),
                        () -> notices.trouble("There is nothing to save: choose two sittings first"));
    }

    private void savePicture(Answer answer, Path file) {
        Optional<? extends Picture> picture = answer.picture(title);
        if (picture.isEmpty()) {
            notices.trouble("No picture written, because there is nothing to draw");
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
