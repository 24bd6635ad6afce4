package io.github.tapwright.desktop.reports;

import io.github.tapwright.desktop.part.SittingTitle;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.MakeReport;
import io.github.tapwright.report.ReportRequest;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** The report that is asked for, and those that were made since the program started. */
public final class ReportsModel {

    private final UseCases use;
    private final Clock clock;
    private final Work work;
    private final Notices notices;
    private final SittingTitle title;
    private final ReportForm form;
    private final ObservableList<SittingChoice> sittings = FXCollections.observableArrayList();
    private final ObservableList<SittingChoice> alike = FXCollections.observableArrayList();
    private final ObservableList<ShopNumber> instruments = FXCollections.observableArrayList();
    private final ObservableList<Path> made = FXCollections.observableArrayList();

    /**
     * What reports are made with.
     *
     * @param listInstruments lists whose history can be told
     * @param listSittings lists what a report can be about
     * @param makeReport makes them
     */
    public record UseCases(ListInstruments listInstruments, ListSittings listSittings, MakeReport makeReport) {}

    /**
     * No report yet.
     *
     * @param use the use cases
     * @param settings the window of the shop, and the maker's own spread of setting up
     * @param clock tells when a report is made
     * @param work does what takes long
     * @param notices takes what the maker should know
     */
    public ReportsModel(UseCases use, SettingsModel settings, Clock clock, Work work, Notices notices) {
        this.use = use;
        this.form = new ReportForm(settings);
        this.clock = clock;
        this.work = work;
        this.notices = notices;
        this.title = new SittingTitle(clock.getZone());
        form.sitting().addListener((o, before, after) -> offerAlike());
    }

    /**
     * What is asked for.
     *
     * @return the form
     */
    public ReportForm form() {
        return form;
    }

    /**
     * What a report can be about.
     *
     * @return sittings of taps, notes and plucks
     */
    public ObservableList<SittingChoice> sittings() {
        return sittings;
    }

    /**
     * What the chosen sitting can be set against.
     *
     * @return sittings for the same as it; all while none is chosen
     */
    public ObservableList<SittingChoice> alike() {
        return alike;
    }

    /**
     * Whose history can be told.
     *
     * @return shop numbers
     */
    public ObservableList<ShopNumber> instruments() {
        return instruments;
    }

    /**
     * The reports made so far.
     *
     * @return latest first
     */
    public ObservableList<Path> made() {
        return made;
    }

    private record Listed(List<SittingChoice> sittings, List<ShopNumber> instruments) {}

    /** Lists anew what a report can be about. */
    public void refresh() {
        list(() -> {});
    }

    /**
     * Prepares a report; the maker has only to say for whom and where to.
     *
     * @param subject about what
     */
    public void prepare(ReportSubject subject) {
        list(() -> form.take(subject, sittings));
    }

    private void list(Runnable after) {
        work.start(
                new Job<>(
                        "Listing sittings",
                        progress -> new Listed(
                                use.listSittings().inUse().stream()
                                        .sorted(Comparator.comparing((SittingSummary s) ->
                                                        s.instrument().text())
                                                .thenComparing(s -> s.takenAt().instant()))
                                        .map(this::choice)
                                        .toList(),
                                use.listInstruments().shopNumbers())),
                listed -> {
                    sittings.setAll(listed.sittings());
                    instruments.setAll(listed.instruments());
                    reread(form.sitting());
                    offerAlike();
                    reread(form.against());
                    after.run();
                });
    }

    /** Taps are set against taps, notes against notes, plucks against plucks. */
    private void offerAlike() {
        alike.setAll(sittings.stream().filter(this::isAlike).toList());
        form.against().set(form.against().get().filter(this::isAlike));
    }

    private boolean isAlike(SittingChoice other) {
        return form.sitting()
                .get()
                .filter(chosen -> !chosen.procedure().equals(other.procedure()))
                .isEmpty();
    }

    /** A sitting may have got another stage since it was chosen. */
    private void reread(ObjectProperty<Optional<SittingChoice>> choice) {
        Optional<SittingId> id = choice.get().map(SittingChoice::id);
        choice.set(sittings.stream().filter(s -> Optional.of(s.id()).equals(id)).findFirst());
    }

    private SittingChoice choice(SittingSummary sitting) {
        boolean ofTaps = sitting.procedure().equals(Procedure.BodyTaps.KEY);
        return new SittingChoice(
                sitting.id(),
                sitting.instrument(),
                sitting.procedure(),
                title.of(sitting) + (ofTaps ? "" : ", " + sitting.procedure()) + " (sitting " + sitting.id() + ")");
    }

    /**
     * Whether everything is chosen; says what is missing where it is not.
     *
     * @return whether a file may be asked for
     */
    public boolean ready() {
        try {
            form.subject();
            return true;
        } catch (RefusedEntryException e) {
            notices.trouble(String.valueOf(e.getMessage()));
            return false;
        }
    }

    /**
     * Makes the report that is asked for.
     *
     * @param file ends in ".pdf" or ".html"; a name without either gets that of the chosen format
     */
    public void make(Path file) {
        if (!ready()) {
            return;
        }
        Path target = withEnding(file);
        ReportRequest request = new ReportRequest(form.kind().get(), form.subject(), clock.instant());
        work.start(
                new Job<>("Making the report", progress -> use.makeReport().write(request, target, progress)),
                nothingUsable -> {
                    made.remove(target);
                    made.add(0, target);
                    notices.say("Wrote " + target
                            + nothingUsable
                                    .map(why -> ", but nothing usable stands in it: " + why)
                                    .orElse(""));
                });
    }

    private Path withEnding(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.contains(".")
                ? file
                : file.resolveSibling(name + "." + form.format().get().ending());
    }
}
