package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.work.Job;
import io.github.tapwright.desktop.work.LatestQuestion;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.desktop.work.OutOfUseChange;
import io.github.tapwright.desktop.work.TakingOutOfUse;
import io.github.tapwright.desktop.work.Work;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SetSittingAside;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Sets a sitting aside that should not have been kept, and takes it back. */
final class SetAsideModel implements Correction {

    private static final String MEANS =
            "It is kept and shown with the reason, and nothing beyond itself uses it: no comparison, group,"
                    + " timeline, study, body model, listening or report. A study kept that rests on it holds no longer."
                    + " Recordings and figures stay as they are; “Use again” on the Shelf takes it back.";

    private final ShelfModel.UseCases use;
    private final Work work;
    private final TakingOutOfUse taking;
    private final StringProperty reason = new SimpleStringProperty("");
    private final LatestQuestion asked = new LatestQuestion();
    private final OpenForm state;
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
        this.taking = new TakingOutOfUse(work, notices, corrected);
        this.state = new OpenForm(notices, free);
        state.tell(List.of(reason), () -> MEANS);
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
        shown.ifPresent(
                s -> state.read(() -> OutOfUse.requireReason(reason.get())).ifPresent(why -> setAside(s.id(), why)));
    }

    private void setAside(SittingId id, String why) {
        long mine = state.number();
        taking.change("Setting sitting " + id + " aside", named(id), Optional.of(why), done -> {
            if (state.isStill(mine)) {
                state.close();
            }
        });
    }

    /** Takes a sitting back into use; it can be set aside again. */
    void useAgain(SittingId id) {
        taking.change("Using sitting " + id + " again", named(id), Optional.empty(), done -> {});
    }

    private TakingOutOfUse.Named named(SittingId id) {
        return new TakingOutOfUse.Named("Sitting " + id, "set aside", new KeptSitting(use, id));
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
