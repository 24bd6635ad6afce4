package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.conditions.ConditionsForm;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.settings.SettingsModel;
import io.github.tapwright.desktop.work.GivenUpException;
import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.EditSitting;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.WrittenDown;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Corrects what is written down about a sitting: of which instrument it is, when it was taken, and its conditions. */
final class CorrectSittingModel implements Correction {

    private final ShelfModel.UseCases use;
    private final SettingsModel settings;
    private final Work work;
    private final Notices notices;
    private final Runnable corrected;
    private final ConditionsForm form = new ConditionsForm();
    private final StringProperty taken = new SimpleStringProperty("");
    private final ObjectProperty<HoleState> hole = new SimpleObjectProperty<>(HoleState.UNKNOWN);
    private final ObjectProperty<Optional<ShopNumber>> instrument = new SimpleObjectProperty<>(Optional.empty());
    private List<Optional<ShopNumber>> instruments = List.of();
    private final LatestQuestion asked = new LatestQuestion();
    private final OpenForm state;
    private Optional<Shown> shown = Optional.empty();

    /**
     * What the form was filled with.
     *
     * @param id which sitting
     * @param kept as the archive had it
     * @param ofTaps whether its soundhole decides names
     * @param unfinished whether it was corrected, but not analysed anew as that asks for
     */
    private record Shown(SittingId id, WrittenDown kept, boolean ofTaps, boolean unfinished) {}

    /**
     * Nothing is being corrected.
     *
     * @param use the use cases
     * @param settings the unit of temperatures
     * @param free whether no form is open
     * @param corrected runs when something was
     */
    CorrectSittingModel(
            ShelfModel.UseCases use,
            SettingsModel settings,
            Work work,
            Notices notices,
            BooleanSupplier free,
            Runnable corrected) {
        this.use = use;
        this.settings = settings;
        this.work = work;
        this.notices = notices;
        this.corrected = corrected;
        this.state = new OpenForm(notices, free);
        state.tell(
                Stream.concat(form.all(), Stream.of(instrument, taken, hole)).toList(), this::preview, settings.now());
        settings.now().addListener((o, before, after) -> follow(before.units(), after.units()));
    }

    /** The conditions, as known and as typed. */
    ConditionsForm form() {
        return form;
    }

    /** Of which instrument it is. */
    ObjectProperty<Optional<ShopNumber>> instrument() {
        return instrument;
    }

    /** Those it can be moved to, and its own. */
    List<Optional<ShopNumber>> instruments() {
        return instruments;
    }

    /** When it was taken: a day, or a day and a time. */
    StringProperty taken() {
        return taken;
    }

    /** The soundhole. */
    ObjectProperty<HoleState> hole() {
        return hole;
    }

    @Override
    public OpenForm state() {
        return state;
    }

    private String preview() {
        return shown.map(of -> new SittingWords(use.zone())
                        .preview(of.kept(), typed(of.kept()), of.ofTaps(), settings.units()))
                .orElse("");
    }

    /** A sitting, and the instruments it can be of. */
    private record Read(Sitting sitting, List<ShopNumber> instruments) {}

    /** Opens the form with all that is known about a sitting. */
    void open(SittingId id) {
        long mine = asked.ask();
        work.start(
                new Job<>(
                        "Reading sitting " + id,
                        progress -> new Read(
                                use.showSitting().show(id),
                                use.listInstruments().shopNumbers())),
                read -> {
                    if (asked.isLatest(mine)) {
                        state.open(() -> fill(read), "Correct " + Correction.name(read.sitting()));
                    }
                });
    }

    private void fill(Read read) {
        WrittenDown kept = WrittenDown.of(read.sitting());
        shown = Optional.of(new Shown(read.sitting().id(), kept, isOfTaps(read.sitting()), false));
        instruments = read.instruments().stream().map(Optional::of).toList();
        write(kept);
    }

    private static boolean isOfTaps(Sitting sitting) {
        return sitting.latest().findings().procedure() instanceof Procedure.BodyTaps;
    }

    private void write(WrittenDown known) {
        instrument.set(Optional.of(known.instrument()));
        taken.set(known.takenAt().text(use.zone()));
        hole.set(known.conditions().hole());
        form.fill(known.conditions(), settings.units());
    }

    /** What was typed since it was saved stays; what makes no sense yet is still being typed, and nothing is refilled. */
    private void refill(Sitting sitting, WrittenDown saved) {
        WrittenDown kept = WrittenDown.of(sitting);
        try {
            WrittenDown typed = OnlyTouched.TYPED.of(kept, saved, typed(saved));
            shown = Optional.of(new Shown(sitting.id(), kept, isOfTaps(sitting), true));
            write(typed);
        } catch (RefusedEntryException e) {
            shown = Optional.of(new Shown(sitting.id(), saved, isOfTaps(sitting), true));
        }
    }

    /** What is known is shown in the other unit; what was typed stays, for the maker to see what it will be taken for. */
    private void follow(Units before, Units after) {
        shown.ifPresent(s -> form.fillTemperature(s.kept().conditions(), before, after));
    }

