package io.github.tapwright.recording;

/**
 * Sound on its way into an analysis: blocks of samples in order, each read once.
 *
 * <p>Samples are re full scale (1.0 is the largest value the source's format holds). A stream never
 * resamples, clips, pads or mixes; a source that had to depart from what its header promised says so in
 * its own notices.
 */
public interface SampleStream extends AutoCloseable {

    /**
     * The rate of every block of this stream.
     *
     * @return the sample rate, constant over the stream
     */
    SampleRate sampleRate();

    /**
     * How many channels each block holds.
     *
     * @return at least 1, constant over the stream
     */
    int channelCount();

    /**
     * Reads the next samples into the front of {@code block}.
     *
     * @param block shape [channelCount][capacity]; filled from index 0
     * @return how many samples were read into every channel, or 0 at the end of the sound
     * @throws UnreadableRecordingException if the source breaks off in a way that leaves nothing to trust
     */
    int read(double[][] block);

    /** Lets go of the source; never fails, because reading is over and nothing can be lost. */
    @Override
    void close();
}
