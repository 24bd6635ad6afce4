package io.github.tapwright.desktop.work;

import io.github.tapwright.sitting.OutOfUse;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/** Takes what is kept out of use or back on the desk, tells of it, and can take that back. */
public final class TakingOutOfUse {

    private final Work work;
    private final Notices notices;
    private final Runnable follow;

    /**
     * Nothing taken yet.
     *
     * @param work does what takes long
     * @param notices takes what the maker should know
     * @param follow runs each time something was taken out of use, or back
     */
    public TakingOutOfUse(Work work, Notices notices, Runnable follow) {
        this.work = work;
        this.notices = notices;
        this.follow = follow;
    }

    /**
     * A sitting or a calibration on a screen.
     *
     * @param name such as "Sitting 3"
     * @param out how it reads that it is out of use, such as "set aside"
     * @param kept the same in the archive
     */
    public record Named(String name, String out, OutOfUseChange.Kept kept) {

        private String words(Optional<OutOfUse> now) {
            return name + now.map(why -> " is " + out + ": " + why.reason()).orElse(" is in use again");
        }

        private String unchanged() {
            return name + " stays as it is: it was " + out + " or taken back elsewhere since";
        }
    }

    /**
     * Takes something out of use, or back; said twice in a row it is told of once.
     *
     * @param what the work, in words
     * @param of what
     * @param reason the maker's; empty to use it again
     * @param then runs at the end, whether anything was changed or not
     */
    public void change(String what, Named of, Optional<String> reason, Consumer<OutOfUseChange> then) {
        work.start(new Job<>(what, progress -> OutOfUseChange.make(of.kept(), reason)), done -> {
            if (done.changed()) {
                follow.run();
                notices.say(of.words(done.after()), () -> undo(of, done));
            }
            then.accept(done);
        });
    }

    private void undo(Named of, OutOfUseChange done) {
        String what = "Taking back what was said of " + of.name().toLowerCase(Locale.ROOT);
        work.start(new Job<>(what, progress -> done.undo(of.kept())), undone -> {
            follow.run();
            if (undone) {
                notices.say(of.words(done.before()));
            } else {
                notices.trouble(of.unchanged());
            }
        });
    }
}
