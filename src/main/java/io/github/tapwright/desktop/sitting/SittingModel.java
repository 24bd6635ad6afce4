package io.github.tapwright.desktop.sitting;

import io.github.tapwright.desktop.conditions.ConditionsForm;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.settings.StudyKeeping;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.InputDevice;
import io.github.tapwright.sitting.live.KeptCapture;
import io.github.tapwright.sitting.live.LeftCapture;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.LiveRequest;
import io.github.tapwright.sitting.live.LiveView;
import io.github.tapwright.tap.Strike;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A visit to the microphone, from setting up to the kept sitting. */
public final class SittingModel implements AutoCloseable {

    private final SittingUseCases use;
    private final SettingsModel settings;
    private final Work work;
    private final Notices notices;
    private final Consumer<Sitting> kept;
    private final ConditionsForm form = new ConditionsForm();
    private Conditions remembered = Conditions.UNKNOWN;
    private final ObjectProperty<Plan> plan = new SimpleObjectProperty<>(Plan.BODY_TAPS);
    private final ObjectProperty<Optional<ShopNumber>> instrument = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<Optional<InputDevice>> device = new SimpleObjectProperty<>(Optional.empty());
    private final ObjectProperty<LiveFormat> format = new SimpleObjectProperty<>(LiveFormat.STANDARD);
    private final ReadOnlyObjectWrapper<VisitStep> step = new ReadOnlyObjectWrapper<>(VisitStep.PREPARING);
    private final OpenMicrophone microphone = new OpenMicrophone();
    private final ObservableList<ShopNumber> instruments = FXCollections.observableArrayList();
    private final ObservableList<InputDevice> devices = FXCollections.observableArrayList();
    private final ObservableList<Path> files = FXCollections.observableArrayList();
    private final WaitingRecordings waiting;
    private final SetUpStudy study;

    /**
     * A visit nobody has begun.
     *
     * @param use the use cases
     * @param settings units of temperature
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param kept runs with each sitting that was kept
     */
    public SittingModel(
            SittingUseCases use, SettingsModel settings, Work work, Notices notices, Consumer<Sitting> kept) {
        this.use = use;
        this.settings = settings;
        this.work = work;
        this.notices = notices;
        this.kept = kept;
        this.waiting = new WaitingRecordings(use.keepCapture(), work, notices);
        this.study = new SetUpStudy(new StudyKeeping(use.studyBench(), settings, work, notices), notices);
        instrument.addListener((o, before, after) -> after.ifPresent(this::remember));
        plan.addListener((o, before, after) -> study.setUps().clear());
    }

    /**
     * The conditions as typed.
     *
     * @return the form
     */
    public ConditionsForm form() {
        return form;
    }

    /**
     * What the visit is for.
     *
     * @return changeable while preparing
     */
    public ObjectProperty<Plan> plan() {
        return plan;
    }

    /**
     * Whose visit it is.
     *
     * @return empty until chosen
     */
    public ObjectProperty<Optional<ShopNumber>> instrument() {
        return instrument;
    }

    /**
     * The input listened to.
     *
     * @return empty for the system's own choice
     */
    public ObjectProperty<Optional<InputDevice>> device() {
        return device;
    }

    /**
     * How it is read.
     *
     * @return rate, channels, bits
     */
    public ObjectProperty<LiveFormat> format() {
        return format;
    }

    /**
     * How far the visit has come.
     *
     * @return the step
     */
    public ReadOnlyObjectProperty<VisitStep> step() {
        return step.getReadOnlyProperty();
    }

    /**
     * The running recording as it was last looked at.
     *
     * @return empty while preparing
     */
    public ReadOnlyObjectProperty<Optional<LiveView>> live() {
        return microphone.live();
    }

    /**
     * Whom one can choose.
     *
     * @return the shop numbers
     */
    public ObservableList<ShopNumber> instruments() {
        return instruments;
    }

    /**
     * The inputs of this machine.
     *
     * @return as last listed
     */
    public ObservableList<InputDevice> devices() {
        return devices;
    }

    /**
     * Recordings made elsewhere that are to be kept.
     *
     * @return files
     */
    public ObservableList<Path> files() {
        return files;
    }

    /**
     * Recordings that wait to be kept, from this visit or from one that was broken off.
     *
     * @return as last looked for
     */
    public WaitingRecordings waiting() {
        return waiting;
    }

    /**
     * The repeatability study under way.
     *
     * @return its set-ups so far
     */
    public SetUpStudy study() {
        return study;
    }

    /** Lists instruments, inputs and waiting recordings anew, and follows corrections of the last sitting. */
    public void refresh() {
        work.start(
                new Job<>(
                        "Listing instruments", progress -> use.listInstruments().shopNumbers()),
                instruments::setAll);
        instrument.get().ifPresent(this::followLast);
        refreshDevices();
        waiting.refresh();
    }

    /** Looks for inputs anew, after one was plugged in. */
    public void refreshDevices() {
        work.start(new Job<>("Looking for inputs", progress -> use.recordLive().devices()), devices::setAll);
    }

    /**
     * Begins a visit.
     *
     * @param of whose
     * @param recordings made elsewhere; none to record anew
     */
    public void begin(ShopNumber of, List<Path> recordings) {
        if (step.get() == VisitStep.PREPARING) {
            instrument.set(Optional.of(of));
            files.setAll(recordings);
        } else {
            notices.trouble("A recording is under way: stop it, keep it or set it aside, then begin another");
        }
    }

