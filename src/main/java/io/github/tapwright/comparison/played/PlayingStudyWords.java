package io.github.tapwright.comparison.played;

import io.github.tapwright.statistics.Figures;
import io.github.tapwright.statistics.Interval;
import java.util.List;

/** A study of playing again as sentences and figures for people. */
public final class PlayingStudyWords {

    private PlayingStudyWords() {}

    /**
     * What the study gives for comparisons.
     *
     * @param study of which something could be studied
     * @return one sentence
     */
    public static String moves(PlayingStudy study) {
        return "Playing again moves, as one standard deviation, " + study.words() + ".";
    }

    /**
     * Where what was played explains most of the scatter, so that little is known of playing again.
     *
     * @param study a study
     * @return a sentence for each quantity of which that is so
     */
    public static List<String> cautions(PlayingStudy study) {
        return study.scatters().stream()
                .filter(PlayedScatter::isMostlyWithin)
                .map(s -> "The " + study.procedure() + " of one sitting explain most of how far the "
                        + s.quantity().words() + " scatters from sitting to sitting; to be cautious half of s R² counts"
                        + " as playing again.")
                .toList();
    }

    /**
     * What could not be studied.
     *
     * @param study a study
     * @return a sentence for each quantity of which that is so, with the reason
     */
    public static List<String> notStudied(PlayingStudy study) {
        return study.notStudied().stream()
                .map(n -> "Not studied, " + n.quantity().words() + ": " + n.reason()
                        + (n.reason().endsWith("…") ? "" : "."))
                .toList();
    }

    /**
     * The mean over sittings and strings.
     *
     * @param scatter of one quantity
     * @return such as "2.31 s"
     */
    public static String mean(PlayedScatter scatter) {
        return PlayedWords.figure(scatter.quantity(), scatter.mean()) + " "
                + scatter.quantity().figureUnit();
    }

    /**
     * A standard deviation in the unit of differences.
     *
     * @param quantity what scatters
     * @param onScale on the scale of comparison
     * @return to a hundredth of the unit
     */
    public static String deviation(PlayedQuantity quantity, double onScale) {
        return Figures.text(PlayedWords.spread(quantity, onScale), 2);
    }

    /**
     * Where the true s_R lies, 19 times of 20.
     *
     * @param scatter of one quantity
     * @return such as "0.52 to 2.31", in the unit of differences
     */
    public static String reproducibility95(PlayedScatter scatter) {
        Interval interval = scatter.reproducibility95();
        return deviation(scatter.quantity(), interval.lower()) + " to "
                + deviation(scatter.quantity(), interval.upper());
    }
}
