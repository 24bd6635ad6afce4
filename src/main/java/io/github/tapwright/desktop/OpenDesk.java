package io.github.tapwright.desktop;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.SoundCard;
import io.github.tapwright.audio.SoundPlayer;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.listening.ListenBlind;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.desktop.listening.ListeningModel;
import io.github.tapwright.desktop.notes.NotesModel;
import io.github.tapwright.desktop.reports.ReportsModel;
import io.github.tapwright.desktop.settings.CalibrationsModel;
import io.github.tapwright.desktop.settings.SpreadModel;
import io.github.tapwright.desktop.shelf.ShelfModel;
import io.github.tapwright.desktop.sitting.SittingUseCases;
import io.github.tapwright.report.EditShop;
import io.github.tapwright.report.MakeReport;
import io.github.tapwright.sitting.AddInstrument;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.CutStretch;
import io.github.tapwright.sitting.EditInstrument;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.FindTaps;
import io.github.tapwright.sitting.ListCalibrations;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.NameResonance;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.ShowCalibration;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SoundOutput;
import io.github.tapwright.sitting.WithdrawCalibration;
import io.github.tapwright.sitting.live.CaptureStore;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.sitting.live.RecordLive;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;

/** Where the desktop's parts are joined: an open archive, sound and clock on one side, the use cases on the other. */
public final class OpenDesk implements AutoCloseable {

    private final Archive archive;
    private final Clock clock;

    private OpenDesk(Archive archive, Clock clock) {
        this.archive = archive;
        this.clock = clock;
    }

    /**
     * Opens an archive, or makes one where there is none.
     *
     * @param folder its folder
     * @param clock tells the time, in the workshop's zone
     * @return the desk, open until it is closed
     * @throws IOException if the folder cannot be used
     */
    public static OpenDesk open(Path folder, Clock clock) throws IOException {
        return new OpenDesk(Archive.open(folder, clock), clock);
    }

    Path folder() {
        return archive.folder();
    }

    Clock clock() {
        return clock;
    }

    AddInstrument addInstrument() {
        return new AddInstrument(archive.instruments());
    }

    ListInstruments listInstruments() {
        return new ListInstruments(archive.instruments());
    }

    ListSittings listSittings() {
        return new ListSittings(archive.instruments(), archive.sittings());
    }

    ShowSitting showSitting() {
        return new ShowSitting(archive.sittings());
    }

    AddSitting addSitting() {
        return new AddSitting(
                archive.instruments(), archive.sittings(), archive.calibrations(), AudioFile::source, clock);
    }

    NameResonance nameResonance() {
        return new NameResonance(archive.sittings(), clock);
    }

    ReanalyseSitting reanalyseSitting() {
        return new ReanalyseSitting(archive.sittings(), archive.calibrations(), AudioFile::source, clock);
    }

    FindTaps findTaps() {
        return new FindTaps(archive.sittings());
    }

    StudyBench studyBench() {
        return new StudyBench(archive.sittings(), archive.benchStudies(), clock);
    }

    CompareSittings compareSittings() {
        return new CompareSittings(archive.sittings(), studyBench());
    }

    StudyPlaying studyPlaying() {
        return new StudyPlaying(archive.sittings(), archive.benchStudies(), clock);
    }

    ComparePlayed comparePlayed() {
        return new ComparePlayed(archive.sittings(), studyPlaying());
    }

    CompareGroups compareGroups() {
        return new CompareGroups(archive.instruments(), archive.sittings());
    }

    FollowInstrument followInstrument() {
        return new FollowInstrument(
                archive.instruments(), archive.sittings(), studyBench(), studyPlaying(), clock.getZone());
    }

    EditShop editShop() {
        return new EditShop(archive.shop(), clock);
    }

    ReportsModel.UseCases makeReports() {
        MakeReport makeReport = new MakeReport(
                new MakeReport.Stores(archive.instruments(), archive.sittings(), archive.shop()),
                new MakeReport.Questions(
                        studyBench(), compareSittings(), comparePlayed(), followInstrument(), compareGroups()),
                clock.getZone());
        return new ReportsModel.UseCases(listInstruments(), listSittings(), makeReport);
    }

    ShelfModel.UseCases lookAtShelf() {
        return new ShelfModel.UseCases(
                listInstruments(),
                listSittings(),
                showSitting(),
                addInstrument(),
                new EditInstrument(archive.instruments()),
                new EditSitting(archive.sittings(), reanalyseSitting(), clock),
                new SetSittingAside(archive.sittings(), clock),
                reanalyseSitting(),
                new ListCalibrations(archive.calibrations()),
                clock.getZone());
    }

    SittingUseCases makeSitting() {
        CaptureStore captures = archive.captures();
        return new SittingUseCases(
                listInstruments(),
                listSittings(),
                showSitting(),
                addSitting(),
                new RecordLive(archive.instruments(), new SoundCard(), captures, clock),
                new KeepCapture(captures, archive.sittings(), addSitting()),
                studyBench(),
                clock);
    }

    SpreadModel.UseCases studySpread() {
        return new SpreadModel.UseCases(studyBench(), studyPlaying(), listInstruments(), listSittings());
    }

    CalibrationsModel.UseCases lookAtCalibrations() {
        return new CalibrationsModel.UseCases(
                new ListCalibrations(archive.calibrations()),
                new ShowCalibration(archive.calibrations()),
                new WithdrawCalibration(archive.calibrations(), clock),
                showSitting(),
                reanalyseSitting(),
                clock.getZone());
    }

    NotesModel.UseCases lookAtNotes() {
        return new NotesModel.UseCases(listSittings(), showSitting(), findTaps(), cutStretch());
    }

    ListeningModel.UseCases listen() {
        return new ListeningModel.UseCases(
                listSittings(), showSitting(), new ListenBlind(archive.listenings(), cutStretch(), clock));
    }

    SoundOutput soundOutput() {
        return new SoundPlayer();
    }

    private CutStretch cutStretch() {
        return new CutStretch(archive.sittings(), AudioFile::source);
    }

    @Override
    public void close() {
        archive.close();
    }
}
