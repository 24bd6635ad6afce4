package io.github.tapwright.report;

import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.FindTaps;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShopProfile;
import io.github.tapwright.sitting.ShopStore;
import io.github.tapwright.sitting.ShowInstrument;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes a report and writes it: which report in, a file out. */
public final class MakeReport {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd");

    private final Stores stores;
    private final Questions questions;
    private final ZoneId zone;

    /**
     * Joins the use case with what it needs.
     *
     * @param stores where things are kept
     * @param questions what answers questions about more than one sitting
     * @param zone where the workshop is
     */
    public MakeReport(Stores stores, Questions questions, ZoneId zone) {
        this.stores = stores;
        this.questions = questions;
        this.zone = zone;
    }

    /**
     * Where things are kept.
     *
     * @param instruments instruments
     * @param sittings sittings
     * @param shop what the workshop says of itself
     */
    public record Stores(InstrumentStore instruments, SittingStore sittings, ShopStore shop) {}

    /**
     * What answers questions about more than one sitting.
     *
     * @param studies how far setting up again moves figures
     * @param compare two sittings of taps
     * @param comparePlayed two sittings of notes, or two of plucks
     * @param follow an instrument over time
     * @param groups groups of instruments
     */
    public record Questions(
            StudyBench studies,
            CompareSittings compare,
            ComparePlayed comparePlayed,
            FollowInstrument follow,
            CompareGroups groups) {}

    /**
     * Refuses a file name no report can be written under, before any work is done for it.
     *
     * @param file where a report shall go
     * @throws RefusedEntryException if the name ends in neither ".pdf" nor ".html"
     */
    public static void requireKnownEnding(Path file) {
        ReportFile.requireKnownEnding(file);
    }

    /**
     * Makes a report and writes it; a file that is there already is replaced once the new one is whole.
     *
     * @param request which report
     * @param file ends in ".pdf" or ".html"
     * @param progress told about each step
     * @return why nothing usable stands in it, such as "there are no two groups to compare"; empty if something does. A report without
     *     findings is written too
     * @throws RefusedEntryException if there is no such sitting or instrument, a sitting is set aside, they cannot be compared at all, or
     *     the file's name ends otherwise
     * @throws IOException if the file cannot be written
     */
    public Optional<String> write(ReportRequest request, Path file, Progress progress) throws IOException {
        requireKnownEnding(file);
        try {
            progress.at("gathering figures", 0, 2);
            Draft draft = draft(request);
            progress.at("writing " + file.getFileName(), 1, 2);
            Report report = new Report(
                    draft.title(),
                    draft.lead(),
                    draft.sections(),
                    draft.pictures(),
                    head(),
                    request.madeAt(),
                    day(request.madeAt()));
            ReportFile.write(report, file);
            return draft.nothingUsable();
        } finally {
            progress.end();
        }
    }

    private Draft draft(ReportRequest request) {
        ReportSubject subject = request.subject();
        if (subject instanceof ReportSubject.OfSitting one) {
            return sitting(request.kind(), one.sitting(), questions.studies().spread(one.spread()), Optional.empty());
        }
        if (subject instanceof ReportSubject.OfTwo two) {
            ComparedFindings compared = compared(two);
            return sitting(request.kind(), two.sitting(), compared.spread(), Optional.of(compared));
        }
        if (subject instanceof ReportSubject.OfHistory history) {
            return new HistoryReport(
                            questions.follow().follow(history.instrument(), history.spread(), history.window()), zone)
                    .draft();
        }
        return new GroupReport(questions.groups().compare(((ReportSubject.OfGroups) subject).settings()))
                .draft(request.kind());
    }

    private ComparedFindings compared(ReportSubject.OfTwo two) {
        return questions.comparePlayed().takes(two.against())
                ? new ComparedPlaying(questions.comparePlayed().compare(two.against(), two.sitting(), two.settings()))
                : new ComparedTaps(questions.compare().compare(two.against(), two.sitting(), two.settings()));
    }

    private Draft sitting(ReportKind kind, SittingId id, SetUpSpread spread, Optional<ComparedFindings> compared) {
        Sitting sitting = new ShowSitting(stores.sittings()).use(id);
        Instrument instrument = new ShowInstrument(stores.instruments()).show(sitting.instrument());
        Pictures pictures = new Pictures();
        Matter matter =
                new Matter(instrument, sitting, new FindTaps(stores.sittings()).near(sitting), spread, zone, pictures);
        boolean client = kind == ReportKind.CLIENT;
        Optional<ComparisonSections> comparison = compared.map(c -> new ComparisonSections(c, kind, pictures, zone));
        boolean drawnBeside = comparison.filter(ComparisonSections::isDrawn).isPresent();
        List<Section> sections =
                new ArrayList<>(client ? ClientReport.findings(matter, drawnBeside) : WorkshopReport.findings(matter));
        comparison.ifPresent(c -> sections.addAll(c.sections()));
        sections.addAll(
                client
                        ? ClientReport.close(
                                matter,
                                compared.map(ComparedFindings::cannotTell).orElse(List.of()))
                        : WorkshopReport.close(matter, compared.map(c -> c.two().first())));
        Optional<String> nothingUsable = sitting.latest().findings().areUsable()
                ? Optional.empty()
                : Optional.of("nothing was found in the recordings of sitting " + id);
        return new Draft(title(instrument, kind), lead(instrument, sitting), sections, pictures, nothingUsable);
    }

    private static String title(Instrument instrument, ReportKind kind) {
        String what = "Guitar " + instrument.shopNumber()
                + instrument.nickname().map(n -> ", “" + n + "”").orElse("");
        return kind == ReportKind.CLIENT ? what : what + ": " + kind.words();
    }

    private List<String> lead(Instrument instrument, Sitting sitting) {
        String top = instrument
                .construction()
                .kind()
                .map(ConstructionKind::words)
                .map(k -> ", " + k + " top")
                .orElse("");
        String stage = sitting.conditions()
                .stage()
                .map(Stage::words)
                .map(s -> ", " + s)
                .orElse("");
        return List.of(
                instrument.kind().words() + top,
                "Measured on " + sitting.takenAt().text(zone) + stage + " (sitting " + sitting.id() + ")");
    }

    private ShopHead head() {
        ShopProfile profile = stores.shop().latest();
        return new ShopHead(
                profile.name(),
                profile.address(),
                profile.picture().map(p -> Emblem.of(stores.shop().locate(p.original()), p.fileName())));
    }

    private String day(Instant at) {
        return DAY.format(at.atZone(zone));
    }
}