    private void remember(ShopNumber of) {
        work.start(lastOf(of), last -> {
            remembered = last;
            form.remember(last);
        });
    }

    /** What was remembered may have been corrected on the shelf since. */
    private void followLast(ShopNumber of) {
        work.start(lastOf(of), last -> {
            if (step.get() == VisitStep.PREPARING && instrument.get().equals(Optional.of(of))) {
                form.follow(remembered, last);
                remembered = last;
            }
        });
    }

    private Job<Conditions> lastOf(ShopNumber of) {
        return new Job<>(
                "Reading the last sitting of instrument " + of,
                progress -> use.lastConditions(of).orElse(Conditions.UNKNOWN));
    }

    /** Opens the microphone; from now on everything heard goes to the disk. */
    public void record() {
        if (step.get() != VisitStep.PREPARING) {
            return;
        }
        typed().ifPresent(conditions -> {
            try {
                microphone.open(use.recordLive()
                        .start(new LiveRequest(
                                chosen(),
                                plan.get().procedure(settings.now().get()),
                                conditions,
                                device.get().map(InputDevice::name),
                                format.get())));
                step.set(VisitStep.RECORDING);
                look();
            } catch (RuntimeException e) {
                notices.failed("Opening the microphone", e);
            }
        });
    }

    /** The conditions, or a notice of what is wrong with them. */
    private Optional<Conditions> typed() {
        try {
            chosen();
            return Optional.of(form.read(plan.get().hole(), settings.units(), use.today()));
        } catch (RefusedEntryException e) {
            notices.trouble(String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    private ShopNumber chosen() {
        return instrument.get().orElseThrow(() -> new RefusedEntryException("Choose an instrument first"));
    }

    /** Looks at the running recording; to be called some times a second. */
    public void look() {
        if (step.get() == VisitStep.RECORDING && !microphone.look()) {
            microphone.live().get().flatMap(LiveView::trouble).ifPresent(notices::trouble);
            stop();
        }
    }

    /** Sets the last used strike aside; the sound itself stays. */
    public void undoStrike() {
        microphone.undoStrike().ifPresent(strike -> {
            notices.say("Set the last strike aside", () -> toggle(strike));
            look();
        });
    }

    /**
     * Sets a strike aside, or takes it back.
     *
     * @param strike which
     */
    public void toggle(Strike strike) {
        microphone.toggle(strike);
        look();
    }

    /** Ends the recording; all of it is on disk then. */
    public void stop() {
        if (step.get() != VisitStep.RECORDING) {
            return;
        }
        microphone.stop();
        step.set(VisitStep.RECORDED);
        waiting.refresh();
        if (plan.get() == Plan.ROOM_CHECK) {
            // The room is no instrument; its recording is put out of the way, what it told stays on the screen.
            microphone.recorded().ifPresent(waiting::setAside);
        }
    }

    /** Keeps the recording as a sitting, with the conditions as they read now. */
    public void keep() {
        microphone
                .recorded()
                .filter(id -> step.get() == VisitStep.RECORDED)
                .ifPresent(id -> typed().ifPresent(known -> keep(id, notes -> notes.with(known))));
    }

    private void keep(CaptureId id, UnaryOperator<CaptureNotes> change) {
        work.start(
                new Job<>("Keeping the recording", progress -> use.keepCapture().keep(id, change, progress)),
                made -> finish(made, microphone.recorded().equals(Optional.of(id))));
    }

    /**
     * Keeps a recording that was left behind, with what was written down when it was made.
     *
     * @param left which
     */
    public void recover(LeftCapture left) {
        keep(left.id(), notes -> notes);
    }

    /** Keeps recordings made elsewhere as a sitting. */
    public void keepFiles() {
        List<Path> chosen = List.copyOf(files);
        typed().ifPresent(known -> keep(new SittingRequest(
                chosen(),
                Optional.empty(),
                known,
                chosen,
                plan.get().procedure(settings.now().get()))));
    }

    private void keep(SittingRequest request) {
        work.start(new Job<>("Keeping recordings", progress -> use.addSitting().add(request, progress)), sitting -> {
            files.clear();
            finish(new KeptCapture(sitting, false), step.get() == VisitStep.PREPARING);
        });
    }

    /** Keeping takes its time; another recording may run by now, which then goes on undisturbed. */
    private void finish(KeptCapture made, boolean ofThisVisit) {
        if (ofThisVisit) {
            endVisit();
            form.askAgain();
            instrument.get().ifPresent(of -> work.start(lastOf(of), last -> remembered = last));
        }
        waiting.refresh();
        if (ofThisVisit && plan.get() == Plan.REPEATABILITY) {
            study.add(made.sitting().id());
            return;
        }
        notices.say(made.words());
        if (step.get() == VisitStep.PREPARING) {
            kept.accept(made.sitting());
        }
    }

    /** Puts the recording out of the way without a sitting; its file stays. */
    public void discard() {
        microphone.recorded().filter(id -> step.get() == VisitStep.RECORDED).ifPresent(waiting::setAside);
        endVisit();
    }

    /** Goes back to preparing. What was recorded stays on disk. */
    public void endVisit() {
        microphone.forget();
        step.set(VisitStep.PREPARING);
    }

    /** Ends a recording under way; it waits on disk and is offered at the next start. */
    @Override
    public void close() {
        microphone.close();
    }
}
