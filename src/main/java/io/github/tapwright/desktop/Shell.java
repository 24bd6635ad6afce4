package io.github.tapwright.desktop;

import io.github.tapwright.desktop.compare.CompareModel;
import io.github.tapwright.desktop.compare.CompareView;
import io.github.tapwright.desktop.compare.GroupsModel;
import io.github.tapwright.desktop.listening.ListeningModel;
import io.github.tapwright.desktop.listening.ListeningView;
import io.github.tapwright.desktop.notes.NotesModel;
import io.github.tapwright.desktop.notes.NotesView;
import io.github.tapwright.desktop.reports.ReportsModel;
import io.github.tapwright.desktop.reports.ReportsView;
import io.github.tapwright.desktop.reports.ShopModel;
import io.github.tapwright.desktop.response.ResponseModel;
import io.github.tapwright.desktop.response.ResponseView;
import io.github.tapwright.desktop.settings.CalibrationsModel;
import io.github.tapwright.desktop.settings.SettingsFile;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.settings.SettingsView;
import io.github.tapwright.desktop.settings.SpreadModel;
import io.github.tapwright.desktop.shelf.ShelfModel;
import io.github.tapwright.desktop.shelf.ShelfView;
import io.github.tapwright.desktop.sitting.SittingModel;
import io.github.tapwright.desktop.sitting.SittingView;
import io.github.tapwright.desktop.sound.PlaybackModel;
import io.github.tapwright.desktop.timeline.TimelineModel;
import io.github.tapwright.desktop.timeline.TimelineView;
import io.github.tapwright.desktop.work.BackgroundWork;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.report.ReportSubject;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.Stretch;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Joins the screens: what leads from one to another, the keys that work everywhere, light and dark. */
final class Shell implements AutoCloseable {

    private static final int SHELF = 0;
    private static final int SITTING = 1;
    private static final int RESPONSE = 2;
    private static final int NOTES = 3;
    private static final int TIMELINE = 5;
    private static final int LISTENING = 6;
    private static final int REPORTS = 7;
    private static final int WORKSHOP = 8;

    private final OpenDesk desk;
    private final Notices notices;
    private final Consumer<String> openDocument;
    private final BackgroundWork work;
    private final SettingsModel settings;
    private final ShelfModel shelf;
    private final ShelfView shelfView;
    private final ResponseModel response;
    private final SittingModel sitting;
    private final PlaybackModel playback;
    private final NotesModel notes;
    private final ListeningModel listening;
    private final TimelineModel timeline;
    private final ReportsModel reports;
    private final ShellView view;
    private int correctingFrom;

    Shell(OpenDesk desk, Notices notices, Consumer<String> openDocument) {
        this.desk = desk;
        this.notices = notices;
        this.openDocument = openDocument;
        this.work = new BackgroundWork(Platform::runLater, notices);
        this.settings = new SettingsModel(new SettingsFile(desk.folder()), notices);
        ZoneId zone = desk.clock().getZone();
        this.shelf = new ShelfModel(desk.lookAtShelf(), settings, work, notices);
        this.response = new ResponseModel(
                desk.listSittings(),
                desk.showSitting(),
                desk.nameResonance(),
                desk.reanalyseSitting(),
                work,
                notices,
                zone);
        this.sitting = new SittingModel(desk.makeSitting(), settings, work, notices, this::kept);
        this.playback = new PlaybackModel(desk.soundOutput(), work, notices, Platform::runLater);
        this.notes = new NotesModel(desk.lookAtNotes(), playback, work, zone);
        this.listening = new ListeningModel(desk.listen(), playback, work, notices, new SecureRandom()::nextLong, zone);
        this.shelfView = new ShelfView(shelf, new WaysFromShelf(), settings, zone);
        this.timeline =
                new TimelineModel(desk.listInstruments(), desk.followInstrument(), settings, work, notices, zone);
        this.reports = new ReportsModel(desk.makeReports(), settings, desk.clock(), work, notices);
        this.view = new ShellView(
                List.of(
                        new Screen("Shelf", this::shelfFront),
                        new Screen("Sitting", this::sittingFront),
                        new Screen("Response", this::responseFront),
                        new Screen("Notes", this::notesFront),
                        new Screen("Compare", this::compareFront),
                        new Screen("Timeline", this::timelineFront),
                        new Screen("Listening", this::listeningFront),
                        new Screen("Reports", this::reportsFront),
                        new Screen("Workshop", this::workshopFront)),
                work,
                notices,
                settings);
        shelf.isCorrecting().addListener((o, before, open) -> followCorrection(open));
        shelf.whenCorrected(() -> followCorrected(SHELF));
    }

    /** What is put right, or taken back, while another screen than its own is looked at shows there at once. */
    private void followCorrected(int own) {
        if (view.current() != own) {
            view.refresh();
        }
    }

    /** Whoever asks for it, the form stands on the shelf, and leads back to where it was asked for. */
    private void followCorrection(boolean open) {
        if (open) {
            correctingFrom = view.current();
        }
        int next = open ? SHELF : correctingFrom;
        if (view.current() != next && (open || view.current() == SHELF)) {
            view.show(next);
        }
    }

    private Screen.Front shelfFront() {
        return new Screen.Front(shelfView.node(), shelf::refresh, shelfView::focus);
    }

    private Screen.Front sittingFront() {
        SittingView sittingView = new SittingView(sitting, settings);
        return new Screen.Front(sittingView.node(), sitting::refresh, sittingView::focus);
    }

    private Screen.Front responseFront() {
        ResponseView responseView = new ResponseView(response, settings, new WaysFromResponse());
        return new Screen.Front(responseView.node(), response::refresh, responseView::focus);
    }

