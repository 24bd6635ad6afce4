package io.github.tapwright.desktop;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.group.CompareGroups;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.desktop.reports.ReportsModel;
import io.github.tapwright.desktop.settings.CalibrationsModel;
import io.github.tapwright.desktop.settings.SettingsFile;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.settings.SpreadModel;
import io.github.tapwright.desktop.shelf.ShelfModel;
import io.github.tapwright.desktop.sitting.SittingUseCases;
import io.github.tapwright.desktop.work.DirectWork;
import io.github.tapwright.desktop.work.Notice;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.level.CalibratorTone;
import io.github.tapwright.level.Sound;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleRate;
import io.github.tapwright.report.EditShop;
import io.github.tapwright.sitting.AddCalibration;
import io.github.tapwright.sitting.AddInstrument;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.CalibratedInput;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.CalibrationRequest;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NameResonance;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.sitting.WrittenDown;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.FingerboardRun;
import io.github.tapwright.synthesis.TapScene;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.TapSettings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A desk without a screen: a real archive in a folder, models on top, jobs done at once. */
public final class TestDesk implements AutoCloseable {

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-14T09:26:53Z"), ZoneOffset.UTC);

    private final Path folder;
    private final OpenDesk desk;
    private final List<Throwable> faults = new ArrayList<>();
    private final Notices notices = new Notices(faults::add);
    private int files;

    /** Opens a desk in an empty folder. */
    public TestDesk(Path folder) throws IOException {
        this.folder = folder;
        this.desk = OpenDesk.open(folder.resolve("archive"), CLOCK);
    }

    /** Sets a sitting aside, as another program does that has the same archive open. */
    public void setAside(SittingId sitting, String reason) {
        try (Archive archive = Archive.open(folder.resolve("archive"), CLOCK)) {
            new SetSittingAside(archive.sittings(), CLOCK).setAside(sitting, reason);
        }
    }

    /** Keeps the tone of a calibrator that is said to make so many dB, as the command line does; the desktop does not. */
    public CalibrationId calibration(double levelDb) throws IOException {
        Path file = folder.resolve("tone-" + ++files + ".wav");
        Recording tone = Recording.of(new SampleRate(48_000), Sound.sine(48_000, 4, 1000, -20));
        WavWriter.write(file, tone, WavSamples.INT_24);
        try (Archive archive = Archive.open(folder.resolve("archive"), CLOCK)) {
            return new AddCalibration(archive.calibrations(), AudioFile::source, CLOCK)
                    .add(
                            new CalibrationRequest(
                                    file,
                                    CalibratorTone.classOne(levelDb),
                                    Optional.empty(),
                                    new CalibratedInput(Optional.of("measuring microphone"), Optional.of("30 dB"))),
                            Progress.SILENT)
                    .id();
        }
    }

    /** Puts a guitar on the shelf. */
    public ShopNumber instrument(String number) {
        ShopNumber shopNumber = new ShopNumber(number);
        desk.addInstrument().add(Instrument.of(shopNumber, InstrumentKind.CLASSICAL));
        return shopNumber;
    }

    /** Puts a guitar of known construction on the shelf. */
    public ShopNumber instrument(String number, ConstructionKind construction) {
        ShopNumber shopNumber = new ShopNumber(number);
        Instrument bare = Instrument.of(shopNumber, InstrumentKind.CLASSICAL);
        desk.addInstrument()
                .add(new Instrument(
                        shopNumber,
                        bare.kind(),
                        bare.body(),
                        new Construction(
                                Optional.of(construction),
                                Layer.UNKNOWN,
                                Layer.UNKNOWN,
                                Layer.UNKNOWN,
                                Optional.empty()),
                        Optional.empty(),
                        Optional.empty()));
        return shopNumber;
    }

    /** Strung, strings damped, in air of 45 % and 20 °C. */
    public static Conditions strung(HoleState hole) {
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(20.0), Optional.of(45.0)),
                new Strings(Optional.of(StringState.DAMPED), Optional.empty(), Optional.empty()),
                hole,
                Placing.UNKNOWN,
                Microphone.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** The same, but for the gain of the microphone. */
    public static WrittenDown withGain(WrittenDown of, String gain) {
        Conditions known = of.conditions();
        Microphone microphone = known.microphone();
        return new WrittenDown(
                of.instrument(),
                of.takenAt(),
                new Conditions(
                        known.stage(),
                        known.air(),
                        known.strings(),
                        known.hole(),
                        known.placing(),
                        new Microphone(microphone.model(), microphone.distanceMm(), Optional.of(gain)),
                        known.addedMass(),
                        known.operator(),
                        known.note()));
    }

