package io.github.tapwright.desktop.part;

import io.github.tapwright.sitting.OutOfUse;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;

/** Sets the sitting that is looked at aside, or uses it again, whichever there is to do. */
public final class SetAsideButton {

    private final Button setAside;
    private final Button useAgain;
    private final HBox node;

    /**
     * Of a sitting in use.
     *
     * @param setAside asks for the reason
     * @param useAgain takes it back into use
     */
    public SetAsideButton(Runnable setAside, Runnable useAgain) {
        this.setAside = Parts.button(
                "Set sitting asi_de…", "Sets this sitting aside with a reason, so that nothing uses it", setAside);
        this.useAgain = Parts.button("_Use again", "Takes this sitting, which is set aside, back into use", useAgain);
        this.node = Parts.row(this.setAside, this.useAgain);
        show(Optional.empty());
    }

    /**
     * The button.
     *
     * @return to be put on a screen
     */
    public HBox node() {
        return node;
    }

    /**
     * Follows the sitting.
     *
     * @param why it is set aside; empty if it is in use, or there is none
     */
    public void show(Optional<OutOfUse> why) {
        boolean moved = setAside.isFocused() || useAgain.isFocused();
        Parts.show(setAside, why.isEmpty());
        Parts.show(useAgain, why.isPresent());
        if (moved) {
            (why.isEmpty() ? setAside : useAgain).requestFocus();
        }
    }
}
