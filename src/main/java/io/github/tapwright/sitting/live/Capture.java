package io.github.tapwright.sitting.live;

/** A recording on its way to disk. After a crash all but the last half second is there, and a WAV file. */
public interface Capture extends AutoCloseable {

    /**
     * Its number.
     *
     * @return the archive's number
     */
    CaptureId id();

    /**
     * Takes the next sound; at least every half second of it is forced to disk.
     *
     * @param block in the format of the notes
     */
    void append(SoundBlock block);

    /**
     * Replaces what is known about the recording.
     *
     * @param notes all that is known now; device, format and start stay as they were
     */
    void note(CaptureNotes notes);

    /**
     * Keeps with the recording that sound was lost.
     *
     * @param loss where, how much and why
     */
    void note(Loss loss);

    /** Ends the recording: all of it is on disk when this returns, and it is offered as left behind until it is kept. */
    @Override
    void close();
}
