package io.github.tapwright.comparison.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.InventedBody;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.StudentQuantile;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Levels of plucks over time: how sure one sitting's level is, and what plucking again explains. */
class PluckedHistoryTest {

    /** A study of five sittings: plucking again moves levels by half a decibel. */
    private static final BenchKnowledge BENCH = new BenchKnowledge(
            SetUpSpread.USUAL,
            new KnownScatter(0.5, 4, SetUpSpread.Basis.STUDIED),
            ShopWindow.USUAL,
            HistoryPropertyTest.BENCH.sensitivities());

    private final List<SittingOutline> sittings = new ArrayList<>();

    /** A month later than the last one; each string with its levels. */
    private void add(double[]... strings) {
        add(InventedBody.conditions(Stage.LATER, 45), strings);
    }

    private void add(Conditions conditions, double[]... strings) {
        List<Pluck> plucks = new ArrayList<>();
        for (int string = 1; string <= strings.length; string++) {
            for (double db : strings[string - 1]) {
                plucks.add(new Pluck(
                        0,
                        plucks.size(),
                        Optional.of(string),
                        Optional.of(db),
                        Optional.empty(),
                        Optional.empty(),
                        List.of()));
            }
        }
        int number = sittings.size() + 1;
        sittings.add(SittingOutline.of(InventedBody.of(
                number,
                "117",
                Instant.parse("2026-0" + number + "-01T12:00:00Z"),
                conditions,
                new Findings.OfPlucks(
                        new PluckRun(plucks, Tuning.CLASSICAL, Optional.of(new CalibrationId(1)), "invented-1")))));
    }

    private History history() {
        return History.of(new ShopNumber("117"), sittings, List.of(), BENCH, ZoneOffset.UTC);
    }

    private Series levels() {
        return history().series().get(0);
    }

    private Estimate bar(int sitting) {
        return levels().figures().get(sitting - 1).inCommonAir(Subject.PLUCKS, BENCH);
    }

    /** Two plucks 2 dB apart on each of two strings: s² = 2, u² = (2/2 + 2/2)/2² = 0.5. */
    @Test
    void aSittingIsAsUnsureAsItsPlucksAndPluckingAgainTogether() {
        add(new double[] {69, 71}, new double[] {73, 75});

        assertThat(bar(1).value()).isCloseTo(72, within(1e-12));
        assertThat(bar(1).standardUncertainty()).isCloseTo(Math.sqrt(0.5 * 0.5 + 0.5), within(1e-12));
    }

    @Test
    void fewerPlucksMakeALongerBarAndManyLeaveOnlyPluckingAgain() {
        double[] many = new double[200];
        for (int i = 0; i < many.length; i++) {
            many[i] = 70 + (i % 2 == 0 ? -1 : 1);
        }
        add(many);
        add(new double[] {69, 71, 69, 71, 69, 71});

        assertThat(bar(1).standardUncertainty()).isCloseTo(0.505, within(0.001));
        assertThat(bar(1).degreesOfFreedom()).as("no more than the study").isEqualTo(4);
        assertThat(bar(2).standardUncertainty()).isCloseTo(Math.hypot(0.5, Math.sqrt(1.2 / 6)), within(1e-12));
    }

    /** Two plucks 2 dB apart on one string, one on the other: s² = 2 for both, u² = (2/2 + 2)/2². */
    @Test
    void aStringPluckedOnceScattersAsTheOthersDo() {
        add(new double[] {69, 71}, new double[] {74});

        assertThat(bar(1).standardUncertainty()).isCloseTo(Math.sqrt(0.25 + 0.75), within(1e-12));
        assertThat(history().warnings()).isEmpty();
    }

    @Test
    void whereEveryStringWasPluckedOnceTheBarLacksThatAndTheHistorySaysSo() {
        add(new double[] {70}, new double[] {74});
        add(new double[] {69, 71}, new double[] {73, 75});

        assertThat(bar(1).standardUncertainty()).isCloseTo(0.5, within(1e-12));
        assertThat(history().warnings())
                .singleElement()
                .asString()
                .startsWith(
                        "sitting 1 with every string plucked once: how far single plucks scatter is not in the bars");
    }

    /** Both sittings stand in the list and the picture, with their bars. */
    @Test
    void thatASittingBeforeTheLatestEventHasAShortBarIsSaidToo() {
        add(new double[] {70}, new double[] {74});
        add(withOtherStrings(), new double[] {69, 71}, new double[] {73, 75});

        assertThat(history().since()).isPresent();
        assertThat(history().warnings())
                .singleElement()
                .asString()
                .startsWith("sitting 1 with every string plucked once");
    }

    @Test
    void thatASittingBeforeTheLatestEventIsNotCorrectedIsSaidToo() {
        add(conditions(Air.UNKNOWN, Optional.empty()), new double[] {69, 71});
        add(withOtherStrings(), new double[] {69, 71});

        assertThat(history().warnings()).singleElement().asString().startsWith("sitting 1 without relative humidity");
    }

    private static Conditions withOtherStrings() {
        return conditions(InventedBody.conditions(Stage.LATER, 45).air(), Optional.of(LocalDate.parse("2026-01-20")));
    }

    private static Conditions conditions(Air air, Optional<LocalDate> fittedOn) {
        Conditions c = InventedBody.conditions(Stage.LATER, 45);
        Strings strings = new Strings(c.strings().state(), c.strings().setName(), fittedOn);
        return new Conditions(
                c.stage(), air, strings, c.hole(), c.placing(), c.microphone(), c.addedMass(), c.operator(), c.note());
    }

    /** Levels rise by 2.4 dB in all; two such sittings of an unchanged guitar may lie t·√2·√(0.25 + 0.5) = 3.4 dB apart. */
    @Test
    void whatPluckingAgainExplainsHoldsTheScatterOfThePlucks() {
        for (int month = 0; month < 5; month++) {
            double louder = 0.6 * month;
            add(new double[] {69 + louder, 71 + louder}, new double[] {73 + louder, 75 + louder});
        }
        Drift drift = levels().drift().orElseThrow();

        assertThat(drift.setUpLimit()).isCloseTo(StudentQuantile.of(0.975, 4) * Math.sqrt(2 * 0.75), within(1e-9));
        assertThat(drift.exceedsSettingUp()).isFalse();
        assertThat(TrendWords.sentence(levels(), history()))
                .contains("no more than setting up again explains (3.4 dB, measured on this bench)");
    }
}
