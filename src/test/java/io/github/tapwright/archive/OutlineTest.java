package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShelfPlace;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SoundFacts;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutlineTest {

    private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");
    private static final ShopNumber OTHER = new ShopNumber("9");

    @TempDir
    Path folder;

    private Path home() {
        return folder.resolve("archive");
    }

    @BeforeEach
    void fill() {
        try (Workshop workshop = Workshop.in(home())) {
            workshop.archive.instruments().add(Instrument.of(OTHER, InstrumentKind.STEEL_STRING));
            workshop.archive
                    .instruments()
                    .add(Instrument.of(new ShopNumber("never measured"), InstrumentKind.CLASSICAL));
            SittingStore store = workshop.archive.sittings();
            SittingId first = add(store, Workshop.NUMBER, NOON, bare(), new Findings.OfTaps(taps("taps-1", 100)));
            store.addAnalysis(first, new NewAnalysis(NOON, new Findings.OfTaps(taps("taps-2", 101))));
            store.addName(first, new GivenName(204.25, Optional.of("main top"), NOON));
            add(store, OTHER, NOON.plusSeconds(60), bare(), new Findings.OfPlucks(plucks()));
            add(store, Workshop.NUMBER, NOON.plusSeconds(30), loaded(), new Findings.OfTaps(taps("taps-2", 99)));
            add(store, Workshop.NUMBER, NOON.minusSeconds(9), bare(), new Findings.OfTaps(taps("taps-2", 98)));
        }
    }

    @Test
    void whatIsRememberedIsReadAnewOnceTheArchiveChanges() {
        try (Workshop own = Workshop.in(home());
                Workshop other = Workshop.in(home())) {
            SittingStore store = own.archive.sittings();
            List<SittingOutline> before = store.outlines(Optional.empty());
            assertThat(own.archive.sittings().outlines(Optional.empty()))
                    .as("nothing changed, nothing is read")
                    .isSameAs(before);

            other.add(TestWav.write(folder.resolve("others.wav"), 8));
            assertThat(store.outlines(Optional.empty())).hasSize(before.size() + 1);
            own.add(TestWav.write(folder.resolve("own.wav"), 9));
            assertThat(store.outlines(Optional.empty())).hasSize(before.size() + 2);
        }
    }

    @Test
    void anOutlineSaysWhatTheWholeSittingSaysToTheLastBit() {
        try (Workshop workshop = Workshop.in(home())) {
            SittingStore store = workshop.archive.sittings();
            List<SittingOutline> all = store.outlines(Optional.empty());
            assertThat(all).extracting(s -> s.id().number()).containsExactly(4L, 1L, 3L, 2L);
            assertThat(all).isEqualTo(whole(store, all));
            assertThat(all.get(0).thirdOctaves().orElseThrow().levelsDb()).hasSizeGreaterThan(3);
            assertThat(all.get(3).plucks().orElseThrow().levels()).hasSize(2);
            assertThat(store.outlines(Optional.of(OTHER))).containsExactly(all.get(3));
            assertThat(store.outlines(List.of(new SittingId(3), new SittingId(77), new SittingId(2))))
                    .containsExactly(all.get(2), all.get(3));
        }
    }

    @Test
    void theShelfShowsTheLastSittingAndTheLastOfTapsHasNoMassOn() {
        try (Workshop workshop = Workshop.in(home())) {
            List<ShelfPlace> shelf = workshop.archive.instruments().shelf();
            assertThat(shelf)
                    .extracting(p -> p.instrument().shopNumber().text())
                    .containsExactly("9", "T-17", "never measured");
            assertThat(shelf).extracting(ShelfPlace::sittings).containsExactly(1, 3, 0);
            assertThat(shelf.get(1).last())
                    .contains(new ShelfPlace.LastSitting(
                            new SittingId(3),
                            Moment.at(NOON.plusSeconds(30)),
                            Optional.of(Stage.STRUNG),
                            Strings.UNKNOWN));
            assertThat(shelf.get(2).last()).isEmpty();
            assertThat(workshop.archive.sittings().lastOfTaps(Workshop.NUMBER)).contains(new SittingId(1));
            assertThat(workshop.archive.sittings().lastOfTaps(OTHER)).isEmpty();
        }
    }

    @Test
    void anArchiveOfTheEighthVersionGetsItsDigestsAndAWrongOneIsFound() throws SQLException {
        List<SittingOutline> before;
        try (Workshop workshop = Workshop.in(home())) {
            before = workshop.archive.sittings().outlines(Optional.empty());
        }
        run(
                "DROP TABLE calibration_withdrawn",
                "DROP TABLE sitting_set_aside",
                "DROP TABLE table_sum",
                "DROP TABLE listening_answer",
                "DROP TABLE listening_sound",
                "DROP TABLE listening",
                "DROP TABLE tap_digest",
                "PRAGMA user_version = 8");
        try (Workshop workshop = Workshop.in(home())) {
            assertThat(workshop.archive.sittings().outlines(Optional.empty())).isEqualTo(before);
            assertThat(workshop.archive.verify(Progress.SILENT).clean()).isTrue();
        }
        run("UPDATE tap_digest SET third_octaves = NULL WHERE analysis_id = 2");
        try (Workshop workshop = Workshop.in(home())) {
            assertThat(workshop.archive.verify(Progress.SILENT).problems())
                    .containsExactly(
                            "database: what stands in tap_digest is not what was written there",
                            "database: the digest of sitting 1 is not that of its results");
        }
    }

    /** Changed by a program that keeps the sums, so that the digest alone can tell. */
    private List<String> problemsAfter(UnaryOperator<byte[]> change) {
        try (Database other = Database.open(home().resolve("tapwright.db"))) {
            other.write(connection -> Insert.into("tap_digest")
                    .put("third_octaves", change.apply(octaves(connection)))
                    .updateWhere(connection, "analysis_id", 1L));
        }
        try (Workshop workshop = Workshop.in(home())) {
            return workshop.archive.verify(Progress.SILENT).problems();
        }
    }

    private static byte[] octaves(Connection connection) throws SQLException {
        String sql = "SELECT third_octaves FROM tap_digest WHERE analysis_id = 1";
        return Query.one(connection, sql, row -> row.bytes("third_octaves")).orElseThrow();
    }

    private static UnaryOperator<byte[]> lastLevel(DoubleUnaryOperator change) {
        return bytes -> {
            int at = bytes.length - Double.BYTES;
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            return buffer.putDouble(at, change.applyAsDouble(buffer.getDouble(at)))
                    .array();
        };
    }

    @Test
    void aDigestThatDiffersInTheLastBitsIsNoDamageAndInMoreIs() {
        String wrong = "database: the digest of sitting 1 is not that of its results";

        assertThat(problemsAfter(lastLevel(Math::nextUp))).isEmpty();
        assertThat(problemsAfter(lastLevel(db -> db + 1e-10))).isEmpty();
        assertThat(problemsAfter(lastLevel(db -> db + 1e-8))).containsExactly(wrong);
        assertThat(problemsAfter(lastLevel(db -> Double.NaN))).containsExactly(wrong);
        assertThat(problemsAfter(bytes -> Arrays.copyOf(bytes, bytes.length - 1)))
                .containsExactly(wrong);
    }

    private static List<SittingOutline> whole(SittingStore store, List<SittingOutline> outlines) {
        return outlines.stream()
                .map(o -> SittingOutline.of(store.find(o.id()).orElseThrow()))
                .toList();
    }

    private void run(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home().resolve("tapwright.db"));
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private SittingId add(SittingStore store, ShopNumber number, Instant at, Conditions conditions, Findings found) {
        SoundFacts facts = new SoundFacts("WAV", 48_000, 1, 0, 1, List.of());
        return store.add(new NewSitting(
                number,
                Moment.at(at),
                NOON,
                conditions,
                List.of(new NewSitting.NewRecording(store.stage(TestWav.write(folder.resolve("taps.wav"), 1)), facts)),
                new NewAnalysis(NOON, found)));
    }

    private static TapResult taps(String version, double lowHz) {
        return TestResults.of(lowHz, 204.25, version);
    }

    private static PluckRun plucks() {
        return new PluckRun(
                List.of(pluck(Optional.of(6), -21.25), pluck(Optional.empty(), -20), pluck(Optional.of(1), -22.1)),
                Tuning.CLASSICAL,
                Optional.<CalibrationId>empty(),
                "plucks-2");
    }

    private static Pluck pluck(Optional<Integer> string, double db) {
        return new Pluck(0, 0.5, string, Optional.of(db), Optional.empty(), Optional.empty(), List.of("clipped"));
    }

    private static Conditions bare() {
        return conditions(Optional.empty());
    }

    private static Conditions loaded() {
        return conditions(Optional.of(new AddedMass(20, Optional.of("bridge"))));
    }

    private static Conditions conditions(Optional<AddedMass> mass) {
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(20.5), Optional.of(44.0)),
                Strings.UNKNOWN,
                HoleState.OPEN,
                Placing.UNKNOWN,
                Microphone.UNKNOWN,
                mass,
                Optional.empty(),
                Optional.empty());
    }
}
