package io.github.tapwright.desktop.work;

import io.github.tapwright.sitting.OutOfUse;
import java.util.Optional;

/**
 * Something that was taken out of use, or back.
 *
 * @param before why it was out of use; empty if it was in use
 * @param after why it is now; empty if it is in use
 */
public record OutOfUseChange(Optional<OutOfUse> before, Optional<OutOfUse> after) {

    /** A sitting or a calibration. */
    public interface Kept {

        /**
         * What the archive says of it at this moment.
         *
         * @return why it is out of use; empty if it is in use
         */
        Optional<OutOfUse> now();

        /**
         * Takes it out of use.
         *
         * @param reason the maker's
         */
        void takeOut(String reason);

        /** Takes it back into use. */
        void takeBack();
    }

    /**
     * Takes something out of use, or back; what is so already stays as it is.
     *
     * @param of what
     * @param reason the maker's; empty to use it again
     * @return what was done
     */
    public static OutOfUseChange make(Kept of, Optional<String> reason) {
        Optional<OutOfUse> before = of.now();
        if (before.map(OutOfUse::reason).equals(reason)) {
            return new OutOfUseChange(before, before);
        }
        set(of, reason);
        return new OutOfUseChange(before, of.now());
    }

    private static void set(Kept of, Optional<String> reason) {
        reason.ifPresentOrElse(of::takeOut, of::takeBack);
    }

    /**
     * Whether anything was done.
     *
     * @return false if it was so already
     */
    public boolean changed() {
        return !before.equals(after);
    }

    /**
     * Sets back what was done, unless something else was said since. What is out of use once more is so from now on.
     *
     * @param of what it was done to
     * @return false if it was left as it is, because somebody said something else of it since
     */
    public boolean undo(Kept of) {
        boolean mine = of.now().equals(after);
        if (mine) {
            set(of, before.map(OutOfUse::reason));
        }
        return mine;
    }
}
