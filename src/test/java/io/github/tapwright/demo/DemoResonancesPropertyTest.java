package io.github.tapwright.demo;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.synthesis.TrueMode;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is found in the demo's taps beside the bodies they were made of. */
class DemoResonancesPropertyTest {

    private static final double NEAR = 0.02;

    private int asked;
    private int listed;
    private int found;
    private int frequenciesOff;
    private int qsOff;

    /** Weak high modes drown within milliseconds, so a few may be missing; what is listed must be there, and as far off as it says. */
    @Test
    void mostOfTheBodysResonancesAreListedWithinTheirUncertaintyAndNothingElse() throws Exception {
        for (DemoSitting sitting : DemoWorkshop.sittings()) {
            List<TrueMode> truth = new ArrayList<>();
            BodySound.of(sitting).modes().forEach(named -> truth.add(named.mode()));
            asked += truth.size();
            for (NamedResonance each : resonances(sitting)) {
                listed++;
                count(each, truth);
            }
        }
        System.out.printf(
                "%d of %d found (%d listed), more than 1.96 u off: %d frequencies, %d Q%n",
                found, asked, listed, frequenciesOff, qsOff);
        assertThat(listed).as("nothing that is not there").isEqualTo(found);
        assertThat(found).isGreaterThan(asked * 82 / 100);
        assertThat(frequenciesOff).isLessThan(found * 8 / 100);
        assertThat(qsOff).isLessThan(found * 8 / 100);
    }

    private static List<NamedResonance> resonances(DemoSitting sitting) throws Exception {
        try (OpenedAudio sound = AudioFile.open(Path.of("recordings-demo", sitting.file()))) {
            TapTrack track = TapTrack.read(sound, TapSettings.STANDARD);
            return TapAnalysis.analyse(List.of(track), TapSettings.STANDARD, HoleState.UNKNOWN)
                    .resonances();
        }
    }

    /** Each true mode can be found once. */
    private void count(NamedResonance each, List<TrueMode> notYetFound) {
        double hz = each.resonance().frequencyHz().value();
        notYetFound.stream()
                .filter(mode -> Math.abs(mode.frequencyHz() / hz - 1) < NEAR)
                .min(Comparator.comparingDouble(mode -> Math.abs(mode.frequencyHz() - hz)))
                .ifPresent(mode -> {
                    notYetFound.remove(mode);
                    found++;
                    frequenciesOff += isOff(each.resonance().frequencyHz(), mode.frequencyHz()) ? 1 : 0;
                    qsOff += isOff(each.resonance().q(), mode.q()) ? 1 : 0;
                });
    }

    private static boolean isOff(Estimate estimate, double truth) {
        return Math.abs(estimate.value() - truth) > 1.96 * estimate.standardUncertainty();
    }
}
