package io.github.tapwright.sitting.live;

import java.util.List;
import java.util.Optional;

/**
 * A running recording at one moment.
 *
 * @param seconds how much is recorded
 * @param level how loud it is
 * @param taps what the taps say so far; nothing if it is not for taps
 * @param losses sound lost so far; empty if none
 * @param running false once it was stopped or ended by itself
 * @param trouble why it ended by itself, in words with a remedy; empty if it did not
 */
public record LiveView(
        double seconds, LevelNow level, TapsSoFar taps, List<Loss> losses, boolean running, Optional<String> trouble) {

    /** Keeps a copy of the list. */
    public LiveView {
        losses = List.copyOf(losses);
    }
}
