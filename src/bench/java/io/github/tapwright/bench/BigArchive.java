package io.github.tapwright.bench;

import io.github.tapwright.InventedResults;
import io.github.tapwright.archive.Archive;
import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SoundFacts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Fills an archive with 250 invented instruments, 9,000 sittings of taps with six resonances and a curve of 941 points each, and 1,000
 * of plucks.
 *
 * <p>A few sittings go in by the archive's own way; the database then multiplies them, each copy with figures of its own. It is taken
 * back to the version before digests first, so that opening it makes them: that is the upgrade of an archive of this size.
 */
final class BigArchive {

    static final int SITTINGS = 10_000;
    static final ShopNumber SOME = new ShopNumber("B-017");
    static final ShopNumber ANOTHER = new ShopNumber("B-018");

    private static final int INSTRUMENTS = 250;
    private static final List<ConstructionKind> KINDS =
            List.of(ConstructionKind.SOLID, ConstructionKind.HONEYCOMB_SANDWICH, ConstructionKind.WOOD_SANDWICH);
    private static final Instant START = Instant.parse("2016-01-04T09:00:00Z");

    /** Back to an archive of some versions ago, which opening it brings up to date. */
    private static final List<String> AS_AN_EARLIER_ONE = List.of(
            "DROP TABLE calibration_withdrawn",
            "DROP TABLE sitting_set_aside",
            "DROP TABLE tap_digest",
            "DROP TABLE table_sum",
            "DROP TABLE listening_answer",
            "DROP TABLE listening_sound",
            "DROP TABLE listening",
            "PRAGMA user_version = 8");

    private static final String COPIES = "WITH RECURSIVE n(k) AS (SELECT 6 UNION ALL SELECT k + 1 FROM n WHERE k < "
            + SITTINGS + "), c AS (SELECT k, CASE k % 10 WHEN 0 THEN 5 ELSE 1 + k % 4 END AS t, 1 + k % " + INSTRUMENTS
            + " AS i, ((k * 7919) % 1000) / 1000.0 - 0.5 AS x, (((k % " + INSTRUMENTS
            + ") * 104729) % 1000) / 1000.0 - 0.5 AS y FROM n) ";

    private BigArchive() {}

