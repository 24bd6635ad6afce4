package io.github.tapwright.desktop.shelf;

import io.github.tapwright.desktop.part.ScreenWays;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.instrument.RefusedEntryException;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.InvalidationListener;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.value.ObservableStringValue;

/** What every form of a correction has: it is open or not, names what it is about, and shows why it is refused. */
final class OpenForm {

    /** What to do where another form is open. */
    static final String FIRST = "Finish the form on the shelf, or leave it, first";

    private final ReadOnlyBooleanWrapper open = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper refusal = new ReadOnlyStringWrapper("");
    private final Notices notices;
    private final BooleanSupplier free;
    private ObservableStringValue changes = new SimpleStringProperty("");
    /** Changes whenever the form is opened or closed. */
    private long number;

    /**
     * A form that is not open.
     *
     * @param free whether no form is open: there is one at a time
     */
    OpenForm(Notices notices, BooleanSupplier free) {
        this.notices = notices;
        this.free = free;
    }

    ObservableStringValue changes() {
        return changes;
    }

    ReadOnlyBooleanProperty open() {
        return open.getReadOnlyProperty();
    }

    ReadOnlyStringProperty title() {
        return title.getReadOnlyProperty();
    }

    ReadOnlyStringProperty refusal() {
        return refusal.getReadOnlyProperty();
    }

    /**
     * Tells what would change, anew whenever something typed does, or the form is filled. What is typed on answers a refusal.
     *
     * @param typed all that can be typed
     * @param words tells it; what they refuse is not told before it is to be kept
     * @param besides what else it depends on
     */
    void tell(List<Observable> typed, Supplier<String> words, Observable... besides) {
        typed.forEach(part -> part.addListener((InvalidationListener) o -> refusal.set("")));
        Observable[] all = Stream.of(typed, List.of(besides), List.of(open, refusal))
                .flatMap(List::stream)
                .toArray(Observable[]::new);
        changes = Bindings.createStringBinding(
                () -> {
                    try {
                        return words.get();
                    } catch (RefusedEntryException e) {
                        return "";
                    }
                },
                all);
    }

    /** Opens it, unless another form was opened while what stands in this one was read. */
    void open(Runnable fill, String what) {
        if (!free.getAsBoolean()) {
            notices.trouble(FIRST);
            return;
        }
        fill.run();
        title.set(what);
        refusal.set("");
        number++;
        open.set(true);
    }

    /** Which opening this is, so that a late answer closes no other. */
    long number() {
        return number;
    }

    boolean isStill(long asked) {
        return open.get() && number == asked;
    }

    void close() {
        number++;
        open.set(false);
    }

    /** Closes without keeping anything; what was typed comes back with Undo. */
    void leave(boolean typed) {
        if (open.get()) {
            close();
            long left = number;
            if (typed) {
                notices.say("Left as it was; what you typed is not kept", () -> comeBack(left));
            }
        }
    }

    private void comeBack(long left) {
        if (number != left) {
            notices.trouble("What you typed is gone: another form was opened since");
        } else if (free.getAsBoolean()) {
            number++;
            open.set(true);
        } else {
            notices.say(FIRST + "; then undo brings back what you typed in the other", () -> comeBack(left));
        }
    }

    void refuse(RefusedEntryException why) {
        warn("Not kept: " + ScreenWays.in(String.valueOf(why.getMessage())));
    }

    void warn(String words) {
        refusal.set(words);
    }

    /** What was typed; empty, and the reason shown, if it makes no sense. */
    <T> Optional<T> read(Supplier<T> typed) {
        refusal.set("");
        try {
            return Optional.of(typed.get());
        } catch (RefusedEntryException e) {
            refuse(e);
            return Optional.empty();
        }
    }
}
