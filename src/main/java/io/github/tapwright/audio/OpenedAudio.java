package io.github.tapwright.audio;

import io.github.tapwright.recording.SampleStream;
import java.util.List;

/** A sound file being read: its samples, its format, and everything odd that was noticed on the way. */
public interface OpenedAudio extends SampleStream {

    /**
     * What the file is.
     *
     * @return the format, the same from opening to closing
     */
    SoundFormat format();

    /**
     * What a careful reader would want to know about this file, each in one line for the maker.
     *
     * <p>Some things show only at the end, such as "the header promises 10.0 s, the file holds 3.2 s":
     * ask again after the last {@link #read}.
     *
     * @return the notices so far, in the order they arose; usually empty
     */
    List<String> notices();
}
