package io.github.tapwright.archive;

import io.github.tapwright.level.FullScale;
import io.github.tapwright.level.Level;
import io.github.tapwright.level.SoundLevels;
import java.sql.SQLException;
import java.util.Optional;
import java.util.function.Function;

/** The levels of a note, all re full scale; all NULL where the note has none. */
final class NoteLevelColumns {

    private static final FullScale REFERENCE = new FullScale();

    private NoteLevelColumns() {}

    static Insert put(Insert row, Optional<SoundLevels> levels) {
        return row.put("laeq_db", db(levels, SoundLevels::laeq))
                .put("lceq_db", db(levels, SoundLevels::lceq))
                .put("lzeq_db", db(levels, SoundLevels::lzeq))
                .put("lafmax_db", db(levels, SoundLevels::lafMax))
                .put("lasmax_db", db(levels, SoundLevels::lasMax))
                .put("lae_db", db(levels, SoundLevels::lae))
                .put("lcpeak_db", db(levels, SoundLevels::lcPeak))
                .put("level_duration_s", levels.map(SoundLevels::durationSeconds));
    }

    static Optional<SoundLevels> read(Row row) throws SQLException {
        Optional<Double> seconds = row.optionalNumber("level_duration_s");
        return seconds.isEmpty()
                ? Optional.empty()
                : Optional.of(new SoundLevels(
                        level(row, "laeq_db"),
                        level(row, "lceq_db"),
                        level(row, "lzeq_db"),
                        level(row, "lafmax_db"),
                        level(row, "lasmax_db"),
                        level(row, "lae_db"),
                        level(row, "lcpeak_db"),
                        seconds.get()));
    }

    private static Optional<Double> db(Optional<SoundLevels> levels, Function<SoundLevels, Level> which) {
        return levels.map(which).map(Level::levelDb);
    }

    private static Level level(Row row, String column) throws SQLException {
        return new Level(row.number(column), REFERENCE);
    }
}
