package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.EditInstrument;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.UnaryOperator;

/** Corrects what is written down about an instrument. */
final class CorrectInstrumentModel implements Correction {

    private final EditInstrument editInstrument;
    private final Work work;
    private final Notices notices;
    private final Runnable corrected;
    private final InstrumentForm form = new InstrumentForm();
    private final OpenForm state;
    private Optional<Instrument> filled = Optional.empty();

    /**
     * Nothing is being corrected.
     *
     * @param free whether no form is open
     * @param corrected runs when something was
     */
    CorrectInstrumentModel(
            EditInstrument editInstrument, Work work, Notices notices, BooleanSupplier free, Runnable corrected) {
        this.editInstrument = editInstrument;
        this.work = work;
        this.notices = notices;
        this.corrected = corrected;
        this.state = new OpenForm(notices, free);
        state.tell(form.all().toList(), this::preview);
    }

    /** What is known, and what is typed. */
    InstrumentForm form() {
        return form;
    }

    @Override
    public OpenForm state() {
        return state;
    }

    private String preview() {
        return filled.map(shown -> Written.preview(changes(shown, form.read(shown.shopNumber()))))
                .orElse("");
    }

    private static List<String> changes(Instrument before, Instrument after) {
        return Written.changes(InstrumentForm.written(before), InstrumentForm.written(after));
    }

    /** Opens the form with all that is known. */
    void open(Instrument kept) {
        state.open(() -> fill(kept), "Correct instrument " + kept.shopNumber());
    }

    private void fill(Instrument kept) {
        filled = Optional.of(kept);
        form.fill(kept);
    }

    @Override
    public void leave() {
        state.leave(filled.filter(this::isUntouched).isEmpty());
    }

    private boolean isUntouched(Instrument shown) {
        try {
            return form.read(shown.shopNumber()).equals(shown);
        } catch (RefusedEntryException e) {
            return false;
        }
    }

    @Override
    public void save() {
        filled.ifPresent(
                shown -> state.read(() -> form.read(shown.shopNumber())).ifPresent(typed -> save(shown, typed)));
    }

    private void save(Instrument shown, Instrument typed) {
        if (typed.equals(shown)) {
            state.close();
            notices.say("Nothing was changed");
            return;
        }
        long mine = state.number();
        work.start(
                new Job<>(
                        "Correcting instrument " + shown.shopNumber(),
                        progress -> edit(shown, kept -> OnlyTouched.TYPED.of(kept, shown, typed))),
                edited -> {
                    corrected.run();
                    say(edited);
                    if (state.isStill(mine)) {
                        state.close();
                    }
                });
    }

    /** What was kept before, and what is now. */
    private record Edited(Instrument before, Instrument after) {

        boolean changed() {
            return !before.equals(after);
        }
    }

    private Edited edit(Instrument shown, UnaryOperator<Instrument> change) {
        AtomicReference<Instrument> before = new AtomicReference<>(shown);
        Instrument after = editInstrument.edit(shown.shopNumber(), kept -> {
            before.set(kept);
            return change.apply(kept);
        });
        return new Edited(Objects.requireNonNull(before.get()), after);
    }

    /** Saved twice in a row it is one correction, told of once. */
    private void say(Edited edited) {
        if (!edited.changed()) {
            return;
        }
        ShopNumber number = edited.after().shopNumber();
        notices.say(
                "Corrected instrument " + number + ": " + Written.inShort(changes(edited.before(), edited.after())),
                () -> takeBack(edited));
    }

    /** Only what this correction changed; what was corrected elsewhere since stays. */
    private void takeBack(Edited edited) {
        ShopNumber number = edited.after().shopNumber();
        work.start(
                new Job<>(
                        "Taking back the correction of instrument " + number,
                        progress -> edit(
                                edited.after(),
                                kept -> OnlyTouched.TAKEN_BACK.of(kept, edited.after(), edited.before()))),
                again -> {
                    corrected.run();
                    boolean stays = OnlyTouched.stays(again.before(), edited.after(), edited.before());
                    Written.takenBack(notices, "Instrument " + number, again.changed(), stays);
                });
    }
}
