package io.github.tapwright.archive;

import io.github.tapwright.sitting.BenchStudyStore;
import io.github.tapwright.sitting.SittingId;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Studies of the bench in the database. */
final class BenchStudyTables implements BenchStudyStore {

    private static final String LATEST = "SELECT sitting_id FROM bench_study_sitting WHERE study_id ="
            + " (SELECT max(of_kind.study_id) FROM bench_study_sitting of_kind JOIN sitting ON sitting.id = of_kind.sitting_id"
            + " WHERE sitting.procedure = ? AND of_kind.study_id > (SELECT coalesce(max(id), 0) FROM bench_study"
            + " WHERE id NOT IN (SELECT study_id FROM bench_study_sitting))) ORDER BY ordinal";

    private final Database database;

    BenchStudyTables(Database database) {
        this.database = database;
    }

    @Override
    public void addAll(List<List<SittingId>> studies, Instant keptAt) {
        database.write(connection -> {
            for (List<SittingId> sittings : studies) {
                insert(connection, sittings, keptAt);
            }
            return studies.size();
        });
    }

    private static void insert(Connection connection, List<SittingId> sittings, Instant keptAt) throws SQLException {
        long id = Insert.into("bench_study").put("kept_at", keptAt).run(connection);
        for (int i = 0; i < sittings.size(); i++) {
            Insert.into("bench_study_sitting")
                    .put("study_id", id)
                    .put("ordinal", i)
                    .put("sitting_id", sittings.get(i).number())
                    .run(connection);
        }
    }

    @Override
    public Optional<List<SittingId>> latest(String procedure) {
        List<SittingId> sittings = database.read(connection ->
                Query.all(connection, LATEST, row -> new SittingId(row.longInteger("sitting_id")), procedure));
        return sittings.isEmpty() ? Optional.empty() : Optional.of(sittings);
    }
}
