package io.github.tapwright.desktop.conditions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ConditionsFormTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 14);

    private final ConditionsForm form = new ConditionsForm();

    /** Everything known, with a temperature no form shows in full. */
    private static Conditions known(String gain) {
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(21.537), Optional.of(46.25), Optional.of(24.0)),
                new Strings(
                        Optional.of(StringState.DAMPED), Optional.of("EJ45"), Optional.of(LocalDate.of(2026, 3, 1))),
                HoleState.COVERED,
                new Placing(Optional.of("foam"), Optional.of("knuckle"), Optional.of("bridge")),
                new Microphone(Optional.of("omni"), Optional.of(512.5), Optional.of(gain)),
                Optional.of(new AddedMass(10.5, Optional.of("bridge centre"))),
                Optional.of("Ann"),
                Optional.of("first line\nsecond line"));
    }

    private Conditions corrected(Units units) {
        return form.correct(known("30 dB"), HoleState.COVERED, units);
    }

    @ParameterizedTest
    @EnumSource(Units.class)
    void aFormNobodyTouchesCorrectsNothing(Units units) {
        form.fill(known("30 dB"), units);
        assertThat(corrected(units)).isEqualTo(known("30 dB"));
    }

    @Test
    void whatIsEmptiedIsUnknown() {
        form.fill(known("30 dB"), Units.CELSIUS);
        form.stage().set(Optional.empty());
        form.strings().state().set(Optional.empty());
        form.strings().setName().set("");
        form.strings().fittedOn().set("");
        for (TypedLine line : TypedLine.values()) {
            form.line(line).set(" ");
        }
        assertThat(form.correct(known("30 dB"), HoleState.UNKNOWN, Units.CELSIUS))
                .isEqualTo(Conditions.UNKNOWN);
    }

    @Test
    void anUntouchedTemperatureIsShownInTheOtherUnitAndATypedOneStays() {
        form.fill(known("30 dB"), Units.CELSIUS);
        form.fillTemperature(known("30 dB"), Units.CELSIUS, Units.FAHRENHEIT);
        assertThat(form.line(TypedLine.TEMPERATURE).get()).isEqualTo("70.8");
        assertThat(corrected(Units.FAHRENHEIT).air()).isEqualTo(known("30 dB").air());

        form.line(TypedLine.TEMPERATURE).set("68");
        form.fillTemperature(known("30 dB"), Units.FAHRENHEIT, Units.CELSIUS);
        assertThat(form.line(TypedLine.TEMPERATURE).get()).isEqualTo("68");
    }

    @Test
    void aSlipInTheNameOfTheSetDoesNotTakeItsDay() {
        form.fill(known("30 dB"), Units.CELSIUS);
        form.strings().setName().set("EJ46");
        assertThat(corrected(Units.CELSIUS).strings().fittedOn()).contains(LocalDate.of(2026, 3, 1));
    }

    @Test
    void aCorrectedLastSittingIsFollowedWhereNothingElseWasTyped() {
        form.remember(known("30 dB"));
        form.line(TypedLine.HUMIDITY).set("48");
        form.line(TypedLine.SUPPORT).set("hung");
        form.follow(known("30 dB"), known("40 dB"));
        assertThat(form.line(TypedLine.GAIN).get()).isEqualTo("40 dB");
        assertThat(form.line(TypedLine.SUPPORT).get()).isEqualTo("hung");
        assertThat(form.line(TypedLine.HUMIDITY).get()).isEqualTo("48");
        assertThat(form.line(TypedLine.TEMPERATURE).get()).isEmpty();
    }

    @Test
    void aMassOfNoGramsIsNoneAndAPlaceAloneIsRefused() {
        form.line(TypedLine.MASS).set("0");
        assertThat(form.read(HoleState.OPEN, Units.CELSIUS, TODAY).addedMass()).isEmpty();
        form.line(TypedLine.MASS_PLACE).set("bridge");
        assertThatThrownBy(() -> form.read(HoleState.OPEN, Units.CELSIUS, TODAY))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("grams are missing");
    }

    /** The same words as where a sitting is added or put right. */
    @Test
    void noStringsAreFittedAfterTheSitting() {
        form.strings().fittedOn().set("2026-03-14");
        assertThat(form.read(HoleState.OPEN, Units.CELSIUS, TODAY).strings().fittedOn())
                .contains(TODAY);
        form.strings().fittedOn().set("2026-03-15");
        assertThatThrownBy(() -> form.read(HoleState.OPEN, Units.CELSIUS, TODAY))
                .isInstanceOf(RefusedEntryException.class)
                .hasMessageContaining("strings fitted on 2026-03-15 cannot have been struck on 2026-03-14")
                .hasMessageContaining("leave the day of the strings out");
    }
}
