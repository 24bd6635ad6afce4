package io.github.tapwright.audio;

import com.jcraft.jogg.Packet;
import com.jcraft.jorbis.Comment;
import com.jcraft.jorbis.Info;
import io.github.tapwright.recording.UnreadableRecordingException;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.OptionalLong;

/** The head of an Ogg file: which sound is inside, and for Vorbis its three header packets. */
final class VorbisReader {

    private static final int HEADER_PACKETS = 3;
    private static final int COMMENT_PACKET = 1;
    private static final int SETUP_PACKET = 2;
    private static final int SEGMENT_COUNT = 26;

    private VorbisReader() {}

    static SoundDecoder open(FileBytes file) throws IOException {
        refuseOtherSound(file);
        OggPackets packets = new OggPackets(file.streamFrom(0));
        Info info = readHeaders(packets);
        SoundFormat format = new SoundFormat(
                "Ogg", "Vorbis", Limits.rate(info.rate), Limits.channels(info.channels), OptionalInt.empty(), true);
        List<String> notices = new ArrayList<>();
        VorbisFrames frames = new VorbisFrames(packets, info, notices);
        DecodedFrame frame = new DecodedFrame();
        frames.next(frame);
        return new LossyDecoder(file, format, OptionalLong.empty(), frames, frame, notices);
    }

    private static void refuseOtherSound(FileBytes file) throws IOException {
        String count = file.letters(SEGMENT_COUNT);
        String name = count.isEmpty() ? "" : file.letters(SEGMENT_COUNT + 1 + count.charAt(0));
        if (!name.equals("\u0001vor")) {
            throw new UnreadableRecordingException("the Ogg file holds " + (name.equals("Opus") ? "Opus" : "other")
                    + " sound; Tapwright reads only Vorbis in Ogg; save it as WAV or FLAC");
        }
    }

    private static Info readHeaders(OggPackets packets) throws IOException {
        Info info = new Info();
        info.init();
        Comment comment = new Comment();
        comment.init();
        Packet packet = new Packet();
        for (int i = 0; i < HEADER_PACKETS; i++) {
            if (!packets.next(packet)) {
                throw new DecoderTrouble("a header of the Vorbis sound is missing");
            }
            if (i == COMMENT_PACKET) {
                VorbisComments.check(packet);
            }
            if (i == SETUP_PACKET) {
                VorbisBits setup = new VorbisBits(packet);
                VorbisResidues.check(setup, VorbisCodebooks.read(setup));
            }
            if (info.synthesis_headerin(comment, packet) < 0) {
                throw new DecoderTrouble("a header of the Vorbis sound is damaged");
            }
        }
        return info;
    }
}
