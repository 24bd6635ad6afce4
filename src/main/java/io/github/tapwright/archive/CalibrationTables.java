package io.github.tapwright.archive;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.CalibrationStore;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.NewCalibration;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.StagedOriginal;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** Calibrations in the database, their recorded tones beside it. */
final class CalibrationTables implements CalibrationStore {

    private static final String ALL =
            "SELECT c.*, o.size_bytes, o.extension FROM calibration c JOIN original o ON o.sha256 = c.sha256";

    private final Database database;
    private final Originals originals;

    CalibrationTables(Database database, Originals originals) {
        this.database = database;
        this.originals = originals;
    }

    private record Notice(long calibrationId, String text) {}

    @Override
    public StagedOriginal stage(Path file) {
        return originals.stage(file);
    }

    @Override
    public void discard(StagedOriginal staged) {
        originals.discard(staged.file());
    }

    @Override
    public Path locate(Original original) {
        return originals.locate(original);
    }

    @Override
    public CalibrationId add(NewCalibration calibration) {
        KeptRecording tone = place(calibration);
        return database.write(connection -> write(connection, calibration, tone));
    }

    @Override
    public Optional<KeptCalibration> find(CalibrationId id) {
        return database.read(connection -> {
            List<Notice> notices = notices(connection);
            return Query.one(connection, ALL + " WHERE c.id = ?", row -> calibration(row, notices), id.number());
        });
    }

    @Override
    public List<KeptCalibration> all() {
        return database.read(connection -> {
            List<Notice> notices = notices(connection);
            return Query.all(connection, ALL + " ORDER BY c.taken_at, c.id", row -> calibration(row, notices));
        });
    }

    private KeptRecording place(NewCalibration calibration) {
        StagedOriginal staged = calibration.staged();
        try {
            return new KeptRecording(
                    originals.place(staged),
                    staged.fileName(),
                    calibration.tone().facts());
        } catch (IOException e) {
            throw Trouble.with(staged.file(), e);
        }
    }

    private static CalibrationId write(Connection connection, NewCalibration calibration, KeptRecording tone)
            throws SQLException {
        OriginalTable.remember(connection, tone.original());
        Insert row = Insert.into("calibration")
                .put("taken_at", calibration.takenAt().instant())
                .put("time_known", calibration.takenAt().timeKnown() ? 1 : 0)
                .put("added_at", calibration.addedAt())
                .put("microphone", calibration.input().microphone())
                .put("gain", calibration.input().gain());
        SoundColumns.put(row, tone);
        long id = CalibrationColumns.put(row, calibration.tone().calibration()).run(connection);
        List<String> notices = tone.facts().notices();
        for (int i = 0; i < notices.size(); i++) {
            Insert.into("calibration_notice")
                    .put("calibration_id", id)
                    .put("ordinal", i)
                    .put("notice", notices.get(i))
                    .run(connection);
        }
        return new CalibrationId(id);
    }

    private static List<Notice> notices(Connection connection) throws SQLException {
        return Query.all(
                connection,
                "SELECT * FROM calibration_notice ORDER BY calibration_id, ordinal",
                row -> new Notice(row.longInteger("calibration_id"), row.text("notice")));
    }

    private static KeptCalibration calibration(Row row, List<Notice> all) throws SQLException {
        long id = row.longInteger("id");
        List<String> notices = all.stream()
                .filter(n -> n.calibrationId() == id)
                .map(Notice::text)
                .toList();
        return new KeptCalibration(
                new CalibrationId(id),
                SittingReader.takenAt(row),
                row.instant("added_at"),
                CalibrationColumns.input(row),
                SoundColumns.read(row, notices),
                CalibrationColumns.read(row));
    }
}
