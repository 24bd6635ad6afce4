package io.github.tapwright.desktop.settings;

import io.github.tapwright.comparison.BenchStudy;
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

    /** What it says. */
    String moves();

    /** What it cannot say, and what speaks against it. */
    List<String> cautions();

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
        public String moves() {
            return of.spread()
                    .map(spread -> "Setting up again moves figures by " + spread.words()
                            + " (one standard deviation, "
                            + Figures.plain(spread.frequency().degreesOfFreedom()) + " degrees of freedom).")
                    .orElse("No resonance was found in every set-up, so there is nothing to keep.");
        }

        @Override
        public List<String> cautions() {
            return tells() && !of.studiesLevels() ? List.of(BenchStudy.LEVEL_ASSUMED) : List.of();
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
        public String moves() {
            return tells() ? PlayingStudyWords.moves(of) : "Nothing could be studied, so there is nothing to keep.";
        }

        @Override
        public List<String> cautions() {
            List<String> cautions = new ArrayList<>(PlayingStudyWords.cautions(of));
            cautions.addAll(PlayingStudyWords.notStudied(of));
            return cautions;
        }
    }
}
