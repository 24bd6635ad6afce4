package io.github.tapwright.audio;

import com.jcraft.jogg.Packet;
import com.jcraft.jogg.Page;
import com.jcraft.jogg.StreamState;
import com.jcraft.jogg.SyncState;
import java.io.IOException;
import java.io.InputStream;

/** The packets of the first stream in an Ogg file, through JOgg. */
final class OggPackets {

    private static final int BYTES_AT_ONCE = 4096;

    private final InputStream in;
    private final SyncState sync = new SyncState();
    private final StreamState stream = new StreamState();
    private final Page page = new Page();
    private boolean started;
    private int serial;

    OggPackets(InputStream in) {
        this.in = in;
        sync.init();
    }

    /**
     * The next packet.
     *
     * @return false at the end of the file
     * @throws DecoderTrouble if a page is damaged or missing
     */
    boolean next(Packet packet) throws IOException {
        while (true) {
            int found = started ? stream.packetout(packet) : 0;
            if (found == 1) {
                return true;
            }
            if (found < 0) {
                throw new DecoderTrouble("a page of the Ogg stream is missing");
            }
            if (!nextPage()) {
                return false;
            }
        }
    }

    private boolean nextPage() throws IOException {
        for (int found = sync.pageout(page); found != 1; found = sync.pageout(page)) {
            if (found < 0) {
                throw new DecoderTrouble("a page of the Ogg stream is damaged");
            }
            int at = sync.buffer(BYTES_AT_ONCE);
            int n = in.read(sync.data, at, BYTES_AT_ONCE);
            if (n <= 0) {
                return false;
            }
            sync.wrote(n);
        }
        if (!started) {
            started = true;
            serial = page.serialno();
            stream.init(serial);
        }
        if (page.serialno() == serial && stream.pagein(page) < 0) {
            throw new DecoderTrouble("a page of the Ogg stream is not valid");
        }
        return true;
    }
}
