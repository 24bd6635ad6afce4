package io.github.tapwright.exchange;

import io.github.tapwright.sitting.listening.HeardSound;
import io.github.tapwright.sitting.listening.ListeningAnswer;
import io.github.tapwright.sitting.listening.ListeningSession;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What is written of blind listenings. */
final class ListeningFields {

    /** A part of a listening with the listening it belongs to; numbers count from 1 as the maker reads them. */
    private record Part<P>(ListeningSession session, int ordinal, P part) {}

    private static final List<Field<ListeningSession>> SESSION = List.of(
            Field.of("listening", s -> s.id().number()),
            Field.of("started_at", s -> s.setUp().startedAt().toString()),
            Field.maybe("listener", s -> s.setUp().listener()),
            Field.maybe("played_through", s -> s.setUp().playedThrough()),
            Field.of("seed", s -> Long.toString(s.setUp().seed())),
            Field.of("matched_by", s -> s.setUp().matchedBy().key()),
            Field.of("played_s", s -> s.setUp().secondsEach()),
            Field.of("trials", s -> s.setUp().trialCount()),
            Field.of("answers", s -> s.answers().size()),
            Field.of("right_answers", ListeningSession::rightCount));

    private static final List<Field<HeardSound>> SOUND = List.of(
            Field.of("sitting", s -> s.stretch().sitting().toString()),
            Field.of("recording", s -> s.stretch().recording() + 1),
            Field.of("from_s", s -> s.stretch().fromSeconds()),
            Field.of("to_s", s -> s.stretch().toSeconds()),
            Field.of("words", s -> s.stretch().words()),
            Field.of("loudness_lufs", HeardSound::loudnessLufs),
            Field.of("gain_db", HeardSound::gainDb));

    private static final List<Field<ListeningAnswer>> ANSWER = List.of(
            Field.of("sound_a", a -> a.trial().a() + 1),
            Field.of("sound_b", a -> a.trial().b() + 1),
            Field.of("x", a -> a.trial().xIsA() ? "A" : "B"),
            Field.of("answer", a -> a.saidA() ? "A" : "B"),
            Field.of("right", ListeningAnswer::right),
            Field.of("times_played", ListeningAnswer::playCount),
            Field.of("answered_at", a -> a.answeredAt().toString()));

    private ListeningFields() {}

    static Map<String, String> tables(List<ListeningSession> sessions) {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("listenings.csv", CsvText.of(SESSION, sessions));
        tables.put(
                "listening-sounds.csv",
                parts("sound", SOUND, sessions, s -> s.setUp().sounds()));
        tables.put("listening-answers.csv", parts("trial", ANSWER, sessions, ListeningSession::answers));
        return tables;
    }

    static List<Map<String, @Nullable Object>> documents(List<ListeningSession> sessions) {
        return sessions.stream().map(ListeningFields::document).toList();
    }

    private static Map<String, @Nullable Object> document(ListeningSession session) {
        Map<String, @Nullable Object> document = JsonText.object(SESSION, session);
        document.put("sounds", JsonText.array(SOUND, session.setUp().sounds()));
        document.put("trials_answered", JsonText.array(ANSWER, session.answers()));
        return document;
    }

    private static <P> String parts(
            String ordinal,
            List<Field<P>> fields,
            List<ListeningSession> sessions,
            java.util.function.Function<ListeningSession, List<P>> of) {
        List<Part<P>> rows = sessions.stream()
                .flatMap(s -> IntStream.range(0, of.apply(s).size())
                        .mapToObj(i -> new Part<>(s, i + 1, of.apply(s).get(i))))
                .toList();
        List<Field<Part<P>>> keys =
                List.of(Field.of("listening", p -> p.session.id().number()), Field.of(ordinal, Part::ordinal));
        return CsvText.of(
                Stream.concat(keys.stream(), Field.<Part<P>, P>within(fields, Part::part).stream())
                        .toList(),
                rows);
    }
}
