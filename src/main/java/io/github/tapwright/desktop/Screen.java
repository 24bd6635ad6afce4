package io.github.tapwright.desktop;

import java.util.function.Supplier;
import javafx.scene.Node;
import org.jspecify.annotations.Nullable;

/** One screen as the shell holds it. It is built when it is first needed, so that the first window need not wait for all. */
final class Screen {

    private final String name;
    private final Supplier<Front> builder;
    private @Nullable Front front;

    /**
     * A screen that is not built yet.
     *
     * @param name on its button
     * @param builder builds it, once
     */
    Screen(String name, Supplier<Front> builder) {
        this.name = name;
        this.builder = builder;
    }

    /**
     * What a screen turns towards the maker.
     *
     * @param node what is shown
     * @param refresh reads anew what it shows
     * @param focus puts the cursor where one begins
     */
    record Front(Node node, Runnable refresh, Runnable focus) {

        /** It comes to the front. */
        void show() {
            refresh.run();
            focus.run();
        }
    }

    String name() {
        return name;
    }

    /** The screen itself, built now if it was not before. */
    Front front() {
        Front built = front;
        if (built == null) {
            built = builder.get();
            front = built;
        }
        return built;
    }
}
