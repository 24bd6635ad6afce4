package io.github.tapwright.desktop.work;

import io.github.tapwright.archive.ArchiveException;
import io.github.tapwright.desktop.part.ScreenWays;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** The latest thing the maker should know; never a window that has to be clicked away. */
public final class Notices {

    private final ReadOnlyObjectWrapper<Optional<Notice>> latest = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final Consumer<Throwable> log;

    /**
     * Notices.
     *
     * @param log takes failures of the program itself, for whoever mends it
     */
    public Notices(Consumer<Throwable> log) {
        this.log = log;
    }

    /**
     * The latest notice.
     *
     * @return empty once it was dismissed
     */
    public ReadOnlyObjectProperty<Optional<Notice>> latest() {
        return latest.getReadOnlyProperty();
    }

    /**
     * Says that something was done.
     *
     * @param words what
     */
    public void say(String words) {
        latest.set(Optional.of(new Notice(Notice.Kind.DONE, words, Optional.empty())));
    }

    /**
     * Says that something was done and can be taken back.
     *
     * @param words what
     * @param undo the way back
     */
    public void say(String words, Notice.Undo undo) {
        latest.set(Optional.of(new Notice(Notice.Kind.DONE, words, Optional.of(undo))));
    }

    /**
     * Says that something did not work.
     *
     * @param words what, and what to do about it
     */
    public void trouble(String words) {
        latest.set(Optional.of(new Notice(Notice.Kind.TROUBLE, words, Optional.empty())));
    }

    /**
     * Says that a job failed.
     *
     * @param what the job
     * @param failure what went wrong
     */
    public void failed(String what, Throwable failure) {
        trouble(what + ": " + words(failure));
    }

    /** Takes back what the latest notice tells of, if that can be done. */
    public void undo() {
        Optional<Notice.Undo> way = latest.get().flatMap(Notice::undo);
        dismiss();
        way.ifPresent(Notice.Undo::run);
    }

    /** The maker has read the latest notice. */
    public void dismiss() {
        latest.set(Optional.empty());
    }

    private String words(Throwable failure) {
        if (failure instanceof RefusedEntryException
                || failure instanceof ArchiveException
                || failure instanceof UnreadableRecordingException) {
            return ScreenWays.in(String.valueOf(failure.getMessage()));
        }
        Throwable cause =
                failure instanceof UncheckedIOException && failure.getCause() != null ? failure.getCause() : failure;
        if (cause instanceof IOException) {
            String where = cause instanceof FileSystemException f
                    ? String.valueOf(f.getFile())
                    : String.valueOf(cause.getMessage());
            return where + " cannot be read or written; check that the place exists, has room and may be written to";
        }
        log.accept(failure);
        return "the program itself failed (" + failure + "); please report it with the file desk.log";
    }
}
