package io.github.tapwright.cli;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.archive.ArchiveException;
import io.github.tapwright.archive.Restore;
import io.github.tapwright.archive.VerifyReport;
import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.SoundCard;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.body.BodyModelOfSitting;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.report.EditShop;
import io.github.tapwright.report.MakeReport;
import io.github.tapwright.sitting.AddCalibration;
import io.github.tapwright.sitting.AddInstrument;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.AnalyseNotes;
import io.github.tapwright.sitting.AnalyseTaps;
import io.github.tapwright.sitting.CheckCalibration;
import io.github.tapwright.sitting.EditInstrument;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.FindTaps;
import io.github.tapwright.sitting.ListCalibrations;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.MapFingerboard;
import io.github.tapwright.sitting.MeasureLevels;
import io.github.tapwright.sitting.MeasurePlucks;
import io.github.tapwright.sitting.NameResonance;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.ShowCalibration;
import io.github.tapwright.sitting.ShowInstrument;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SideBySide;
import io.github.tapwright.sitting.WithdrawCalibration;
import io.github.tapwright.sitting.listening.ListListenings;
import io.github.tapwright.sitting.live.InputDevice;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.sitting.live.RecordLive;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Where the parts are joined: sound files, archive and clock on one side, the use cases on the other. */
final class Bench {

    private final Supplier<Clock> clock;
    private final Path home;

    /**
     * A bench.
     *
     * @param clock what tells the time, in the workshop's zone; asked for only where the time matters, as Java takes a
     *     twentieth of a second to learn the zones of the world
     * @param home the program's own folder, where its demo recordings lie
     */
    Bench(Supplier<Clock> clock, Path home) {
        this.clock = clock;
        this.home = home;
    }

    Clock clock() {
        return clock.get();
    }

    Path home() {
        return home;
    }

    AnalyseTaps analyseTaps() {
        return new AnalyseTaps(AudioFile::source, SideBySide.ALL_PROCESSORS);
    }

    AnalyseNotes analyseNotes() {
        return new AnalyseNotes(AudioFile::source);
    }

    MeasurePlucks measurePlucks() {
        return new MeasurePlucks(AudioFile::source);
    }

    MapFingerboard mapFingerboard() {
        return new MapFingerboard(AudioFile::source, SideBySide.ALL_PROCESSORS);
    }

    MeasureLevels measureLevels() {
        return new MeasureLevels(AudioFile::source);
    }

    CheckCalibration checkCalibration() {
        return new CheckCalibration(AudioFile::source);
    }

    /** What one can record from. */
    List<InputDevice> inputDevices() {
        return new SoundCard().devices();
    }

    /** Opens an archive; a new one is made only where one is asked for, so that a slip in a name makes none. */
    OpenBench open(Path archive, boolean mayBeNew, Progress progress) {
        if (!mayBeNew && isNothing(archive)) {
            throw new ArchiveException("there is no archive in " + archive
                    + "; make one by adding an instrument, or choose another with --archive");
        }
        return new OpenBench(Archive.open(archive, clock()), clock(), progress);
    }

    VerifyReport restore(Path backup, Path folder, Progress progress) {
        return new Restore(clock()).restore(backup, folder, progress);
    }

    private static boolean isNothing(Path folder) {
        if (!Files.isDirectory(folder)) {
            return !Files.exists(folder);
        }
        try (Stream<Path> content = Files.list(folder)) {
            return content.findAny().isEmpty();
        } catch (IOException e) {
            throw new ArchiveException(
                    "the archive's folder " + folder + " cannot be read; give yourself permission to read it, or choose"
                            + " another with --archive",
                    e);
        }
    }

    /** The use cases of one open archive. */
    static final class OpenBench implements AutoCloseable {

        private final Archive archive;
        private final Clock clock;
        private final Progress progress;

        private OpenBench(Archive archive, Clock clock, Progress progress) {
            this.archive = archive;
            this.clock = clock;
            this.progress = progress;
        }

        Path folder() {
            return archive.folder();
        }

        AddInstrument addInstrument() {
            return new AddInstrument(archive.instruments());
        }

        EditInstrument editInstrument() {
            return new EditInstrument(archive.instruments());
        }

        ListInstruments listInstruments() {
            return new ListInstruments(archive.instruments());
        }

        ShowInstrument showInstrument() {
            return new ShowInstrument(archive.instruments());
        }

        AddSitting addSitting() {
            return new AddSitting(
                    archive.instruments(), archive.sittings(), archive.calibrations(), AudioFile::source, clock);
        }

        RecordLive recordLive() {
            return new RecordLive(archive.instruments(), new SoundCard(), archive.captures(), clock);
        }

        KeepCapture keepCapture() {
            return new KeepCapture(archive.captures(), archive.sittings(), addSitting());
        }

        ListSittings listSittings() {
            return new ListSittings(archive.instruments(), archive.sittings());
        }

        WithdrawCalibration withdrawCalibration() {
            return new WithdrawCalibration(archive.calibrations(), clock);
        }

        SetSittingAside setSittingAside() {
            return new SetSittingAside(archive.sittings(), clock);
        }

        ShowSitting showSitting() {
            return new ShowSitting(archive.sittings());
        }

        StudyBench studyBench() {
            return new StudyBench(archive.sittings(), archive.benchStudies(), clock);
        }

        StudyPlaying studyPlaying() {
            return new StudyPlaying(archive.sittings(), archive.benchStudies(), clock);
        }

        ComparePlayed comparePlayed() {
            return new ComparePlayed(archive.sittings(), studyPlaying());
        }

        CompareSittings compareSittings() {
            return new CompareSittings(archive.sittings(), studyBench());
        }

        BodyModelOfSitting bodyModelOfSitting() {
            return new BodyModelOfSitting(archive.sittings(), archive.instruments(), studyBench());
        }

        CompareGroups compareGroups() {
            return new CompareGroups(archive.instruments(), archive.sittings());
        }

        FollowInstrument followInstrument() {
            return new FollowInstrument(
                    archive.instruments(), archive.sittings(), studyBench(), studyPlaying(), clock.getZone());
        }

        FindTaps findTaps() {
            return new FindTaps(archive.sittings());
        }

        MakeReport makeReport() {
            return new MakeReport(
                    new MakeReport.Stores(archive.instruments(), archive.sittings(), archive.shop()),
                    new MakeReport.Questions(
                            studyBench(), compareSittings(), comparePlayed(), followInstrument(), compareGroups()),
                    clock.getZone());
        }

        EditShop editShop() {
            return new EditShop(archive.shop(), clock);
        }

        NameResonance nameResonance() {
            return new NameResonance(archive.sittings(), clock);
        }

        ReanalyseSitting reanalyseSitting() {
            return new ReanalyseSitting(archive.sittings(), archive.calibrations(), AudioFile::source, clock);
        }

        EditSitting editSitting() {
            return new EditSitting(archive.sittings(), reanalyseSitting(), clock);
        }

        AddCalibration addCalibration() {
            return new AddCalibration(archive.calibrations(), AudioFile::source, clock);
        }

        ListCalibrations listCalibrations() {
            return new ListCalibrations(archive.calibrations());
        }

        ListListenings listListenings() {
            return new ListListenings(archive.listenings());
        }

        ShowCalibration showCalibration() {
            return new ShowCalibration(archive.calibrations());
        }

        VerifyReport verify() {
            return archive.verify(progress);
        }

        void backUp(Path target) {
            archive.backUp(target, progress);
        }

        @Override
        public void close() {
            archive.close();
        }
    }
}
