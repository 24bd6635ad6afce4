package io.github.tapwright.sitting;

import java.nio.file.Path;

/** Keeps files bit for bit: copied first, given their place with what refers to them, and never changed. */
public interface OriginalStore {

    /**
     * Makes a safe copy of a file beside the archive's originals; nothing refers to it yet.
     *
     * @param file the maker's file, which is only read
     * @return the copy, on disk when this returns
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the file is not there or may not be read
     */
    StagedOriginal stage(Path file);

    /**
     * Takes back a safe copy that turned out not to be wanted; the maker's file is not touched.
     *
     * @param staged a copy that nothing was added with
     */
    void discard(StagedOriginal staged);

    /**
     * Where a kept original lies, after making sure that it is there and undamaged.
     *
     * @param original which original
     * @return a file that may be read, and nothing else
     */
    Path locate(Original original);
}
