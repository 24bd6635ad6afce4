package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ConditionsTest {

    @Test
    void namesEverythingNobodyWroteDown() {
        assertThat(Conditions.UNKNOWN.unknown())
                .containsExactly(
                        "stage",
                        "temperature",
                        "relative humidity",
                        "hours in this air",
                        "strings",
                        "string set",
                        "strings fitted on",
                        "soundhole",
                        "support",
                        "strike tool",
                        "strike place",
                        "microphone",
                        "distance",
                        "gain",
                        "operator");
    }

    @Test
    void missesNoStringSetWhereThereAreNoStrings() {
        Strings off = new Strings(Optional.of(StringState.OFF), Optional.empty(), Optional.empty());
        Conditions conditions = new Conditions(
                Optional.empty(),
                new Air(Optional.of(21.0), Optional.empty()),
                off,
                HoleState.COVERED,
                Placing.UNKNOWN,
                Microphone.UNKNOWN,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());

        assertThat(conditions.unknown())
                .contains("relative humidity")
                .doesNotContain("strings", "string set", "strings fitted on", "soundhole", "temperature");
    }

    @Test
    void refusesAirNoMakerWorksIn() {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Air(Optional.of(210.0), Optional.empty()))
                .withMessageContaining("temperature in °C must lie between -10 and 50, was 210");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Air(Optional.empty(), Optional.of(0.45)))
                .withMessageContaining("relative humidity in % must lie between 1 and 100, was 0.45");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Microphone(Optional.empty(), Optional.of(0.5), Optional.empty()))
                .withMessageContaining("distance in mm");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Air(Optional.empty(), Optional.empty(), Optional.of(-1.0)))
                .withMessageContaining("hours in this air must lie between 0 and 100000, was -1");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new AddedMass(0, Optional.empty()))
                .withMessageContaining("added mass in g must lie between 0.1 and 1000, was 0");
    }

    @Test
    void showsADayWithoutATimeNobodyKnows() {
        ZoneId zone = ZoneOffset.ofHours(2);
        Moment day = Moment.on(LocalDate.of(2026, 3, 14), zone);
        Moment minute = Moment.at(Instant.parse("2026-03-14T09:26:53Z"));

        assertThat(day.text(zone)).isEqualTo("2026-03-14");
        assertThat(minute.text(zone)).isEqualTo("2026-03-14 11:26");
    }

    @Test
    void numbersSittingsFromOne() {
        assertThat(new SittingId(1)).hasToString("1");
        assertThatExceptionOfType(IllegalArgumentException.class).isThrownBy(() -> new SittingId(0));
    }
}
