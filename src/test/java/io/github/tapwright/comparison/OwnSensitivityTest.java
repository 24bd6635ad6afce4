package io.github.tapwright.comparison;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.climate.HumiditySensitivity;
import io.github.tapwright.climate.SensitivityBasis;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.played.StudyPlaying;
import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.FollowInstrument;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.HistoryWords;
import io.github.tapwright.comparison.trend.TrendWords;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.NewSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.synthesis.Chance;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A guitar through eight months, on a real archive: its top follows humidity by −0.20 % a point, its back by −0.25, its main air by −0.076
 * and by 0.6 of the speed of sound. Damp months are warm.
 */
class OwnSensitivityTest {

    private static final Instant START = Instant.parse("2025-01-10T12:00:00Z");
    private static final ShopNumber NUMBER = new ShopNumber("51");
    /** Dry, damp and dry again: what eight months of ever damper air could not tell from a drift, they can. */
    private static final double[] SEASONS = {41, 46, 52, 57, 55, 48, 43, 58};

    private static final double[] EVER_DAMPER = {41, 43, 46, 48, 52, 55, 58, 57};

    private final Random chance = Chance.seeded(8);

    @TempDir
    Path folder;

    private Archive archive;

    @BeforeEach
    void open() {
        archive = Archive.open(folder.resolve("archive"), Clock.fixed(START, ZoneOffset.UTC));
        archive.instruments().add(Instrument.of(NUMBER, InstrumentKind.CLASSICAL));
    }

    @AfterEach
    void close() {
        archive.close();
    }

    private void measure(int months, Optional<Double> kelvinAPoint) throws IOException {
        measure(months, kelvinAPoint, SEASONS, 0);
    }

    private void measure(int months, Optional<Double> kelvinAPoint, double[] humidity, double topAMonth)
            throws IOException {
        for (int month = 0; month < months; month++) {
            double points = humidity[month] - 50;
            Optional<Double> degrees = kelvinAPoint.map(k -> 22.7 + k * points);
            double warmth = degrees.map(t -> 0.6 * 0.0017 * (t - 20)).orElse(0.0);
            InventedBody body = new InventedBody(
                    (1 - 0.00076 * points) * (1 + warmth) * setUp(),
                    (1 - 0.0020 * points) * (1 + topAMonth * month) * setUp(),
                    (1 - 0.0025 * points) * setUp(),
                    1);
            keep(body, month, new Air(degrees, Optional.of(humidity[month])));
        }
    }

    private double setUp() {
        return 1 + 0.001 * chance.nextGaussian();
    }

    private void keep(InventedBody body, int month, Air air) throws IOException {
        Conditions conditions = InventedSittings.with(InventedBody.conditions(Stage.STRUNG, 50), air, Optional.empty());
        Instant at = START.plus(Duration.ofDays(30L * month));
        var made = body.sitting(month + 1, NUMBER.text(), at, conditions);
        Path file = Files.writeString(folder.resolve("taps.wav"), "recording " + month);
        archive.sittings()
                .add(new NewSitting(
                        NUMBER,
                        made.takenAt(),
                        at,
                        conditions,
                        made.recordings().stream()
                                .map(r -> new NewSitting.NewRecording(
                                        archive.sittings().stage(file), r.facts()))
                                .toList(),
                        new NewAnalysis(at, made.latest().findings())));
    }

    private HumiditySensitivity learnt(ModeName mode) {
        return new SensitivityLearning(archive.sittings()).of(NUMBER).of(Optional.of(mode));
    }

    private StudyBench studies() {
        return new StudyBench(archive.sittings(), archive.benchStudies(), Clock.systemUTC());
    }

    private History history() {
        return new FollowInstrument(
                        archive.instruments(),
                        archive.sittings(),
                        studies(),
                        new StudyPlaying(archive.sittings(), archive.benchStudies(), Clock.systemUTC()),
                        ZoneOffset.UTC)
                .follow(NUMBER, Optional.empty(), ShopWindow.USUAL);
    }

    private static void assertLearnt(HumiditySensitivity sensitivity, double truth) {
        assertThat(sensitivity.basis()).isEqualTo(SensitivityBasis.LEARNT);
        assertThat(sensitivity.percentPerPoint()).isCloseTo(truth, within(3 * sensitivity.standardUncertainty()));
        assertThat(sensitivity.standardUncertainty()).isLessThan(0.025);
    }

    /** 0.3 K for every point: taken for humidity's, the warmth would lift the main air's slope to −0.045 %. */
    @Test
    void everyResonanceLearnsItsOwnAndTheMainAirIsFreedFromTheWarmth() throws IOException {
        measure(8, Optional.of(0.3));

        assertLearnt(learnt(ModeName.MAIN_TOP), -0.20);
        assertLearnt(learnt(ModeName.MAIN_BACK), -0.25);
        assertLearnt(learnt(ModeName.MAIN_AIR), -0.076);
        assertThat(learnt(ModeName.MAIN_AIR).standardUncertainty())
                .as("how large the air's share is, is part of it")
                .isGreaterThan(1.2 * learnt(ModeName.MAIN_TOP).standardUncertainty());
        assertThat(learnt(ModeName.CROSS_DIPOLE)).isEqualTo(assumed(ModeName.CROSS_DIPOLE));
    }

