package io.github.tapwright.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.climate.HumidityHistory.Point;
import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.random.RandomDataGenerator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HumiditySensitivityTest {

    private static HumiditySensitivity of(HumidityScale scale, Point... points) {
        return HumiditySensitivity.of(new HumidityHistory(scale, List.of(points)));
    }

    private static double halfWidth95(HumiditySensitivity sensitivity) {
        return new Estimate(
                        sensitivity.percentPerPoint(),
                        sensitivity.standardUncertainty(),
                        sensitivity.degreesOfFreedom())
                .halfWidth95();
    }

    @Test
    void anExactHistoryIsLearntExactly() {
        HumiditySensitivity learnt = of(
                HumidityScale.RELATIVE_HUMIDITY,
                new Point(0, 35, 200 * Math.exp(0.002 * 10)),
                new Point(90, 60, 200 * Math.exp(-0.002 * 15)),
                new Point(180, 45, 200),
                new Point(270, 40, 200 * Math.exp(0.002 * 5)));

        assertThat(learnt.basis()).isEqualTo(SensitivityBasis.LEARNT);
        assertThat(learnt.percentPerPoint()).isCloseTo(-0.2, within(1e-12));
        assertThat(learnt.standardUncertainty()).isCloseTo(0, within(1e-10));
        assertThat(learnt.degreesOfFreedom()).isEqualTo(1);
        assertThat(learnt.sittings()).isEqualTo(4);
    }

    @Test
    void anInstrumentThatDoesNotFollowIsBelieved() {
        HumiditySensitivity learnt = of(
                HumidityScale.RELATIVE_HUMIDITY,
                new Point(30, 30, 180.1),
                new Point(0, 40, 179.9),
                new Point(0, 50, 180.1),
                new Point(30, 60, 179.9));

        // by hand, time at right angles to both: slope −0.004·100/180 % per point; residuals leave u =
        // √(0.032/500)·100/180 =
        // 0.00444 %; t with 1 degree of freedom 12.706
        assertThat(learnt.percentPerPoint()).isCloseTo(-0.00222, within(2e-5));
        assertThat(learnt.standardUncertainty()).isCloseTo(0.00444, within(1e-5));
        assertThat(halfWidth95(learnt)).isCloseTo(12.706 * learnt.standardUncertainty(), within(1e-5));
        assertThat(halfWidth95(learnt)).isGreaterThan(Math.abs(learnt.percentPerPoint()));
    }

    /** By −0.2 % a point and by −0.1 % a month: to the last digit, whatever the order of sittings. */
    @Test
    void aSteadyDriftIsSetApart() {
        double[] percent = {40, 47, 52, 45, 50};
        Point[] points = IntStream.range(0, 5)
                .mapToObj(m -> new Point(30 * m, percent[m], 200 * Math.exp(-0.002 * percent[m] - 0.001 * m)))
                .toArray(Point[]::new);

        HumiditySensitivity learnt = of(HumidityScale.RELATIVE_HUMIDITY, points);

        assertThat(learnt.percentPerPoint()).isCloseTo(-0.2, within(1e-9));
        assertThat(learnt.degreesOfFreedom()).isEqualTo(2);
    }

    /** 40 to 52 %, of which the line over time leaves less than 5 points. */
    @Test
    void humidityThatRanWithTimeTeachesNothing() {
        HumiditySensitivity ran = of(
                HumidityScale.RELATIVE_HUMIDITY,
                new Point(0, 40, 200),
                new Point(30, 45, 199),
                new Point(60, 47, 198.4),
                new Point(90, 52, 197.5));

        assertThat(ran.basis()).isEqualTo(SensitivityBasis.ASSUMED_RAN_WITH_TIME);
        assertThat(ran.percentPerPoint()).isEqualTo(-0.225);
        assertThat(ran.sittings()).isEqualTo(4);
    }

    @Test
    void tooFewSittingsAndTooLittleWeatherAreSaid() {
        HumiditySensitivity few = of(
                HumidityScale.RELATIVE_HUMIDITY, new Point(0, 30, 201), new Point(30, 60, 199), new Point(60, 35, 200));
        HumiditySensitivity still = of(
                HumidityScale.RELATIVE_HUMIDITY,
                new Point(0, 44, 201),
                new Point(30, 45, 199),
                new Point(60, 48, 200),
                new Point(90, 44, 200));
        HumiditySensitivity nothing = of(HumidityScale.WOOD_MOISTURE);

        assertThat(few.basis()).isEqualTo(SensitivityBasis.ASSUMED_TOO_FEW_SITTINGS);
        assertThat(still.basis()).isEqualTo(SensitivityBasis.ASSUMED_TOO_LITTLE_RANGE);
        assertThat(nothing.basis()).isEqualTo(SensitivityBasis.ASSUMED_TOO_FEW_SITTINGS);
        // between −0.2 and −0.25, nothing and twice as much at the ends of the interval
        assertThat(few.percentPerPoint()).isBetween(-0.25, -0.2);
        assertThat(halfWidth95(few)).isCloseTo(0.225, within(0.005));
        assertThat(nothing.percentPerPoint()).isBetween(-1.5, -1.25);
    }

    @Test
    void moistureAndHumidityAssumeTheSameWood() {
        // a point of humidity is 0.15 to 0.18 % of moisture near 45 %
        double perPoint = WoodMoisture.equilibriumPercent(new RoomClimate(20, 46))
                - WoodMoisture.equilibriumPercent(new RoomClimate(20, 45));
        double byMoisture = of(HumidityScale.WOOD_MOISTURE).percentPerPoint() * perPoint;

        assertThat(byMoisture).isBetween(-0.25, -0.2);
    }

    @Test
    void aCorrectionCarriesEveryUncertainty() {
        HumiditySensitivity assumed = of(HumidityScale.RELATIVE_HUMIDITY);

        CorrectedFrequency corrected = assumed.corrected(new MeasuredFrequency(200, 0.1), 60, 2, 45);

        assertThat(corrected.frequencyHz()).isCloseTo(200 * Math.exp(0.00225 * 15), within(1e-9));
        assertThat(corrected.correctionPercent()).isCloseTo(3.43, within(0.01));
        double relative = Math.sqrt(Math.pow(0.1 / 200, 2) + Math.pow(0.00225 * 2, 2) + Math.pow(15 * 0.00115, 2));
        assertThat(corrected.standardUncertaintyHz()).isCloseTo(corrected.frequencyHz() * relative, within(1e-9));
        assertThat(corrected.degreesOfFreedom()).isInfinite();
    }

    @Test
    void atTheReferenceNothingIsCorrectedAndTheSlopeDoesNotMatter() {
        HumiditySensitivity learnt = of(
                HumidityScale.RELATIVE_HUMIDITY,
                new Point(0, 30, 201),
                new Point(30, 45, 200.2),
                new Point(60, 60, 199),
                new Point(90, 40, 200));

        CorrectedFrequency here = learnt.corrected(new MeasuredFrequency(200, 0), 45, 0, 45);
        CorrectedFrequency there = learnt.corrected(new MeasuredFrequency(200, 0), 45, 0, 55);

        assertThat(here.frequencyHz()).isEqualTo(200);
        assertThat(here.standardUncertaintyHz()).isZero();
        assertThat(here.degreesOfFreedom()).isInfinite();
        assertThat(there.degreesOfFreedom()).isCloseTo(1, within(1e-9));
    }

    @Test
    void theIntervalOfALearntSlopeHoldsTheTruth() {
        RandomDataGenerator random = new RandomDataGenerator(20_260_103);
        int[] order = {3, 0, 5, 1, 4, 2};
        int held = 0;
        int studies = 2000;
        for (int i = 0; i < studies; i++) {
            Point[] points = IntStream.range(0, 6)
                    .mapToObj(j -> new Point(
                            30 * order[j], 32 + 5 * j, 200 * Math.exp(-0.0015 * (5 * j)) + random.nextNormal(0, 0.3)))
                    .toArray(Point[]::new);
            HumiditySensitivity learnt = of(HumidityScale.RELATIVE_HUMIDITY, points);
            held += Math.abs(learnt.percentPerPoint() + 0.15) <= halfWidth95(learnt) ? 1 : 0;
        }

        assertThat((double) held / studies).isBetween(0.935, 0.965);
    }

    @ParameterizedTest
    @CsvSource({"45, -1, 50", "NaN, 1, 50", "45, 1, Infinity", "45, NaN, 50"})
    void refusesDampnessThatIsNoNumber(double dampness, double uncertainty, double reference) {
        HumiditySensitivity assumed = of(HumidityScale.RELATIVE_HUMIDITY);
        MeasuredFrequency measured = new MeasuredFrequency(200, 0.1);

        assertThatThrownBy(() -> assumed.corrected(measured, dampness, uncertainty, reference))
                .hasMessageContaining("dampness");
    }

    @ParameterizedTest
    @CsvSource({"NaN, 40, 100", "0, NaN, 100", "0, 40, 0", "0, 40, Infinity"})
    void refusesSittingsWithoutNumbers(double days, double dampness, double frequency) {
        assertThatThrownBy(() -> new Point(days, dampness, frequency)).isInstanceOf(IllegalArgumentException.class);
    }
}
