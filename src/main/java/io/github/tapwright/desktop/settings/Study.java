package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.comparison.played.PlayingStudy;
import io.github.tapwright.comparison.played.PlayingStudyWords;
import io.github.tapwright.sitting.SittingOutline;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;

/** What sittings of any kind say of how far doing it again moves figures. */
sealed interface Study {

    /** What it rests on. */
    List<SittingOutline> sittings();

    /** Whether it says anything that could be kept. */
    boolean tells();

    /** What it says, and what it cannot. */
    List<String> says();

    /** Of taps, set up again. */
    record OfTaps(BenchStudy of) implements Study {

        @Override
        public List<SittingOutline> sittings() {
            return of.sittings();
        }

        @Override
        public boolean tells() {
            return of.spread().isPresent();
        }

        @Override
        public List<String> says() {
            return of.spread()
                    .map(this::says)
                    .orElse(List.of("No resonance was found in every set-up, so there is nothing to keep."));
        }

        private List<String> says(SetUpSpread spread) {
            List<String> says = new ArrayList<>();
            says.add("Setting up again moves figures by " + spread.words() + " (one standard deviation, "
                    + Figures.plain(spread.frequency().degreesOfFreedom()) + " degrees of freedom).");
            if (!of.studiesLevels()) {
                says.add(BenchStudy.LEVEL_ASSUMED);
            }
            return says;
        }
    }

    /** Of notes or plucks, played again. */
    record OfPlaying(PlayingStudy of) implements Study {

        @Override
        public List<SittingOutline> sittings() {
            return of.sittings();
        }

        @Override
        public boolean tells() {
            return of.spread().isPresent();
        }

        @Override
        public List<String> says() {
            List<String> says = new ArrayList<>();
            says.add(tells() ? PlayingStudyWords.moves(of) : "Nothing could be studied, so there is nothing to keep.");
            says.addAll(PlayingStudyWords.cautions(of));
            says.addAll(PlayingStudyWords.notStudied(of));
            return says;
        }
    }
}