    @Test
    void aMainAirOfUnknownTemperatureTeachesNothing() throws IOException {
        measure(8, Optional.empty());

        assertLearnt(learnt(ModeName.MAIN_BACK), -0.25);
        assertThat(learnt(ModeName.MAIN_AIR)).isEqualTo(assumed(ModeName.MAIN_AIR));
    }

    @Test
    void neitherADriftNorADifferenceIsClaimed() throws IOException {
        measure(8, Optional.of(0.0));

        History history = history();
        assertThat(history.series())
                .hasSize(9)
                .allSatisfy(s -> assertThat(s.drift().filter(Drift::drifts)).isEmpty())
                .allSatisfy(s -> assertThat(TrendWords.sentence(s, history)).contains("no drift to be told"));
        assertThat(HistoryWords.humidity(history).orElseThrow())
                .contains("main air −0.0", "main top −0.2", "main back −0.2")
                .endsWith("learnt from 8 sittings of this instrument, a steady drift set apart");

        assertThat(compared(1, 4, Optional.empty()).changes())
                .hasSize(3)
                .allSatisfy(c -> assertThat(c.frequencyHz().verdict()).isEqualTo(Difference.Verdict.CANNOT_TELL));
    }

    private SittingComparison compared(long a, long b, Optional<SetUpSpread> spread) {
        return new CompareSittings(archive.sittings(), studies())
                .compare(
                        new SittingId(a),
                        new SittingId(b),
                        new CompareSittings.Settings(spread, ShopWindow.USUAL, Optional.empty()))
                .comparison();
    }

    private static Difference top(SittingComparison comparison) {
        return comparison.changes().get(1).frequencyHz();
    }

    /** 2.8 % in seven months, while humidity came and went: it is not learnt as humidity's, so the comparison finds it. */
    @Test
    void aDriftBesideHumidityIsFoundByTheComparison() throws IOException {
        measure(8, Optional.of(0.0), SEASONS, -0.004);

        assertLearnt(learnt(ModeName.MAIN_TOP), -0.20);
        Difference top = top(compared(1, 8, Optional.of(SetUpSpread.given(0.001, 0.05, 1))));
        assertThat(top.interval95().contains(-0.028 * 187)).isTrue();
        assertThat(top.verdict()).isEqualTo(Difference.Verdict.DIFFERS);
    }

    /** Taken for humidity's, the drift would make its slope −0.28 % a point, and known to 0.01. */
    @Test
    void whereHumidityRanWithTimeNeitherLearnsAndBothSayWhy() throws IOException {
        measure(8, Optional.of(0.0), EVER_DAMPER, -0.002);

        assertThat(learnt(ModeName.MAIN_TOP).basis()).isEqualTo(SensitivityBasis.ASSUMED_RAN_WITH_TIME);
        assertThat(learnt(ModeName.MAIN_TOP).percentPerPoint())
                .isEqualTo(assumed(ModeName.MAIN_TOP).percentPerPoint());
        String why = "humidity ran with time, and a drift would be learnt as humidity";
        assertThat(HistoryWords.humidity(history()).orElseThrow())
                .contains("measured on this instrument; in its 8 sittings " + why);
        SittingComparison comparison = compared(1, 8, Optional.empty());
        assertThat(comparison.comparability().checks())
                .filteredOn(c -> c.condition().equals("relative humidity"))
                .singleElement()
                .satisfies(c ->
                        assertThat(c.words()).contains("in its sittings with main air, main top and main back " + why));
        assertThat(top(comparison).correction().orElseThrow().parts())
                .singleElement()
                .satisfies(p -> assertThat(p.basis()).endsWith(why));
    }

    @Test
    void withTwoSittingsWhatIsAssumedStandsAndTheMainAirHasTheWoodsShareOfIt() throws IOException {
        measure(2, Optional.of(0.0));

        HumiditySensitivity top = learnt(ModeName.MAIN_TOP);
        HumiditySensitivity air = learnt(ModeName.MAIN_AIR);
        assertThat(top.basis()).isEqualTo(SensitivityBasis.ASSUMED_TOO_FEW_SITTINGS);
        assertThat(air.basis()).isEqualTo(SensitivityBasis.ASSUMED_TOO_FEW_SITTINGS);
        assertThat(air.percentPerPoint()).isCloseTo(0.4 * top.percentPerPoint(), within(1e-12));
        assertThat(air.standardUncertainty() / Math.abs(air.percentPerPoint()))
                .as("no better known than the wood's")
                .isGreaterThan(top.standardUncertainty() / Math.abs(top.percentPerPoint()));
    }

    private static HumiditySensitivity assumed(ModeName mode) {
        return HumiditySensitivities.ASSUMED.of(Optional.of(mode));
    }
}
