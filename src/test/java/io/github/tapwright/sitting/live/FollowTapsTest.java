package io.github.tapwright.sitting.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.tap.RejectionReason;
import io.github.tapwright.tap.SetAside;
import io.github.tapwright.tap.Strike;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class FollowTapsTest {

    private static final LiveFormat FORMAT = LiveFormat.STANDARD;

    private final FollowTaps follow = new FollowTaps(FORMAT, TapSettings.STANDARD, HoleState.OPEN);

    @Test
    void afterTheLastWindowItSaysWhatTheOrdinaryAnalysisSays() {
        Recording taps = Invented.taps();
        TapResult ordinary = TapAnalysis.analyse(
                List.of(TapTrack.read(taps.stream(), TapSettings.STANDARD)), TapSettings.STANDARD, HoleState.OPEN);

        Invented.feed(follow, taps, 0, 60);
        TapsSoFar live = follow.look().verdicts().fitted();

        assertThat(live.strikes()).hasSameSizeAs(ordinary.strikes());
        for (int i = 0; i < live.strikes().size(); i++) {
            Strike here = live.strikes().get(i);
            Strike there = ordinary.strikes().get(i);
            assertThat(here.onsetSeconds()).isCloseTo(there.onsetSeconds(), within(0.002));
            assertThat(here.used()).isEqualTo(there.used());
        }
        assertThat(live.resonances()).hasSameSizeAs(ordinary.resonances());
        for (int i = 0; i < live.resonances().size(); i++) {
            assertThat(live.resonances().get(i).resonance().frequencyHz().value())
                    .isCloseTo(
                            ordinary.resonances()
                                    .get(i)
                                    .resonance()
                                    .frequencyHz()
                                    .value(),
                            within(0.05));
        }
        assertThat(live.fittedStrikes()).isEqualTo(live.usedCount()).isEqualTo(6);
    }

    @Test
    void aLookIsDueOnceForEachWindowThatEndedAndForTheRoom() {
        Recording taps = Invented.taps();
        List<Double> due = new ArrayList<>();
        for (double t = 0; t < 10.5; t += 0.02) {
            Invented.feed(follow, taps, t, t + 0.02);
            if (follow.isDue()) {
                due.add(t + 0.02);
                follow.know(follow.look().verdicts());
            }
        }

        // Taps at 0.8 s and every 1.3 s, a window of 0.8 s, 40 ms to be sure of it; the room at 2 s.
        assertThat(due).hasSizeBetween(7, 9);
        assertThat(due.get(0)).isBetween(1.6, 2.1);
        assertThat(due).anySatisfy(t -> assertThat(t).isBetween(9.3, 9.55));
    }

    @Test
    void aStrikeSetAsideIsNotUsedAndComesBackWhenTakenBack() {
        Invented.feed(follow, Invented.taps(), 0, 60);
        TapsSoFar before = follow.look().verdicts().shown();
        Strike fourth = before.strikes().get(3);

        follow.setAside(List.of(SetAside.of(fourth)));
        assertThat(follow.isDue()).isTrue();
        TapsSoFar without = follow.look().verdicts().shown();
        follow.setAside(List.of());
        TapsSoFar again = follow.look().verdicts().shown();

        assertThat(without.usedCount()).isEqualTo(before.usedCount() - 1);
        assertThat(without.strikes().get(3).rejections())
                .extracting(r -> r.reason())
                .contains(RejectionReason.SET_ASIDE);
        assertThat(without.curve().orElseThrow().strikeCount()).isEqualTo(5);
        assertThat(again).isEqualTo(before);
    }

    @Test
    void inALongSittingOldStrikesKeepTheirVerdictAndALookStaysQuick() {
        SyntheticTaps made = Invented.manyTaps();
        Recording taps = made.recording();
        double longest = 0;
        for (double t = 0; t < 88; t += 2.6) {
            Invented.feed(follow, taps, t, t + 2.6);
            TapLook look = follow.look();
            long start = System.nanoTime();
            follow.know(look.verdicts());
            longest = t < 20 ? 0 : Math.max(longest, (System.nanoTime() - start) / 1e6);
        }
        List<Strike> strikes = follow.look().verdicts().shown().strikes();

        System.out.printf("a look at a minute of taps takes %.0f ms at most%n", longest);
        assertThat(strikes).hasSizeBetween(67, 68);
        for (int i = 0; i < strikes.size() - 1; i++) {
            assertThat(strikes.get(i).onsetSeconds())
                    .isCloseTo(made.strikes().get(i).onsetSeconds(), within(0.01));
            assertThat(strikes.get(i).used()).as("strike " + i).isEqualTo(i != 2);
        }
        assertThat(longest).isLessThan(1000);
    }
}