    private Screen.Front notesFront() {
        NotesView notesView = new NotesView(notes, playback, this::listen, settings);
        return new Screen.Front(notesView.node(), notes::refresh, notesView::focus);
    }

    private Screen.Front compareFront() {
        CompareModel compare = new CompareModel(
                desk.listSittings(),
                desk.compareSittings(),
                desk.comparePlayed(),
                settings,
                work,
                notices,
                desk.clock().getZone());
        GroupsModel groups = new GroupsModel(desk.compareGroups(), work, notices);
        CompareView compareView = new CompareView(compare, groups, settings, this::report);
        return new Screen.Front(compareView.node(), compare::refresh, compareView::focus);
    }

    private Screen.Front timelineFront() {
        TimelineView timelineView = new TimelineView(timeline, settings, new WaysFromTimeline());
        return new Screen.Front(timelineView.node(), timeline::refresh, timelineView::focus);
    }

    private Screen.Front listeningFront() {
        ListeningView listeningView = new ListeningView(listening, playback);
        return new Screen.Front(listeningView.node(), listening::refresh, listeningView::focus);
    }

    private Screen.Front reportsFront() {
        ShopModel shop = new ShopModel(desk.editShop(), work, notices);
        ReportsView reportsView = new ReportsView(
                reports, shop, file -> openDocument.accept(file.toUri().toString()));
        Runnable refresh = () -> {
            reports.refresh();
            shop.refresh();
        };
        return new Screen.Front(reportsView.node(), refresh, reportsView::focus);
    }

    private Screen.Front workshopFront() {
        SpreadModel spread = new SpreadModel(
                desk.studySpread(), settings, work, notices, desk.clock().getZone());
        sitting.study().whenTakenBack(spread::refresh);
        CalibrationsModel calibrations = new CalibrationsModel(desk.lookAtCalibrations(), work, notices);
        calibrations.whenCorrected(() -> followCorrected(WORKSHOP));
        SettingsView settingsView = new SettingsView(settings, spread, calibrations);
        Runnable refresh = () -> {
            spread.refresh();
            calibrations.refresh();
        };
        return new Screen.Front(settingsView.node(), refresh, settingsView::focus);
    }

    private void report(ReportSubject subject) {
        show(REPORTS, () -> reports.prepare(subject));
    }

    Scene scene(double width, double height) {
        Scene scene = new Scene(view.node(), width, height);
        view.dress(scene);
        for (int i = 0; i < view.screenCount(); i++) {
            int screen = i;
            key(scene, KeyCode.getKeyCode(Integer.toString(i + 1)), () -> view.show(screen));
        }
        key(scene, KeyCode.N, () -> {
            view.show(SHELF);
            shelfView.addInstrument();
        });
        key(scene, KeyCode.Z, notices::undo);
        key(scene, KeyCode.D, () -> settings.change(settings.now().get().inOtherLight()));
        scene.getAccelerators().put(new KeyCodeCombination(KeyCode.F5), () -> view.show(view.current()));
        return scene;
    }

    private static void key(Scene scene, KeyCode code, Runnable action) {
        scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), action);
    }

    /** Shows the first screen, then builds the others one by one while the maker looks at it. */
    void begin() {
        view.show(SHELF);
        prepareFrom(SHELF + 1);
    }

    private void prepareFrom(int screen) {
        if (screen < view.screenCount()) {
            Platform.runLater(() -> {
                view.prepare(screen);
                prepareFrom(screen + 1);
            });
        }
    }

    /** Shows a sitting that was just kept. */
    private void kept(Sitting made) {
        open(made.id(), made.latest().findings().procedure().key());
    }

    private void open(SittingId id, String procedure) {
        if (procedure.equals(Procedure.BodyTaps.KEY)) {
            show(RESPONSE, () -> response.open(id));
        } else {
            show(NOTES, () -> notes.open(id));
        }
    }

    /** Builds a screen, tells its model something and shows it; what a model is told before may pass its screen by. */
    private void show(int screen, Runnable tell) {
        view.prepare(screen);
        tell.run();
        view.show(screen);
    }

    /** Takes a note to the blind listening. */
    private void listen(Stretch note) {
        show(LISTENING, () -> listening.choice().choose(note));
    }

    @Override
    public void close() {
        sitting.close();
        playback.stop();
        work.close();
        desk.close();
    }

    /** Where the shelf leads. */
    private final class WaysFromShelf implements ShelfView.Ways {

        @Override
        public void open(SittingSummary sitting) {
            Shell.this.open(sitting.id(), sitting.procedure());
        }

        @Override
        public void begin(ShopNumber instrument, List<Path> files) {
            show(SITTING, () -> sitting.begin(instrument, files));
        }

        @Override
        public void follow(ShopNumber instrument) {
            show(TIMELINE, () -> timeline.open(instrument));
        }
    }

    /** Where the response leads, to put its sitting right. */
    private final class WaysFromResponse implements ResponseView.Ways {

        @Override
        public void correct(SittingId of) {
            shelf.correct(of);
        }

        @Override
        public void setAside(SittingId of) {
            shelf.setAside(of);
        }

        @Override
        public void useAgain(SittingId of) {
            shelf.useAgain(of);
        }
    }

    /** Where the timeline leads. */
    private final class WaysFromTimeline implements TimelineView.Ways {

        @Override
        public void open(SittingId of) {
            show(RESPONSE, () -> response.open(of));
        }

        @Override
        public void report(ReportSubject subject) {
            Shell.this.report(subject);
        }
    }
}
