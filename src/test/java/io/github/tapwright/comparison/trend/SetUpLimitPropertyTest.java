package io.github.tapwright.comparison.trend;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.HumiditySensitivities;
import io.github.tapwright.comparison.InventedBody;
import io.github.tapwright.comparison.KnownScatter;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.SetUpSpread.Basis;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Pluck;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.synthesis.Chance;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Five sittings of few plucks of an unchanged guitar: what two more of them may differ by at most, 19 times of 20. */
class SetUpLimitPropertyTest {

    private static final int HISTORIES = 1000;

    private final Random chance = Chance.seeded(5);

    /** Plucks of one string that scatter by so much, played again by 1 dB. */
    private double[] levels(int plucks, double scatterDb) {
        double again = 70 + chance.nextGaussian();
        double[] levels = new double[plucks];
        for (int i = 0; i < plucks; i++) {
            levels[i] = again + scatterDb * chance.nextGaussian();
        }
        return levels;
    }

    private static SittingOutline sitting(int number, double... levels) {
        List<Pluck> plucks = new ArrayList<>();
        for (double db : levels) {
            plucks.add(new Pluck(
                    0, plucks.size(), Optional.of(1), Optional.of(db), Optional.empty(), Optional.empty(), List.of()));
        }
        return SittingOutline.of(InventedBody.of(
                number,
                "117",
                Instant.parse("2026-0" + number + "-01T12:00:00Z"),
                InventedBody.conditions(Stage.LATER, 45),
                new Findings.OfPlucks(
                        new PluckRun(plucks, Tuning.CLASSICAL, Optional.of(new CalibrationId(1)), "invented-1"))));
    }

    private double limit(int plucks, double scatterDb, KnownScatter again) {
        List<SittingOutline> sittings = new ArrayList<>();
        for (int month = 1; month <= 5; month++) {
            sittings.add(sitting(month, levels(plucks, scatterDb)));
        }
        BenchKnowledge bench =
                new BenchKnowledge(SetUpSpread.USUAL, again, ShopWindow.USUAL, HumiditySensitivities.ASSUMED);
        return History.of(new ShopNumber("117"), sittings, List.of(), bench, ZoneOffset.UTC)
                .series()
                .get(0)
                .drift()
                .orElseThrow()
                .setUpLimit();
    }

    private double held(String what, int plucks, double scatterDb, KnownScatter again) {
        int held = 0;
        for (int i = 0; i < HISTORIES; i++) {
            double limit = limit(plucks, scatterDb, again);
            double before = mean(plucks, scatterDb);
            double after = mean(plucks, scatterDb);
            held += Math.abs(after - before) <= limit ? 1 : 0;
        }
        System.out.printf(
                "%d plucks that scatter by %.0f dB, %s: limit holds %.1f %% of %d%n",
                plucks, scatterDb, what, 100.0 * held / HISTORIES, HISTORIES);
        return (double) held / HISTORIES;
    }

    private double mean(int plucks, double scatterDb) {
        double sum = 0;
        for (double db : levels(plucks, scatterDb)) {
            sum += db;
        }
        return sum / plucks;
    }

    @Test
    void theLimitHoldsWhatTwoSittingsOfAnUnchangedGuitarDifferBy() {
        KnownScatter assumed = SetUpSpread.USUAL.level();
        KnownScatter given = SetUpSpread.given(0.003, 0.05, 1).level();
        assertThat(held("playing again assumed", 2, 4, assumed)).isGreaterThan(0.935);
        assertThat(held("playing again given", 2, 4, given)).isGreaterThan(0.935);
        assertThat(held("playing again given", 2, 1, given)).isBetween(0.93, 0.98);
        assertThat(held("playing again studied", 2, 4, new KnownScatter(1, 8, Basis.STUDIED)))
                .isGreaterThan(0.935);
    }
}
