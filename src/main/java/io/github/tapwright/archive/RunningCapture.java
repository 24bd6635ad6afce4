package io.github.tapwright.archive;

import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.Loss;
import io.github.tapwright.sitting.live.SoundBlock;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/** A recording this program is writing: its sound in a file, its notes in the database. */
final class RunningCapture implements Capture {

    /** No program's name: nobody writes the recording, but it was not ended in order either. */
    private static final String BROKEN_OFF = "broken off";

    private final Database database;
    private final CaptureId id;
    private final Path path;
    private final CaptureFile file;
    private final Set<CaptureId> brokenOff;
    private boolean closed;
    private int lossCount;

    RunningCapture(Database database, CaptureId id, Path path, CaptureFile file, Set<CaptureId> brokenOff) {
        this.database = database;
        this.id = id;
        this.path = path;
        this.file = file;
        this.brokenOff = brokenOff;
    }

    @Override
    public CaptureId id() {
        return id;
    }

    @Override
    public void append(SoundBlock block) {
        try {
            file.append(block);
        } catch (IOException e) {
            throw Trouble.with(path, e);
        }
    }

    @Override
    public void note(CaptureNotes notes) {
        database.write(connection -> CaptureColumns.put(
                        Insert.into("capture")
                                .put("instrument_id", InstrumentTable.required(connection, notes.instrument())),
                        notes)
                .updateWhere(connection, "id", id.number()));
    }

    @Override
    public void note(Loss loss) {
        int ordinal = lossCount++;
        database.write(connection -> Insert.into("capture_loss")
                .put("capture_id", id.number())
                .put("ordinal", ordinal)
                .put("at_s", loss.atSeconds())
                .put("frames", loss.frames())
                .put("reason", loss.reason())
                .run(connection));
    }

    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        Optional<String> writer = Optional.of(BROKEN_OFF);
        try {
            file.close();
            writer = Optional.empty();
        } catch (IOException e) {
            throw Trouble.with(path, e);
        } finally {
            end(writer);
        }
    }

    private void end(Optional<String> writer) {
        // Until the database can say that nobody writes it any more, this program remembers.
        brokenOff.add(id);
        database.write(
                connection -> Insert.into("capture").put("writer", writer).updateWhere(connection, "id", id.number()));
    }
}
