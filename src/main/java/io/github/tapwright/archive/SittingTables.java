package io.github.tapwright.archive;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.NewSitting.NewRecording;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.StagedOriginal;
import io.github.tapwright.sitting.WrittenDown;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Sittings in the database, their recordings beside it. */
final class SittingTables implements SittingStore {

    private static final String LAST_OF_TAPS =
            "SELECT id FROM sitting WHERE instrument_id = (SELECT id FROM instrument WHERE shop_number = ?)"
                    + " AND procedure = 'taps' AND added_mass_g IS NULL AND hole IS NOT 'covered' AND id NOT IN ("
                    + OutOfUseTable.SITTINGS.ids() + ") ORDER BY taken_at DESC, id DESC LIMIT 1";

    private static final String OF_ONE_RECORDING =
            "SELECT s.id FROM sitting s JOIN recording r ON r.sitting_id = s.id WHERE r.sha256 = ? AND r.file_name = ?"
                    + " AND (s.taken_at = ?"
                    + " OR EXISTS (SELECT 1 FROM sitting_before b WHERE b.sitting_id = s.id AND b.taken_at = ?))"
                    + " AND (SELECT count(*) FROM recording WHERE sitting_id = s.id) = 1"
                    + " ORDER BY s.id LIMIT 1";

    private static final String BEFORE =
            "SELECT b.*, i.shop_number FROM sitting_before b JOIN instrument i ON i.id = b.instrument_id"
                    + " WHERE b.sitting_id = ? ORDER BY b.id";

    private static final String SHARED = "SELECT sha256, sitting_id FROM recording"
            + " WHERE sha256 IN (SELECT sha256 FROM recording GROUP BY sha256 HAVING count(DISTINCT sitting_id) > 1)"
            + " ORDER BY sha256, sitting_id";

    private final Database database;
    private final Originals originals;
    private final OutlineMemory memory;

    SittingTables(Database database, Originals originals, OutlineMemory memory) {
        this.database = database;
        this.originals = originals;
        this.memory = memory;
    }

    @Override
    public StagedOriginal stage(Path file) {
        return originals.stage(file);
    }

    @Override
    public void discard(StagedOriginal staged) {
        originals.discard(staged.file());
    }

    @Override
    public SittingId add(NewSitting sitting) {
        List<KeptRecording> recordings = place(sitting);
        return database.write(connection -> new SittingWriter(connection).write(sitting, recordings));
    }

    @Override
    public Once addOnce(NewSitting sitting) {
        List<KeptRecording> recordings = place(sitting);
        KeptRecording only = recordings.get(0);
        return database.write(connection -> {
            Optional<SittingId> before = ofOneRecording(
                    connection,
                    only.original().sha256(),
                    only.fileName(),
                    sitting.takenAt().instant());
            return before.isPresent()
                    ? new Once(before.get(), true)
                    : new Once(new SittingWriter(connection).write(sitting, recordings), false);
        });
    }

    /** The first sitting of this sound and no other, under this name, taken at this moment or said to be before it was corrected. */
    static Optional<SittingId> ofOneRecording(Connection connection, String sha256, String fileName, Instant takenAt)
            throws SQLException {
        return Query.one(
                connection,
                OF_ONE_RECORDING,
                row -> new SittingId(row.longInteger("id")),
                sha256,
                fileName,
                UtcText.of(takenAt),
                UtcText.of(takenAt));
    }

    private List<KeptRecording> place(NewSitting sitting) {
        List<KeptRecording> recordings = new ArrayList<>();
        for (NewRecording recording : sitting.recordings()) {
            recordings.add(place(recording));
        }
        return recordings;
    }

    private KeptRecording place(NewRecording recording) {
        StagedOriginal staged = recording.staged();
        try {
            return new KeptRecording(originals.place(staged), staged.fileName(), recording.facts());
        } catch (IOException e) {
            throw Trouble.with(staged.file(), e);
        }
    }

    @Override
    public Optional<Sitting> find(SittingId id) {
        return database.read(connection -> new SittingReader(connection).find(id));
    }

    @Override
    public List<SittingSummary> list(Optional<ShopNumber> instrument) {
        return database.read(connection -> SittingList.read(connection, instrument));
    }

    @Override
    public List<SittingOutline> outlines(Optional<ShopNumber> instrument) {
        return database.read(
                connection -> instrument.isEmpty() ? memory.all(connection) : OutlineReader.of(connection, instrument));
    }

