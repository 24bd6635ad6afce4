package io.github.tapwright.instrument;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class InstrumentTest {

    @Test
    void needsNumberAndKindOnlyAndLeavesTheRestUnknown() {
        Instrument instrument = Instrument.of(new ShopNumber(" T-17 "), InstrumentKind.FLAMENCO);

        assertThat(instrument.shopNumber().text()).isEqualTo("T-17");
        assertThat(instrument.body()).isEqualTo(Body.UNKNOWN);
        assertThat(instrument.construction().kind()).isEmpty();
        assertThat(instrument.construction().core().known()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "a\nb", "12345678901234567890123456789012345678901"})
    void refusesShopNumbersThatFitNoLabel(String text) {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new ShopNumber(text))
                .withMessageContaining("shop number");
    }

    @ParameterizedTest
    @ValueSource(doubles = {299.9, 900.1, 0, -650, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesScaleLengthsNoGuitarHasAndSaysWhatToDo(double scaleLengthMm) {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() ->
                        new Body(Optional.of(scaleLengthMm), Optional.empty(), Optional.empty(), Optional.empty()))
                .withMessageContaining("scale length in mm must lie between 300 and 900")
                .withMessageContaining("leave it out if it is unknown");
    }

    @Test
    void takesTheLimitsThemselves() {
        Body body = new Body(Optional.of(300.0), Optional.of(18), Optional.of(150.0), Optional.of("  "));

        assertThat(body.stringCount()).contains(18);
        assertThat(body.notes()).isEmpty();
    }

    @Test
    void refusesImpossibleStringCountsHolesAndLayers() {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Body(Optional.empty(), Optional.of(3), Optional.empty(), Optional.empty()))
                .withMessageContaining("number of strings");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Body(Optional.empty(), Optional.empty(), Optional.of(8.5), Optional.empty()))
                .withMessageContaining("soundhole");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Layer(Optional.empty(), Optional.of(25.0)))
                .withMessageContaining("thickness");
    }

    @Test
    void refusesASolidTopWithACore() {
        Layer core = new Layer(Optional.of("paper honeycomb"), Optional.empty());

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Construction(
                        Optional.of(ConstructionKind.SOLID), Layer.UNKNOWN, core, Layer.UNKNOWN, Optional.empty()))
                .withMessageContaining("choose a sandwich");
    }

    @Test
    void refusesASetOfStringsThatAreOff() {
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> new Strings(
                        Optional.of(StringState.OFF), Optional.empty(), Optional.of(LocalDate.of(2026, 3, 1))))
                .withMessageContaining("strings that are off");
    }

    @Test
    void keepsNotesOfManyLinesButRefusesEndlessOnes() {
        Optional<String> two = Optional.of("first line\nsecond line");
        assertThat(Entry.note("the notes", two)).isEqualTo(two);

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> Entry.note("the notes", Optional.of("x".repeat(Entry.LONGEST_NOTE + 1))))
                .withMessageContaining("shorten it");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> Entry.line("the bracing", two))
                .withMessageContaining("one line");
    }

    @ParameterizedTest
    @EnumSource(InstrumentKind.class)
    void findsEveryKindByKeyAndByWords(InstrumentKind kind) {
        assertThat(InstrumentKind.find(kind.key())).contains(kind);
        assertThat(InstrumentKind.find(kind.words().toUpperCase(Locale.ROOT))).contains(kind);
    }

    @Test
    void findsStagesConstructionsAndStringStatesByKeyAndByWords() {
        assertThat(Stage.find("In the White")).contains(Stage.IN_THE_WHITE);
        assertThat(ConstructionKind.find("honeycomb-core sandwich")).contains(ConstructionKind.HONEYCOMB_SANDWICH);
        assertThat(StringState.find("damped")).contains(StringState.DAMPED);
        assertThat(Stage.find("half done")).isEmpty();
    }
}
