package io.github.tapwright.audio;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** AAC sound: the first packet is decoded to learn the true sample rate and channels. */
final class AacReader {

    private AacReader() {}

    static SoundDecoder open(FileBytes file, AacPackets packets) throws IOException {
        AacFrames frames = new AacFrames(packets);
        DecodedFrame frame = new DecodedFrame();
        if (!frames.next(frame)) {
            throw new DecoderTrouble("there is no AAC packet");
        }
        SoundFormat format = new SoundFormat(
                packets.container(),
                "AAC",
                Limits.rate(frames.rateHz()),
                Limits.channels(frame.channelCount()),
                OptionalInt.empty(),
                true);
        List<String> notices = new ArrayList<>();
        return new LossyDecoder(file, format, packets.promisedSamples(), frames, frame, notices);
    }
}
