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
 * A guitar that does not drift while months grow damper and warmer, on a real archive: its top follows humidity by −0.20 % a point, its back
 * by −0.25, its main air by −0.076 and by 0.6 of the speed of sound.
 */
class OwnSensitivityTest {

    private static final Instant START = Instant.parse("2025-01-10T12:00:00Z");
    private static final ShopNumber NUMBER = new ShopNumber("51");
    private static final double[] HUMIDITY = {41, 43, 46, 48, 52, 55, 58, 57};

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

    private void measure(int months, Optional<Double> celsius) throws IOException {
        for (int month = 0; month < months; month++) {
            double points = HUMIDITY[month] - 50;
            double warmth = celsius.map(t -> 0.6 * 0.0017 * (t - 20)).orElse(0.0) * month;
            InventedBody body = new InventedBody(
                    (1 - 0.00076 * points) * (1 + warmth) * setUp(),
                    (1 - 0.0020 * points) * setUp(),
                    (1 - 0.0025 * points) * setUp(),
                    1);
            double degrees = 20 + month * celsius.map(t -> t - 20).orElse(0.0);
            keep(body, month, new Air(celsius.map(t -> degrees), Optional.of(HUMIDITY[month])));
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

    /** 0.7 K a month beside 2.3 points: taken for humidity's, the warmth would lift the main air's slope to −0.045 %. */
    @Test
    void everyResonanceLearnsItsOwnAndTheMainAirIsFreedFromTheWarmth() throws IOException {
        measure(8, Optional.of(20.7));

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
        measure(8, Optional.of(20.0));

        History history = history();
        assertThat(history.series())
                .hasSize(9)
                .allSatisfy(s -> assertThat(s.drift().filter(Drift::drifts)).isEmpty())
                .allSatisfy(s -> assertThat(TrendWords.sentence(s, history)).contains("no drift to be told"));
        assertThat(HistoryWords.humidity(history).orElseThrow())
                .contains("main air −0.0", "main top −0.1", "main back −0.2")
                .endsWith("learnt from 8 sittings of this instrument");

        SittingComparison compared = new CompareSittings(archive.sittings(), studies())
                .compare(
                        new SittingId(1),
                        new SittingId(7),
                        new CompareSittings.Settings(Optional.empty(), ShopWindow.USUAL, Optional.empty()))
                .comparison();
        assertThat(compared.changes())
                .hasSize(3)
                .allSatisfy(c -> assertThat(c.frequencyHz().verdict()).isEqualTo(Difference.Verdict.CANNOT_TELL));
    }

    @Test
    void withTwoSittingsWhatIsAssumedStandsAndTheMainAirHasTheWoodsShareOfIt() throws IOException {
        measure(2, Optional.of(20.0));

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
