package io.github.tapwright.signal;

import io.github.tapwright.recording.SampleStream;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Something that takes one channel of a recording while it streams by. */
public interface ChannelReader {

    /**
     * Takes the next samples.
     *
     * @param block left unchanged
     * @param count how many of them count
     */
    void append(double[] block, int count);

    /** The sound is over. */
    void finish();

    /**
     * How much sound the channel held: Σ x².
     *
     * @return 0 or more
     */
    double energy();

    /**
     * The channel with the most energy.
     *
     * @param <C> what a channel was read into
     * @param channel it
     * @param index which it was, from 0
     * @param samples how many samples each channel had
     */
    record Loudest<C extends ChannelReader>(C channel, int index, long samples) {}

    /**
     * Reads a recording once, block by block, and chooses the channel with the most energy; mixing channels would let
     * their paths through the room cancel each other.
     *
     * @param <C> what each channel is read into
     * @param stream read to its end, not closed
     * @param maker makes one reader for each channel
     * @return the channel with the most energy
     */
    static <C extends ChannelReader> Loudest<C> loudest(SampleStream stream, Supplier<C> maker) {
        List<C> channels = Stream.generate(maker).limit(stream.channelCount()).toList();
        double[][] block = new double[channels.size()][8192];
        long samples = 0;
        for (int n = stream.read(block); n > 0; n = stream.read(block)) {
            for (int c = 0; c < block.length; c++) {
                channels.get(c).append(block[c], n);
            }
            samples += n;
        }
        channels.forEach(ChannelReader::finish);
        int loudest = 0;
        for (int c = 1; c < channels.size(); c++) {
            loudest = channels.get(c).energy() > channels.get(loudest).energy() ? c : loudest;
        }
        return new Loudest<>(channels.get(loudest), loudest, samples);
    }
}
