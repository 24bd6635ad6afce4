package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.OutOfUseChange;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableStringValue;

/** Sets a sitting aside that should not have been kept, and takes it back. */
final class SetAsideModel implements Correction {

    private static final String MEANS =
            "It is kept and shown with the reason, and nothing beyond itself uses it: no comparison, group,"
                    + " timeline, study, body model, listening or report. A study kept that rests on it holds no longer."
                    + " Recordings and figures stay as they are; “Use again” on the Shelf takes it back.";

    private final ShelfModel.UseCases use;
    private final Work work;
    private final Notices notices;
    private final Runnable corrected;
    private final StringProperty reason = new SimpleStringProperty("");
    private final LatestQuestion asked = new LatestQuestion();
    private final OpenForm state;
    private final ObservableStringValue changes;
    private Optional<Sitting> shown = Optional.empty();

    /**
     * No sitting is being set aside.
     *
     * @param use the use cases
     * @param free whether no form is open
     * @param corrected runs when one was set aside, or taken back
     */
    SetAsideModel(ShelfModel.UseCases use, Work work, Notices notices, BooleanSupplier free, Runnable corrected) {
        this.use = use;
        this.work = work;
        this.notices = notices;
        this.corrected = corrected;
        this.state = new OpenForm(notices, free);
        this.changes = state.changes(List.of(reason), () -> MEANS);
    }

    /** Why, in the maker's words. */
    StringProperty reason() {
        return reason;
    }

    @Override
    public OpenForm state() {
        return state;
    }

    @Override
    public ObservableStringValue changes() {
        return changes;
    }

    @Override
    public Keeping keeping() {
        return new Keeping(
                "Set asi_de", "Sets the sitting aside for this reason (Enter)", "Enter sets aside, Escape leaves.");
    }

    /** Asks why. */
    void open(SittingId id) {
        long mine = asked.ask();
        work.start(
                new Job<>("Reading sitting " + id, progress -> use.showSitting().show(id)), sitting -> {
                    if (asked.isLatest(mine)) {
                        state.open(() -> fill(sitting), "Set aside " + Correction.name(sitting));
                    }
                });
    }

    private void fill(Sitting sitting) {
        shown = Optional.of(sitting);
        reason.set(known(sitting));
    }

    private static String known(Sitting sitting) {
        return sitting.setAside().map(OutOfUse::reason).orElse("");
    }

    @Override
    public void leave() {
        state.leave(shown.filter(s -> !known(s).equals(reason.get())).isPresent());
    }

    @Override
    public void save() {
        shown.ifPresent(s -> state.read(this::typed).ifPresent(why -> setAside(s.id(), why)));
    }

    /** Refused as the archive would refuse it; since when is said there. */
    private String typed() {
        return new OutOfUse(reason.get(), Instant.EPOCH).reason();
    }

    private void setAside(SittingId id, String why) {
        long mine = state.number();
        change("Setting sitting " + id + " aside", id, Optional.of(why), done -> {
            if (state.isStill(mine)) {
                state.close();
            }
        });
    }

    /** Takes a sitting back into use; it can be set aside again. */
    void useAgain(SittingId id) {
        change("Using sitting " + id + " again", id, Optional.empty(), done -> {});
    }

    /** Said twice in a row it is told of once. */
    private void change(String what, SittingId id, Optional<String> why, Consumer<OutOfUseChange> then) {
        work.start(new Job<>(what, progress -> OutOfUseChange.make(new KeptSitting(use, id), why)), done -> {
            if (done.changed()) {
                corrected.run();
                notices.say(words(id, done.after()), () -> undo(id, done));
            }
            then.accept(done);
        });
    }

    private static String words(SittingId id, Optional<OutOfUse> now) {
        return "Sitting " + id
                + now.map(why -> " is set aside: " + why.reason()).orElse(" is in use again");
    }

    private void undo(SittingId id, OutOfUseChange done) {
        work.start(
                new Job<>(
                        "Taking back what was said of sitting " + id, progress -> done.undo(new KeptSitting(use, id))),
                undone -> {
                    corrected.run();
                    if (undone) {
                        notices.say(words(id, done.before()));
                    } else {
                        notices.trouble(
                                "Sitting " + id + " stays as it is: it was set aside or taken back elsewhere since");
                    }
                });
    }

    /** A sitting as the archive keeps it. */
    private record KeptSitting(ShowSitting show, SetSittingAside aside, SittingId id) implements OutOfUseChange.Kept {

        KeptSitting(ShelfModel.UseCases use, SittingId id) {
            this(use.showSitting(), use.setSittingAside(), id);
        }

        @Override
        public Optional<OutOfUse> now() {
            return show.show(id).setAside();
        }

        @Override
        public void takeOut(String reason) {
            aside.setAside(id, reason);
        }

        @Override
        public void takeBack() {
            aside.takeBack(id);
        }
    }
}
