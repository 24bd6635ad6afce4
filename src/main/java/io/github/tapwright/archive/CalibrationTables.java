package io.github.tapwright.archive;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.CalibrationStore;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.NewCalibration;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.StagedOriginal;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Calibrations in the database, their recorded tones beside it. */
final class CalibrationTables implements CalibrationStore {

    private static final String ALL =
            "SELECT c.*, o.size_bytes, o.extension FROM calibration c JOIN original o ON o.sha256 = c.sha256";

    private static final String RESTING_ON = "SELECT sitting_id FROM pluck_analysis a WHERE calibration_id = ?"
            + " AND number = (SELECT max(number) FROM pluck_analysis l WHERE l.sitting_id = a.sitting_id) ORDER BY sitting_id";

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
            Map<Long, OutOfUse> withdrawn = OutOfUseTable.CALIBRATIONS.all(connection);
            return Query.one(
                    connection, ALL + " WHERE c.id = ?", row -> calibration(row, notices, withdrawn), id.number());
        });
    }

    @Override
    public List<KeptCalibration> all() {
        return database.read(connection -> {
            List<Notice> notices = notices(connection);
            Map<Long, OutOfUse> withdrawn = OutOfUseTable.CALIBRATIONS.all(connection);
            return Query.all(
                    connection, ALL + " ORDER BY c.taken_at, c.id", row -> calibration(row, notices, withdrawn));
        });
    }

    @Override
    public void withdraw(CalibrationId id, OutOfUse why) {
        database.write(connection ->
                OutOfUseTable.CALIBRATIONS.say(connection, id.number(), Optional.of(why.reason()), why.since()));
    }

    @Override
    public void takeBack(CalibrationId id, Instant at) {
        database.write(connection -> OutOfUseTable.CALIBRATIONS.say(connection, id.number(), Optional.empty(), at));
    }

    @Override
    public List<SittingId> restingOn(CalibrationId id) {
        return database.read(connection ->
                Query.all(connection, RESTING_ON, row -> new SittingId(row.longInteger("sitting_id")), id.number()));
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

    private static KeptCalibration calibration(Row row, List<Notice> all, Map<Long, OutOfUse> withdrawn)
            throws SQLException {
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
                CalibrationColumns.read(row),
                Optional.ofNullable(withdrawn.get(id)));
    }
}
