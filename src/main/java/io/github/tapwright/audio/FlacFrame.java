package io.github.tapwright.audio;

import java.io.IOException;

/** One decoded FLAC frame; its arrays are used again for the next one. */
final class FlacFrame {

    private long[][] channels = {};
    private int length;

    /** Decodes the subframes after a header and the check behind them. */
    void decode(FlacBits in, FlacFrameHeader header) throws IOException {
        length = 0;
        int n = header.blockSize();
        if (channels.length != header.channels() || channels[0].length < n) {
            channels = new long[header.channels()][n];
        }
        for (int c = 0; c < channels.length; c++) {
            FlacSubframe.decode(in, header.bits() + (isSide(header.assignment(), c) ? 1 : 0), channels[c], n);
        }
        in.alignToByte();
        int expected = in.crc16();
        if (in.unsigned(16) != expected) {
            throw new DecoderTrouble("a frame fails its check");
        }
        rejoin(header.assignment(), n);
        length = n;
    }

    private static boolean isSide(int assignment, int channel) {
        return switch (assignment) {
            case FlacFrameHeader.LEFT_SIDE, FlacFrameHeader.MID_SIDE -> channel == 1;
            case FlacFrameHeader.SIDE_RIGHT -> channel == 0;
            default -> false;
        };
    }

    /** Left and right from what was stored: side = left − right, mid = (left + right) / 2 rounded down. */
    private void rejoin(int assignment, int n) {
        if (assignment < FlacFrameHeader.LEFT_SIDE) {
            return;
        }
        long[] first = channels[0];
        long[] second = channels[1];
        for (int i = 0; i < n; i++) {
            switch (assignment) {
                case FlacFrameHeader.LEFT_SIDE -> second[i] = first[i] - second[i];
                case FlacFrameHeader.SIDE_RIGHT -> first[i] += second[i];
                default -> {
                    long sum = (first[i] << 1) | (second[i] & 1);
                    first[i] = (sum + second[i]) >> 1;
                    second[i] = (sum - second[i]) >> 1;
                }
            }
        }
    }

    int length() {
        return length;
    }

    long sample(int channel, int index) {
        return channels[channel][index];
    }
}