    @Override
    public List<SittingOutline> outlines(List<SittingId> ids) {
        return database.read(connection -> {
            List<SittingOutline> outlines = new ArrayList<>();
            for (SittingId id : ids) {
                OutlineReader.of(connection, id).ifPresent(outlines::add);
            }
            return outlines;
        });
    }

    @Override
    public Instant lastAdded() {
        return database.read(connection -> Query.one(
                        connection, "SELECT max(added_at) AS last FROM sitting", row -> row.optionalText("last"))
                .flatMap(last -> last)
                .map(UtcText::parse)
                .orElse(Instant.MIN));
    }

    @Override
    public List<SittingId> holding(String sha256) {
        return database.read(connection -> Query.all(
                connection,
                "SELECT DISTINCT sitting_id FROM recording WHERE sha256 = ? ORDER BY sitting_id",
                row -> new SittingId(row.longInteger("sitting_id")),
                sha256));
    }

    @Override
    public List<List<SittingId>> sharing() {
        return database.read(connection -> {
            Map<String, List<SittingId>> holders = new LinkedHashMap<>();
            Query.all(
                    connection,
                    SHARED,
                    row -> holders.computeIfAbsent(row.text("sha256"), sha256 -> new ArrayList<>())
                            .add(new SittingId(row.longInteger("sitting_id"))));
            return List.copyOf(holders.values());
        });
    }

    @Override
    public Optional<SittingId> lastOfTaps(ShopNumber instrument) {
        return database.read(connection ->
                Query.one(connection, LAST_OF_TAPS, row -> new SittingId(row.longInteger("id")), instrument.text()));
    }

    @Override
    public Path locate(Original original) {
        return originals.locate(original);
    }

    @Override
    public Analysis addAnalysis(SittingId id, NewAnalysis analysis) {
        return database.write(connection -> {
            String procedure = SittingReader.procedure(connection, id).orElseThrow(() -> unknown(id));
            if (!procedure.equals(analysis.findings().procedure().key())) {
                throw new RefusedEntryException("sitting " + id + " is for " + procedure + ", not for "
                        + analysis.findings().procedure().key());
            }
            String table = AnalysisReader.TABLES.get(procedure);
            int number = 1 + highest(connection, "SELECT max(number) AS n FROM " + table + " WHERE sitting_id = ?", id);
            new AnalysisWriter(connection).write(id.number(), number, analysis);
            return new Analysis(number, analysis.madeAt(), analysis.findings());
        });
    }

    @Override
    public void correct(SittingId id, WrittenDown known) {
        database.write(connection -> {
            refuseUnknown(connection, id);
            long instrument = InstrumentTable.required(connection, known.instrument());
            Insert row = SittingWriter.put(Insert.into("sitting").put("instrument_id", instrument), known.takenAt());
            return ConditionColumns.put(row, known.conditions()).updateWhere(connection, "id", id.number());
        });
    }

    @Override
    public List<WrittenDown> corrected(SittingId id) {
        return database.read(connection -> Query.all(
                connection,
                BEFORE,
                row -> new WrittenDown(
                        new ShopNumber(row.text("shop_number")),
                        SittingReader.takenAt(row),
                        ConditionColumns.read(row)),
                id.number()));
    }

    @Override
    public void setAside(SittingId id, OutOfUse why) {
        say(id, Optional.of(why.reason()), why.since());
    }

    @Override
    public void takeBack(SittingId id, Instant at) {
        say(id, Optional.empty(), at);
    }

    private void say(SittingId id, Optional<String> reason, Instant at) {
        database.write(connection -> {
            refuseUnknown(connection, id);
            return OutOfUseTable.SITTINGS.say(connection, id.number(), reason, at);
        });
    }

    @Override
    public void addName(SittingId id, GivenName name) {
        database.write(connection -> {
            refuseUnknown(connection, id);
            int ordinal = 1 + highest(connection, "SELECT max(ordinal) AS n FROM given_name WHERE sitting_id = ?", id);
            new SittingWriter(connection).name(id, ordinal, name);
            return ordinal;
        });
    }

    private static int highest(Connection connection, String sql, SittingId id) throws SQLException {
        return Query.one(connection, sql, row -> row.optionalInteger("n"), id.number())
                .flatMap(n -> n)
                .orElse(0);
    }

    private static void refuseUnknown(Connection connection, SittingId id) throws SQLException {
        String sql = "SELECT id FROM sitting WHERE id = ?";
        if (Query.one(connection, sql, row -> row.longInteger("id"), id.number())
                .isEmpty()) {
            throw unknown(id);
        }
    }

    private static RefusedEntryException unknown(SittingId id) {
        return new RefusedEntryException("there is no sitting " + id + "; look its number up in the list of sittings");
    }
}