    private WrittenDown typed(WrittenDown kept) {
        return new WrittenDown(
                instrument.get().orElse(kept.instrument()),
                TakenText.read(taken.get(), kept.takenAt(), use.zone()),
                form.correct(kept.conditions(), hole.get(), settings.units()));
    }

    @Override
    public void leave() {
        state.leave(shown.filter(this::isUntouched).isEmpty());
    }

    private boolean isUntouched(Shown of) {
        try {
            return typed(of.kept()).equals(of.kept());
        } catch (RefusedEntryException e) {
            return false;
        }
    }

    @Override
    public void save() {
        shown.ifPresent(of -> state.read(() -> typed(of.kept())).ifPresent(typed -> save(of, typed)));
    }

    private void save(Shown of, WrittenDown typed) {
        if (typed.equals(of.kept()) && !of.unfinished()) {
            state.close();
            notices.say("Nothing was changed");
            return;
        }
        long mine = state.number();
        work.start(new Job<>("Correcting sitting " + of.id(), progress -> edit(of, typed, progress)), answer -> {
            answer.edited().ifPresent(edited -> tell(edited, OnlyTouched.TYPED.of(edited.before(), of.kept(), typed)));
            if (state.isStill(mine)) {
                closeUnless(answer, typed);
            }
        });
    }

    /** What came of a correction: neither if it was made already, by saving twice in a row. */
    private record Answer(Optional<EditSitting.Edited> edited, Optional<RefusedEntryException> refusal) {}

    private Answer edit(Shown of, WrittenDown typed, Progress progress) {
        try {
            WrittenDown now = WrittenDown.of(use.showSitting().show(of.id()));
            boolean made = OnlyTouched.TYPED.of(now, of.kept(), typed).equals(now) && !of.unfinished();
            return new Answer(made ? Optional.empty() : Optional.of(change(of, typed, progress)), Optional.empty());
        } catch (RefusedEntryException e) {
            return new Answer(Optional.empty(), Optional.of(e));
        }
    }

    private EditSitting.Edited change(Shown of, WrittenDown typed, Progress progress) {
        EditSitting.Edited edited = edit(of.id(), kept -> OnlyTouched.TYPED.of(kept, of.kept(), typed), progress);
        boolean another = !WrittenDown.of(edited.sitting()).equals(edited.before());
        if (!of.unfinished() || !another || edited.holeChanged()) {
            return edited;
        }
        // What joins a correction whose analysis failed may ask for none itself.
        EditSitting.Edited again = edit(of.id(), UnaryOperator.identity(), progress);
        return new EditSitting.Edited(again.sitting(), edited.before(), again.added(), again.failure());
    }

    private EditSitting.Edited edit(SittingId id, UnaryOperator<WrittenDown> change, Progress progress) {
        return use.editSitting().edit(id, change, progress);
    }

    private void tell(EditSitting.Edited edited, WrittenDown after) {
        corrected.run();
        SittingId id = edited.sitting().id();
        edited.failure()
                .ifPresentOrElse(
                        failure -> failed(id, failure),
                        () -> notices.say(
                                "Corrected sitting " + id + ": "
                                        + new SittingWords(use.zone()).of(edited, settings.units()),
                                () -> takeBack(id, edited.before(), after)));
    }

    /** A form whose correction is refused, or not yet worked out, stays open. */
    private void closeUnless(Answer answer, WrittenDown saved) {
        Optional<EditSitting.Edited> unfinished =
                answer.edited().filter(edited -> edited.failure().isPresent());
        if (answer.refusal().isPresent()) {
            state.refuse(answer.refusal().get());
        } else if (unfinished.isPresent()) {
            refill(unfinished.get().sitting(), saved);
            state.warn("The correction is kept. Names and figures are still those from before, because analysing"
                    + " anew did not come to its end; keep it once more to try again.");
        } else {
            state.close();
        }
    }

    private void failed(SittingId id, RuntimeException failure) {
        if (failure instanceof GivenUpException) {
            notices.trouble("Given up: analysing sitting " + id + " anew");
        } else {
            notices.failed("Analysing sitting " + id + " anew", failure);
        }
    }

    /** Only what this correction changed; what was corrected elsewhere since stays. */
    private void takeBack(SittingId id, WrittenDown before, WrittenDown after) {
        work.start(
                new Job<>(
                        "Taking back the correction of sitting " + id,
                        progress -> edit(id, kept -> OnlyTouched.TAKEN_BACK.of(kept, after, before), progress)),
                edited -> {
                    corrected.run();
                    boolean stays = OnlyTouched.stays(edited.before(), after, before);
                    edited.failure()
                            .ifPresentOrElse(
                                    failure -> failed(id, failure),
                                    () -> Written.takenBack(
                                            notices,
                                            "Sitting " + id,
                                            !WrittenDown.of(edited.sitting()).equals(edited.before()),
                                            stays));
                });
    }
}
