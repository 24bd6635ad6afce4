package io.github.tapwright.desktop.conditions;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class StringsFormTest {

    private static final Strings LAST =
            new Strings(Optional.of(StringState.DAMPED), Optional.of("EJ45"), Optional.of(LocalDate.of(2026, 3, 1)));

    private final StringsForm form = new StringsForm();

    private void state(StringState state) {
        form.state.set(Optional.of(state));
    }

    @Test
    void setAndDayOfTheLastSittingAreThereAgain() {
        form.remember(LAST);
        assertThat(form.fittedOn.get()).isEqualTo("2026-03-01");
        assertThat(form.read()).isEqualTo(LAST);
    }

    @Test
    void anotherSetAsksForItsOwnDayAndTheFormerBringsItsDayBack() {
        form.remember(LAST);
        form.setName.set("EJ46");
        assertThat(form.fittedOn.get()).isEmpty();
        form.setName.set("EJ45");
        assertThat(form.fittedOn.get()).isEqualTo("2026-03-01");
    }

    @Test
    void aDayTypedBeforeItsSetStays() {
        form.remember(LAST);
        form.fittedOn.set("2026-03-12");
        form.setName.set("EJ46");
        assertThat(form.fittedOn.get()).isEqualTo("2026-03-12");
    }

    @Test
    void afterKeepingTheNewSetIsTheKnownOne() {
        form.remember(LAST);
        form.setName.set("EJ46");
        form.fittedOn.set("2026-03-12");
        form.settle();
        form.setName.set("EJ45");
        assertThat(form.fittedOn.get())
                .as("the old set's name again, which may well be a new set")
                .isEmpty();
    }

    @Test
    void stringsThatAreOffHaveNeitherSetNorDay() {
        form.remember(LAST);
        state(StringState.OFF);
        assertThat(form.areOff()).isTrue();
        assertThat(form.setName.get()).isEmpty();
        assertThat(form.fittedOn.get()).isEmpty();
        assertThat(form.read())
                .isEqualTo(new Strings(Optional.of(StringState.OFF), Optional.empty(), Optional.empty()));
    }

    @Test
    void passingOffOnTheWayLosesNothingOfWhatWasTyped() {
        form.setName.set("EJ46");
        form.fittedOn.set("2026-03-12");
        state(StringState.OFF);
        state(StringState.DAMPED);
        assertThat(form.read())
                .isEqualTo(new Strings(
                        Optional.of(StringState.DAMPED), Optional.of("EJ46"), Optional.of(LocalDate.of(2026, 3, 12))));
    }

    @Test
    void stringsFittedAfterASittingWithoutThemAreAskedForAnew() {
        form.remember(LAST);
        state(StringState.OFF);
        form.settle();
        state(StringState.DAMPED);
        assertThat(form.setName.get()).isEmpty();
        assertThat(form.fittedOn.get()).isEmpty();
    }

    @Test
    void aDayThatIsNoneIsRefusedWithOneThatIs() {
        for (String typed : new String[] {"last week", "14.3.2026", "2026-02-30", "2026-3-1"}) {
            form.fittedOn.set(typed);
            assertThatThrownBy(() -> form.read())
                    .isInstanceOf(RefusedEntryException.class)
                    .hasMessageContaining(typed)
                    .hasMessageContaining("2026-03-14");
        }
    }
}