    static void make(Path folder) throws IOException, SQLException {
        Path home = folder.resolve("archive");
        try (Archive archive = Archive.open(home, Clock.systemUTC())) {
            for (int i = 0; i < INSTRUMENTS; i++) {
                archive.instruments().add(instrument(i));
            }
            for (int i = 0; i < 4; i++) {
                add(archive.sittings(), sound(folder, i), new Findings.OfTaps(taps(1 + 0.01 * i)));
            }
            add(archive.sittings(), sound(folder, 4), new Findings.OfPlucks(plucks()));
            archive.benchStudies().add(List.of(new SittingId(1), new SittingId(2), new SittingId(3)), START);
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + home.resolve("tapwright.db"));
                Statement statement = connection.createStatement()) {
            connection.setAutoCommit(false);
            for (String sql : multiply()) {
                statement.executeUpdate(sql);
            }
            for (String sql : AS_AN_EARLIER_ONE) {
                statement.executeUpdate(sql);
            }
            connection.commit();
        }
    }

    /** Each sitting has a recording of its own: one that several hold would count once. */
    private static Path sound(Path folder, int number) throws IOException {
        return Files.writeString(folder.resolve("sound-" + number + ".wav"), "stands for recording " + number);
    }

    private static List<String> multiply() {
        return List.of(
                copy(
                        "sitting",
                        "id, instrument_id, taken_at, time_known, added_at, stage, temperature_celsius,"
                                + " relative_humidity_percent, strings, hole, support, strike_tool, strike_place,"
                                + " microphone, microphone_distance_mm, gain, procedure",
                        "k, i, strftime('%Y-%m-%dT%H:%M:%S.000000000Z', '2016-01-04', (k * 8) || ' hours'), 1, added_at,"
                                + " stage, 20 + 4 * x, 45 + 10 * x, strings, hole, support, strike_tool, strike_place,"
                                + " microphone, microphone_distance_mm, gain, procedure",
                        "id = t"),
                copy(
                        "original",
                        "sha256, size_bytes, extension",
                        "printf('%064x', k), size_bytes, extension",
                        "sha256 = (SELECT sha256 FROM recording WHERE sitting_id = t)"),
                copy(
                        "recording",
                        "sitting_id, place, sha256, file_name, format, sample_rate_hz, channel_count, channel_used, duration_s",
                        "k, place, printf('%064x', k), file_name, format, sample_rate_hz, channel_count, channel_used, duration_s",
                        "sitting_id = t"),
                copy(
                        "analysis",
                        "id, sitting_id, number, made_at, method_version, low_hz, high_hz, longest_decay_s, minimum_snr_db",
                        "k, k, 1, made_at, method_version, low_hz, high_hz, longest_decay_s, minimum_snr_db",
                        "id = t AND t < 5"),
                copy(
                        "strike",
                        "analysis_id, ordinal, source, onset_s, peak_dbfs, snr_db",
                        "k, ordinal, source, onset_s, peak_dbfs, snr_db",
                        "analysis_id = t AND t < 5"),
                copy(
                        "resonance",
                        "analysis_id, ordinal, suggested_name, frequency_hz, frequency_u_hz, frequency_dof, q, q_u,"
                                + " q_dof, decay_time_s, decay_time_u_s, decay_time_dof, level_db, level_u_db,"
                                + " level_dof, strike_count, note, name_reason",
                        "k, ordinal, suggested_name, frequency_hz * (1 + 0.004 * x + 0.04 * y), frequency_u_hz,"
                                + " frequency_dof, q * (1 + 0.1 * x + 0.1 * y), q_u, q_dof, decay_time_s, decay_time_u_s,"
                                + " decay_time_dof, level_db, level_u_db, level_dof, strike_count, note, name_reason",
                        "analysis_id = t AND t < 5"),
                copy("response_curve", "analysis_id, points", "k, points", "analysis_id = t AND t < 5"),
                copy(
                        "pluck_analysis",
                        "id, sitting_id, number, made_at, method_version, fret_count, calibration_id",
                        "k, k, 1, made_at, method_version, fret_count, calibration_id",
                        "sitting_id = t"),
                copy(
                        "pluck",
                        "analysis_id, ordinal, source, attack_at_s, string, lafmax_db",
                        "k, ordinal, source, attack_at_s, string, lafmax_db + 2 * x + y",
                        "analysis_id = 1 AND t = 5"),
                "INSERT INTO given_name SELECT id, 0, 190, 'main top', taken_at FROM sitting WHERE id % 7 = 0 AND id > 5");
    }

    private static String copy(String table, String columns, String values, String of) {
        return COPIES + "INSERT INTO " + table + " (" + columns + ") SELECT " + values + " FROM c JOIN " + table
                + " ON " + of;
    }

    private static Instrument instrument(int i) {
        ConstructionKind kind = KINDS.get(i % KINDS.size());
        return new Instrument(
                new ShopNumber(String.format("B-%03d", i)),
                i % 2 == 0 ? InstrumentKind.CLASSICAL : InstrumentKind.OTHER,
                Body.UNKNOWN,
                new Construction(Optional.of(kind), Layer.UNKNOWN, Layer.UNKNOWN, Layer.UNKNOWN, Optional.empty()),
                Optional.empty(),
                Optional.empty());
    }

    private static void add(SittingStore store, Path sound, Findings findings) {
        SoundFacts facts = new SoundFacts("WAV, 24 bit integer", 48_000, 1, 0, 12, List.of());
        store.add(new NewSitting(
                SOME,
                Moment.at(START),
                START,
                conditions(),
                List.of(new NewSitting.NewRecording(store.stage(sound), facts)),
                new NewAnalysis(START, findings)));
    }

    private static TapResult taps(double shift) {
        TapResult three = InventedResults.result(shift);
        List<NamedResonance> six = new ArrayList<>(three.resonances());
        six.add(like(three.resonances().get(1), 1.9, Optional.of(ModeName.CROSS_DIPOLE)));
        six.add(like(three.resonances().get(1), 2.3, Optional.of(ModeName.LONG_DIPOLE)));
        six.add(like(three.resonances().get(1), 3.1, Optional.empty()));
        return new TapResult(
                three.strikes(), three.curve(), six, three.warnings(), three.settings(), three.methodVersion());
    }

    private static NamedResonance like(NamedResonance other, double ratio, Optional<ModeName> name) {
        Resonance r = other.resonance();
        return new NamedResonance(
                new Resonance(
                        r.frequencyHz().times(ratio),
                        r.q(),
                        r.decayTimeSeconds().times(1 / ratio),
                        r.levelDb(),
                        r.strikeCount(),
                        r.note()),
                name,
                "in its usual band, and the only one there that stands out from its neighbours");
    }

    private static PluckRun plucks() {
        List<Pluck> plucks = IntStream.range(0, 30)
                .mapToObj(i -> new Pluck(
                        0,
                        i,
                        Optional.of(1 + i % 6),
                        Optional.of(-20.0 - i % 5),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()))
                .toList();
        return new PluckRun(plucks, Tuning.CLASSICAL, Optional.empty(), "plucks-2");
    }

    private static Conditions conditions() {
        return new Conditions(
                Optional.of(Stage.LATER),
                new Air(Optional.of(20.0), Optional.of(45.0)),
                new Strings(Optional.of(StringState.DAMPED), Optional.empty(), Optional.empty()),
                HoleState.OPEN,
                new Placing(Optional.of("foam"), Optional.of("knuckle"), Optional.of("bridge")),
                new Microphone(Optional.of("the usual one"), Optional.of(600.0), Optional.of("knob at 4")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
