package io.github.tapwright.comparison.trend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.InventedResults;
import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.InventedBody;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.Quantity;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingOutline;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HistoryTest {

    private static final BenchKnowledge BENCH = HistoryPropertyTest.BENCH;

    private final List<Sitting> sittings = new ArrayList<>();

    private void add(String day, double top, Conditions conditions) {
        add(day, 12, top, conditions);
    }

    private void add(String day, int hour, double top, Conditions conditions) {
        Instant at = Instant.parse(day + "T" + hour + ":00:00Z");
        sittings.add(new InventedBody(1, top, 1, 1).sitting(sittings.size() + 1, "117", at, conditions));
    }

    private static Conditions strings(double percent, StringState state, HoleState hole, String fitted) {
        Conditions c = InventedBody.conditions(Stage.LATER, percent);
        return new Conditions(
                c.stage(),
                c.air(),
                new Strings(Optional.of(state), Optional.empty(), Optional.of(LocalDate.parse(fitted))),
                hole,
                c.placing(),
                c.microphone(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static Conditions strings(double percent, String fitted) {
        return strings(percent, StringState.DAMPED, HoleState.OPEN, fitted);
    }

    private History history() {
        return History.of(
                new ShopNumber("117"),
                sittings.stream().map(SittingOutline::of).toList(),
                List.of(),
                BENCH,
                ZoneOffset.UTC);
    }

    private static Series top(History history) {
        return history.series().stream()
                .filter(s -> s.subject().equals(new Subject(Optional.of(ModeName.MAIN_TOP), Quantity.FREQUENCY)))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aDriftIsSoughtSinceTheStringsWereChanged() {
        add("2026-01-01", 1.05, InventedBody.conditions(Stage.FINISHED, 45));
        add("2026-02-01", 1.04, strings(45, "2026-01-10"));
        add("2026-03-01", 1.03, strings(45, "2026-01-10"));
        for (int month = 4; month <= 9; month++) {
            add("2026-0" + month + "-01", 1 + 0.01 * month, strings(45, "2026-03-20"));
        }
        History history = history();

        assertThat(history.events())
                .extracting(Event::toString)
                .containsExactly("2026-02-01 (later)", "2026-03-20 (strings fitted)");
        assertThat(top(history).inStretch()).isEqualTo(6);
        Drift drift = top(history).drift().orElseThrow();
        // six in a row upwards: 2/720, [Kendall1975] counted anew
        assertThat(drift.corrected().test().probability()).isEqualTo(2.0 / 720);
        assertThat(TrendWords.sentence(top(history), history))
                .startsWith("main top, frequency: rises by 1.8")
                .contains("more than setting up again explains", "as given");
        assertThat(TrendWords.stretch(history)).isEqualTo("since 2026-03-20 (strings fitted)");
    }

    /** Main air stays 6 dB below main top; what rises past both takes over as the sitting's 0 dB, and both then seem to fall. */
    @Test
    void anotherStrongestResonanceIsNoDrift() {
        for (int month = 1; month <= 8; month++) {
            double topDb = Math.min(0, 4 - month);
            sittings.add(InventedBody.of(
                    month,
                    "117",
                    Instant.parse("2026-0" + month + "-01T12:00:00Z"),
                    strings(45, "2025-12-01"),
                    new Findings.OfTaps(InventedResults.levels(topDb - 6, topDb, Math.min(0, month - 4)))));
        }
        History history = history();

        assertThat(history.series())
                .filteredOn(s -> s.drift().orElseThrow().drifts())
                .extracting(s -> s.subject().words())
                .isEmpty();
        assertThat(history.questions()).as("frequency and Q of two").isEqualTo(4);
    }

    @Test
    void fourSittingsCannotTellWhateverTheyShow() {
        for (int month = 1; month <= 4; month++) {
            add("2026-0" + month + "-01", 1 + 0.1 * month, strings(45, "2025-12-01"));
        }
        History history = history();

        assertThat(history.questions()).isZero();
        assertThat(TrendWords.sentence(top(history), history)).contains("cannot tell", "it takes 5 at least");
    }

    @Test
    void sittingsOfOneDayAreOnePointInTime() {
        for (int month = 1; month <= 5; month++) {
            for (int hour = 10; hour <= 14; hour += 2) {
                add("2026-0" + month + "-01", hour, 1 + 0.01 * month + 0.001 * (hour - 12), strings(45, "2025-12-01"));
            }
        }
        Series top = top(history());

        assertThat(top.inStretch()).isEqualTo(15);
        assertThat(top.daysInStretch()).isEqualTo(5);
        Drift drift = top.drift().orElseThrow();
        // five in a row upwards: 2/120, [Kendall1975] counted anew
        assertThat(drift.corrected().test().probability()).isEqualTo(2.0 / 120);
        assertThat(drift.corrected().slope().interval().orElseThrow().lower()).isBetween(1.7, 2.1);
        assertThat(drift.corrected().slope().interval().orElseThrow().upper()).isBetween(1.7, 2.1);
    }

    @Test
    void aStudyOnOneDayIsNoDriftHoweverManySetUpsItHas() {
        for (int hour = 10; hour <= 16; hour++) {
            add("2026-01-01", hour, 1 + 0.001 * hour, strings(45, "2025-12-01"));
        }
        History history = history();

        assertThat(history.questions()).isZero();
        assertThat(TrendWords.sentence(top(history), history))
                .contains("cannot tell", ": 7, all on one day: a drift needs sittings on several days, 5 at least");
        add("2026-02-01", 1, strings(45, "2025-12-01"));
        assertThat(TrendWords.sentence(top(history()), history())).contains(": 8, on 2 days; sittings of one day");
    }

    @Test
    void stringsWrittenDownAsFittedLaterAreNotFreshStrings() {
        add("2026-01-02", 1, strings(45, "2026-05-01"));

        assertThat(history().warnings()).noneMatch(w -> w.contains("after strings were fitted"));
    }

    @Test
    void damperAirIsTakenOutSideBySide() {
        add("2026-01-01", 1, strings(45, "2025-12-01"));
        add("2026-02-01", Math.exp(-0.00225 * 4), strings(49, "2025-12-01"));
        Series top = top(history());

        assertThat(top.figures().get(0).measured())
                .isGreaterThan(top.figures().get(1).measured() + 1);
        assertThat(top.figures().get(0).corrected())
                .isCloseTo(top.figures().get(1).corrected(), within(1e-9));
    }

    @Test
    void unsettledWoodFreshStringsAndWeatherThatRanWithTimeAreNamed() {
        add("2026-01-02", 1, strings(36, "2026-01-01"));
        add("2026-02-01", 1, strings(44, "2026-01-01"));
        add("2026-03-01", 1, strings(45, "2026-01-01"));
        add("2026-04-01", 1, strings(47, "2026-01-01"));
        add("2026-05-01", 1, strings(49, "2026-01-01"));

        assertThat(history().warnings())
                .anyMatch(w -> w.startsWith("humidity went from 36 to 44 % between sittings 1 and 2"))
                .anyMatch(w -> w.startsWith("sitting 1 outside the 40 to 50 %"))
                .anyMatch(w -> w.startsWith("sitting 1 less than 3 days after strings were fitted"))
                .anyMatch(w -> w.startsWith("humidity ran one way with time"));
        assertThat(history().series())
                .allMatch(s -> s.drift().flatMap(Drift::regression).isEmpty());
    }

    @Test
    void coveredHoleAndFreeStringsAreLeftOut() {
        add("2026-01-01", 1, strings(45, StringState.DAMPED, HoleState.COVERED, "2025-12-01"));
        add("2026-02-01", 1, strings(45, StringState.FREE, HoleState.OPEN, "2025-12-01"));

        assertThat(history().series()).isEmpty();
        assertThat(history().leftOut()).extracting(LeftOut::reason).hasSize(2);
    }
}
