package io.github.tapwright.report;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.BenchStudyStore;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SoundFacts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** An archive on disk with invented findings, and short ways to report them. */
final class ReportedWorkshop implements AutoCloseable {

    static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");
    static final ShopNumber NUMBER = new ShopNumber("117");

    private static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);

    private final Path folder;
    private final Archive archive;
    private final ShopNumber number;
    private final List<String> studiesAsked = new ArrayList<>();
    private int sittings;

    ReportedWorkshop(Path folder, String nickname) {
        this(
                folder,
                new Instrument(
                        NUMBER,
                        InstrumentKind.CLASSICAL,
                        Body.UNKNOWN,
                        Construction.UNKNOWN,
                        Optional.of(nickname),
                        Optional.of(nickname)));
    }

    ReportedWorkshop(Path folder, Instrument instrument) {
        this.folder = folder;
        this.archive = Archive.open(folder.resolve("archive"), CLOCK);
        this.number = instrument.shopNumber();
        archive.instruments().add(instrument);
    }

    SittingId add(Findings findings, Conditions conditions) throws IOException {
        return add(findings, conditions, "taps-" + (sittings + 1) + ".wav", List.of());
    }

    SittingId add(Findings findings, Conditions conditions, String fileName, List<String> notices) throws IOException {
        Instant at = NOON.plus(Duration.ofDays(30L * sittings++));
        Path file = Files.writeString(folder.resolve(fileName), "recording " + sittings);
        SoundFacts facts = new SoundFacts("WAV, 24 bit integer", 48000, 1, 0, 5, notices);
        return archive.sittings()
                .add(new NewSitting(
                        number,
                        Moment.at(at),
                        at,
                        conditions,
                        List.of(new NewSitting.NewRecording(archive.sittings().stage(file), facts)),
                        new NewAnalysis(at, findings)));
    }

    void name(SittingId id, GivenName name) {
        archive.sittings().addName(id, name);
    }

    EditShop shop() {
        return new EditShop(archive.shop(), CLOCK);
    }

    Path write(ReportKind kind, ReportSubject subject, String name) throws IOException {
        StudyBench studies = new StudyBench(archive.sittings(), counted(archive.benchStudies()), CLOCK);
        StudyPlaying playing = new StudyPlaying(archive.sittings(), counted(archive.benchStudies()), CLOCK);
        MakeReport make = new MakeReport(
                new MakeReport.Stores(archive.instruments(), archive.sittings(), archive.shop()),
                new MakeReport.Questions(
                        studies,
                        new CompareSittings(archive.sittings(), studies),
                        new ComparePlayed(archive.sittings(), playing),
                        new FollowInstrument(
                                archive.instruments(), archive.sittings(), studies, playing, ZoneOffset.UTC),
                        new CompareGroups(archive.instruments(), archive.sittings())),
                ZoneOffset.UTC);
        Path file = folder.resolve(name);
        make.write(new ReportRequest(kind, subject, NOON), file, Progress.SILENT);
        return file;
    }

    /** The studies reports asked for, in that order: each time one is read and worked out anew. */
    List<String> studiesAsked() {
        return studiesAsked;
    }

    private BenchStudyStore counted(BenchStudyStore studies) {
        return new BenchStudyStore() {
            @Override
            public void addAll(List<List<SittingId>> kept, Instant keptAt) {
                studies.addAll(kept, keptAt);
            }

            @Override
            public Optional<List<SittingId>> latest(String procedure) {
                studiesAsked.add(procedure);
                return studies.latest(procedure);
            }
        };
    }

    @Override
    public void close() {
        archive.close();
    }
}
