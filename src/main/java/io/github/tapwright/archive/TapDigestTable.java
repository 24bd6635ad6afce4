package io.github.tapwright.archive;

import io.github.tapwright.mode.TapResult;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.ThirdOctaves;
import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Digests of analyses of taps in the database. */
final class TapDigestTable {

    private TapDigestTable() {}

    static void write(Connection connection, long analysisId, TapResult result) throws SQLException, IOException {
        Insert row = Insert.into("tap_digest")
                .put("analysis_id", analysisId)
                .put("resonances", TapDigest.of(result.resonances()));
        if (result.curve().isPresent()) {
            row.put("third_octaves", TapDigest.of(ThirdOctaves.of(result.curve().get())));
        }
        row.run(connection);
    }

    /** Makes the digests an archive of an older version lacks. */
    static int fill(Connection connection) throws SQLException, IOException {
        List<Long> without = all(connection, "WHERE id NOT IN (SELECT analysis_id FROM tap_digest)");
        for (long analysisId : without) {
            write(connection, analysisId, new TapsReader(connection).result(analysisId));
        }
        return without.size();
    }

    /** Whether an analysis of a sitting has no digest, or one that says something else than its tables. */
    static boolean isWrong(Connection connection, SittingId sitting) throws SQLException, IOException {
        for (long analysisId : all(connection, "WHERE sitting_id = " + sitting.number())) {
            TapResult result = new TapsReader(connection).result(analysisId);
            Optional<byte[]> resonances = bytes(connection, "resonances", analysisId);
            Optional<byte[]> octaves = bytes(connection, "third_octaves", analysisId);
            byte[] curve = result.curve().isPresent()
                    ? TapDigest.of(ThirdOctaves.of(result.curve().get()))
                    : new byte[0];
            if (!Arrays.equals(TapDigest.of(result.resonances()), resonances.orElseGet(() -> new byte[0]))
                    || !TapDigest.sameOctaves(octaves.orElseGet(() -> new byte[0]), curve)) {
                return true;
            }
        }
        return false;
    }

    private static Optional<byte[]> bytes(Connection connection, String column, long analysisId) throws SQLException {
        String sql = "SELECT " + column + " FROM tap_digest WHERE analysis_id = ? AND " + column + " IS NOT NULL";
        return Query.one(connection, sql, row -> row.bytes(column), analysisId);
    }

    private static List<Long> all(Connection connection, String which) throws SQLException {
        return Query.all(connection, "SELECT id FROM analysis " + which + " ORDER BY id", row -> row.longInteger("id"));
    }
}
