package io.github.tapwright.archive;

import io.github.tapwright.level.broadcast.MatchedBy;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.Stretch;
import io.github.tapwright.sitting.listening.HeardSound;
import io.github.tapwright.sitting.listening.ListeningAnswer;
import io.github.tapwright.sitting.listening.ListeningId;
import io.github.tapwright.sitting.listening.ListeningSession;
import io.github.tapwright.sitting.listening.ListeningStore;
import io.github.tapwright.sitting.listening.ListeningTrial;
import io.github.tapwright.sitting.listening.NewListening;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Blind listenings in the database: one transaction for what was settled, one for each answer. */
final class ListeningTables implements ListeningStore {

    private final Database database;

    ListeningTables(Database database) {
        this.database = database;
    }

    @Override
    public ListeningId begin(NewListening begun) {
        return database.write(connection -> {
            long id = Insert.into("listening")
                    .put("started_at", begun.startedAt())
                    .put("seed", begun.seed())
                    .put("trial_count", begun.trialCount())
                    .put("matched_by", begun.matchedBy().key())
                    .put("seconds_each", begun.secondsEach())
                    .put("listener", begun.listener())
                    .put("played_through", begun.playedThrough())
                    .run(connection);
            for (int i = 0; i < begun.sounds().size(); i++) {
                addSound(connection, id, i, begun.sounds().get(i));
            }
            return new ListeningId(id);
        });
    }

    private static void addSound(Connection connection, long id, int ordinal, HeardSound sound) throws SQLException {
        Stretch stretch = sound.stretch();
        Insert.into("listening_sound")
                .put("listening_id", id)
                .put("ordinal", ordinal)
                .put("sitting_id", stretch.sitting().number())
                .put("recording", stretch.recording())
                .put("from_seconds", stretch.fromSeconds())
                .put("to_seconds", stretch.toSeconds())
                .put("is_note", stretch.isNote() ? 1 : 0)
                .put("words", stretch.words())
                .put("loudness_lufs", sound.loudnessLufs())
                .put("gain_db", sound.gainDb())
                .run(connection);
    }

    @Override
    public void add(ListeningId id, ListeningAnswer answer) {
        database.write(connection -> Insert.into("listening_answer")
                .put("listening_id", id.number())
                .put("ordinal", answer.number())
                .put("sound_a", answer.trial().a())
                .put("sound_b", answer.trial().b())
                .put("x_is_a", answer.trial().xIsA() ? 1 : 0)
                .put("said_a", answer.saidA() ? 1 : 0)
                .put("play_count", answer.playCount())
                .put("answered_at", answer.answeredAt())
                .run(connection));
    }

    @Override
    public Optional<ListeningSession> find(ListeningId id) {
        return database.read(connection ->
                Query.one(connection, "SELECT * FROM listening WHERE id = ?", ListeningTables::id, id.number())
                                .isPresent()
                        ? Optional.of(read(connection, id))
                        : Optional.empty());
    }

    @Override
    public List<ListeningSession> all() {
        return database.read(connection -> {
            List<ListeningSession> all = new ArrayList<>();
            for (ListeningId id : Query.all(connection, "SELECT id FROM listening ORDER BY id", ListeningTables::id)) {
                all.add(read(connection, id));
            }
            return all;
        });
    }

    private static ListeningId id(Row row) throws SQLException {
        return new ListeningId(row.longInteger("id"));
    }

    private static ListeningSession read(Connection connection, ListeningId id) throws SQLException {
        List<HeardSound> sounds = Query.all(
                connection,
                "SELECT * FROM listening_sound WHERE listening_id = ? ORDER BY ordinal",
                ListeningTables::sound,
                id.number());
        List<ListeningAnswer> answers = Query.all(
                connection,
                "SELECT * FROM listening_answer WHERE listening_id = ? ORDER BY ordinal",
                ListeningTables::answer,
                id.number());
        NewListening setUp = Query.one(
                        connection, "SELECT * FROM listening WHERE id = ?", row -> setUp(row, sounds), id.number())
                .orElseThrow();
        return new ListeningSession(id, setUp, answers);
    }

    private static NewListening setUp(Row row, List<HeardSound> sounds) throws SQLException {
        return new NewListening(
                row.instant("started_at"),
                row.longInteger("seed"),
                row.integer("trial_count"),
                row.requiredKey("matched_by", MatchedBy::ofKey),
                row.number("seconds_each"),
                sounds,
                row.optionalText("listener"),
                row.optionalText("played_through"));
    }

    private static HeardSound sound(Row row) throws SQLException {
        Stretch stretch = new Stretch(
                new SittingId(row.longInteger("sitting_id")),
                row.integer("recording"),
                row.number("from_seconds"),
                row.number("to_seconds"),
                row.integer("is_note") == 1,
                row.text("words"));
        return new HeardSound(stretch, row.number("loudness_lufs"), row.number("gain_db"));
    }

    private static ListeningAnswer answer(Row row) throws SQLException {
        return new ListeningAnswer(
                row.integer("ordinal"),
                new ListeningTrial(row.integer("sound_a"), row.integer("sound_b"), row.integer("x_is_a") == 1),
                row.integer("said_a") == 1,
                row.integer("play_count"),
                row.instant("answered_at"));
    }
}