    /** A recording of five taps on a body of two modes. */
    public Path taps(double airHz, double topHz) {
        Path file = folder.resolve("taps-" + ++files + ".wav");
        try {
            WavWriter.write(
                    file,
                    TapScene.of(TrueMode.resonator(airHz, 22, 0.5), TrueMode.resonator(topHz, 30, 1))
                            .strikes(5, 1.3)
                            .firstAt(0.6)
                            .build()
                            .recording(),
                    WavSamples.INT_24);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    /** Keeps a sitting of such taps. */
    public Sitting sitting(ShopNumber of, double airHz, double topHz, Conditions conditions) {
        return sitting(of, Optional.empty(), airHz, topHz, conditions);
    }

    /** Keeps a sitting of such taps, taken at a time. */
    public Sitting sitting(ShopNumber of, Optional<Moment> taken, double airHz, double topHz, Conditions conditions) {
        return desk.addSitting()
                .add(
                        new SittingRequest(
                                of,
                                taken,
                                conditions,
                                List.of(taps(airHz, topHz)),
                                new Procedure.BodyTaps(TapSettings.STANDARD)),
                        Progress.SILENT);
    }

    /** Keeps a sitting of a run of notes. */
    public Sitting notes(ShopNumber of, FingerboardRun run) throws IOException {
        return played(of, run, Conditions.UNKNOWN, new Procedure.NoteRun(Fingerboard.Settings.STANDARD));
    }

    /** Keeps a sitting of six notes of the lowest string, every one ringing so many times longer than usual. */
    public Sitting ringing(ShopNumber of, double longer) throws IOException {
        List<Fret> places = IntStream.range(0, 6).mapToObj(f -> new Fret(6, f)).toList();
        return notes(of, run(places, 4, longer));
    }

    /** Keeps a sitting of three plucks of each of two open strings, ringing so many times longer than usual. */
    public Sitting plucks(ShopNumber of, String gain, double longer) throws IOException {
        return plucks(of, gain, longer, Optional.empty());
    }

    /** The same, measured by a calibration. */
    public Sitting plucks(ShopNumber of, String gain, double longer, Optional<CalibrationId> by) throws IOException {
        List<Fret> places = IntStream.range(0, 6)
                .mapToObj(i -> new Fret(i % 2 == 0 ? 4 : 3, 0))
                .toList();
        return played(of, run(places, 1.6, longer), atGain(gain), new Procedure.OpenPlucks(Tuning.CLASSICAL, by));
    }

    private static FingerboardRun run(List<Fret> places, double secondsEach, double longer) {
        return new FingerboardRun(
                places,
                secondsEach,
                places.stream().distinct().collect(Collectors.toMap(Function.identity(), p -> longer)));
    }

    private static Conditions atGain(String gain) {
        return new Conditions(
                Optional.empty(),
                Air.UNKNOWN,
                Strings.UNKNOWN,
                HoleState.OPEN,
                Placing.UNKNOWN,
                new Microphone(Optional.empty(), Optional.empty(), Optional.of(gain)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private Sitting played(ShopNumber of, FingerboardRun run, Conditions conditions, Procedure procedure)
            throws IOException {
        Path file = folder.resolve("run-" + ++files + ".wav");
        WavWriter.write(file, run.recording(48_000, Chance.seeded(files)), WavSamples.INT_24);
        return desk.addSitting()
                .add(new SittingRequest(of, Optional.empty(), conditions, List.of(file), procedure), Progress.SILENT);
    }

    public Work work() {
        return new DirectWork(notices);
    }

    public Notices notices() {
        return notices;
    }

    /** What the maker reads last; empty if nothing. */
    public String said() {
        return notices.latest().get().map(Notice::words).orElse("");
    }

    /** Failures of the program itself. */
    public List<Throwable> faults() {
        return faults;
    }

    public SettingsModel settings() {
        return new SettingsModel(new SettingsFile(desk.folder()), notices);
    }

    public ListInstruments listInstruments() {
        return desk.listInstruments();
    }

    public ListSittings listSittings() {
        return desk.listSittings();
    }

    public ShowSitting showSitting() {
        return desk.showSitting();
    }

    public AddInstrument addInstrument() {
        return desk.addInstrument();
    }

    public NameResonance nameResonance() {
        return desk.nameResonance();
    }

    public ReanalyseSitting reanalyseSitting() {
        return desk.reanalyseSitting();
    }

    public ComparePlayed comparePlayed() {
        return desk.comparePlayed();
    }

    public CompareSittings compareSittings() {
        return desk.compareSittings();
    }

    public CompareGroups compareGroups() {
        return desk.compareGroups();
    }

    public FollowInstrument followInstrument() {
        return desk.followInstrument();
    }

    public ReportsModel.UseCases makeReports() {
        return desk.makeReports();
    }

    public EditShop editShop() {
        return desk.editShop();
    }

    public Clock clock() {
        return CLOCK;
    }

    public SpreadModel.UseCases studySpread() {
        return desk.studySpread();
    }

    public ShelfModel.UseCases lookAtShelf() {
        return desk.lookAtShelf();
    }

    public CalibrationsModel.UseCases lookAtCalibrations() {
        return desk.lookAtCalibrations();
    }

    public SittingUseCases makeSitting() {
        return desk.makeSitting();
    }

    @Override
    public void close() {
        desk.close();
    }
}
