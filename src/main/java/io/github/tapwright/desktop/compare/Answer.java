package io.github.tapwright.desktop.compare;

import io.github.tapwright.chart.Picture;
import io.github.tapwright.chart.Trace;
import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.Difference.Verdict;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.TwoSittings;
import io.github.tapwright.comparison.played.ComparePlayed;
import io.github.tapwright.comparison.played.FastNote;
import io.github.tapwright.comparison.played.PlayedChange;
import io.github.tapwright.comparison.played.PlayedWords;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.desktop.part.SittingTitle;
import io.github.tapwright.report.picture.CurvePicture;
import io.github.tapwright.report.picture.PlayedMaps;
import io.github.tapwright.sitting.Sitting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** How two sittings compare, whatever was measured in them. */
public sealed interface Answer {

    /**
     * What was compared.
     *
     * @return both sittings, and whether they may be compared
     */
    TwoSittings compared();

    /**
     * Every figure found in both.
     *
     * @return rows of a table
     */
    List<ComparedFigure> figures();

    /**
     * The same in sentences.
     *
     * @return the surest first
     */
    List<Sentence> sentences();

    /**
     * Response curves to move about in.
     *
     * @param title names a sitting
     * @return none where nothing was tapped
     */
    default List<Trace> traces(SittingTitle title) {
        return List.of();
    }

    /**
     * The answer as a picture.
     *
     * @param title names a sitting
     * @return empty if there is nothing to draw
     */
    Optional<? extends Picture> picture(SittingTitle title);

    /**
     * Of taps: resonances.
     *
     * @param compared what was found
     * @param passedOver later sittings set aside, where the latest of an instrument was asked for
     */
    record OfTaps(CompareSittings.Compared compared, List<LeftOut> passedOver) implements Answer {

        @Override
        public List<ComparedFigure> figures() {
            return new ComparisonWords(compared).figures();
        }

        @Override
        public List<Sentence> sentences() {
            return Stream.concat(
                            passedOver.stream()
                                    .map(l -> Sentence.warning("Sitting " + l.sitting() + " of instrument "
                                            + l.instrument() + " left out, " + l.reason())),
                            new ComparisonWords(compared).sentences().stream())
                    .toList();
        }

        @Override
        public List<Trace> traces(SittingTitle title) {
            return Stream.of(trace("A: ", compared.first(), title), trace("B: ", compared.second(), title))
                    .flatMap(Optional::stream)
                    .toList();
        }

        private static Optional<Trace> trace(String side, Sitting of, SittingTitle title) {
            return of.latest()
                    .taps()
                    .flatMap(t -> t.curve())
                    .map(curve -> new Trace(side + title.of(of), curve, CurvePicture.marks(of)));
        }

        @Override
        public Optional<? extends Picture> picture(SittingTitle title) {
            CurvePicture picture = new CurvePicture("Response to taps, two sittings");
            compared.comparability()
                    .despite()
                    .ifPresent(why -> picture.subtitle("compared although the conditions forbid it: " + why));
            picture.add("A: " + title.of(compared.first()), compared.first());
            picture.add("B: " + title.of(compared.second()), compared.second());
            return picture.picture();
        }
    }

    /**
     * Of notes or plucks.
     *
     * @param compared what was found
     */
    record OfPlayed(ComparePlayed.Compared compared) implements Answer {

        @Override
        public List<ComparedFigure> figures() {
            return compared.comparison().changes().stream()
                    .filter(c -> !c.strings().isEmpty())
                    .flatMap(c -> Stream.concat(
                            Stream.of(c).filter(PlayedChange::isJudged).map(ComparedFigure::of),
                            c.strings().stream().map(s -> ComparedFigure.of(c, s))))
                    .toList();
        }

        @Override
        public List<Sentence> sentences() {
            List<Sentence> lines = new ArrayList<>();
            said(Verdict.DIFFERS).map(Sentence::certain).forEach(lines::add);
            said(Verdict.DIFFERS_ALONE).map(Sentence::open).forEach(lines::add);
            said(Verdict.CANNOT_TELL).map(Sentence::open).forEach(lines::add);
            said(Verdict.REFUSED).map(Sentence::open).forEach(lines::add);
            compared.comparison().fastNotes().stream()
                    .map(FastNote::words)
                    .map(Sentence::open)
                    .forEach(lines::add);
            lines.add(Sentence.remark(again()));
            return lines;
        }

        private Stream<String> said(Verdict verdict) {
            return compared.comparison().changes().stream()
                    .filter(c -> c.verdict() == verdict)
                    .map(PlayedWords::sentence);
        }

        private String again() {
            return "Over all strings, setting up and playing again included: that moves "
                    + PlayedWords.again(compared.comparison().changes())
                    + (compared.comparison().restsOnAssumed()
                            ? ". Play one guitar anew for five sittings and keep them as a study on the Workshop screen to know"
                                    + " how far it is on your bench."
                            : ".");
        }

        @Override
        public Optional<? extends Picture> picture(SittingTitle title) {
            return PlayedMaps.of(compared.comparison());
        }
    }
}
