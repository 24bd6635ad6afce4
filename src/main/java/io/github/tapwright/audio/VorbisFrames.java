package io.github.tapwright.audio;

import com.jcraft.jogg.Packet;
import com.jcraft.jorbis.Block;
import com.jcraft.jorbis.DspState;
import com.jcraft.jorbis.Info;
import java.io.IOException;
import java.util.List;

/** The sound packets of a Vorbis stream, decoded by JOrbis. */
final class VorbisFrames implements FrameSource {

    private final OggPackets packets;
    private final int channelCount;
    private final List<String> notices;
    private final DspState synthesis = new DspState();
    private final Block block = new Block(synthesis);
    private final Packet packet = new Packet();
    private long samplesDecoded;
    private boolean properEnd;

    VorbisFrames(OggPackets packets, Info info, List<String> notices) {
        this.packets = packets;
        this.channelCount = info.channels;
        this.notices = notices;
        synthesis.synthesis_init(info);
        block.init(synthesis);
    }

    @Override
    public boolean next(DecodedFrame into) throws IOException {
        into.restart(channelCount);
        while (into.length() == 0) {
            if (properEnd) {
                return false;
            }
            if (!packets.next(packet)) {
                notices.add("the Ogg file has no end mark; it may have been cut short");
                properEnd = true;
                return false;
            }
            properEnd = packet.e_o_s != 0;
            decodePacket(into);
            if (properEnd) {
                dropPadding(into);
            }
            samplesDecoded += into.length();
        }
        return true;
    }

    /** The last packet says how long the whole sound is; JOrbis misses it in files of a single page. */
    private void dropPadding(DecodedFrame into) {
        long kept = packet.granulepos - samplesDecoded;
        if (kept >= 0 && kept < into.length()) {
            into.shorten((int) kept);
        }
    }

    private void decodePacket(DecodedFrame into) throws DecoderTrouble {
        if (block.synthesis(packet) != 0) {
            throw new DecoderTrouble("a packet of the Vorbis sound is damaged");
        }
        synthesis.synthesis_blockin(block);
        float[][][] samples = new float[1][][];
        int[] from = new int[channelCount];
        for (int n = synthesis.synthesis_pcmout(samples, from); n > 0; n = synthesis.synthesis_pcmout(samples, from)) {
            for (int c = 0; c < channelCount; c++) {
                into.append(c, samples[0][c], from[c], n, 1);
            }
            synthesis.synthesis_read(n);
        }
    }
}
