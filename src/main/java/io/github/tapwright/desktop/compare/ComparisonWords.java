package io.github.tapwright.desktop.compare;

import io.github.tapwright.comparison.CompareSittings;
import io.github.tapwright.comparison.Difference;
import io.github.tapwright.comparison.InWords;
import io.github.tapwright.comparison.ResonanceChange;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import io.github.tapwright.sitting.ShownResonance;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Says a comparison in sentences: what differs first, then what cannot be told, then what only one side has. */
final class ComparisonWords {

    private final CompareSittings.Compared compared;

    ComparisonWords(CompareSittings.Compared compared) {
        this.compared = compared;
    }

    List<Sentence> sentences() {
        List<Sentence> lines = new ArrayList<>();
        if (compared.comparison().changes().isEmpty()) {
            lines.add(Sentence.open("No resonance of A could be found again in B."));
        }
        figures(Difference.Verdict.DIFFERS)
                .map(f -> Sentence.certain(f.sentence()))
                .forEach(lines::add);
        figures(Difference.Verdict.DIFFERS_ALONE)
                .map(f -> Sentence.open(f.sentence()))
                .forEach(lines::add);
        for (ResonanceChange change : compared.comparison().changes()) {
            together(change, Difference.Verdict.CANNOT_TELL, "cannot tell").ifPresent(lines::add);
        }
        for (ResonanceChange change : compared.comparison().changes()) {
            together(change, Difference.Verdict.REFUSED, "not compared, the conditions forbid it")
                    .ifPresent(lines::add);
        }
        alone("A", compared.comparison().onlyFirst()).ifPresent(lines::add);
        alone("B", compared.comparison().onlySecond()).ifPresent(lines::add);
        lines.add(Sentence.remark(spread()));
        return lines;
    }

    private Stream<ComparedFigure> figures(Difference.Verdict told) {
        return figures().stream().filter(f -> f.told().equals(Optional.of(told)));
    }

    List<ComparedFigure> figures() {
        return compared.comparison().changes().stream()
                .flatMap(c -> c.differences().stream()
                        .map(d -> ComparedFigure.of(c, d, compared.bench().spread())))
                .toList();
    }

    private static Optional<Sentence> together(ResonanceChange change, Difference.Verdict verdict, String words) {
        String quantities = change.differences().stream()
                .filter(d -> d.verdict() == verdict)
                .map(d -> d.quantity().words())
                .collect(Collectors.joining(", "));
        return quantities.isEmpty()
                ? Optional.empty()
                : Optional.of(Sentence.open(change.called() + ", " + quantities + ": " + words));
    }

    private static Optional<Sentence> alone(String side, List<ShownResonance> alone) {
        return alone.isEmpty()
                ? Optional.empty()
                : Optional.of(Sentence.open("Found in " + side + " alone: "
                        + alone.stream()
                                .map(r -> r.name().map(n -> n + " ").orElse("")
                                        + Figures.text(
                                                r.found()
                                                        .resonance()
                                                        .frequencyHz()
                                                        .value(),
                                                1)
                                        + " Hz")
                                .collect(Collectors.joining("; "))));
    }

    private String spread() {
        SetUpSpread spread = compared.bench().spread();
        return "Differences are B less A, in A's air, ± half the 95 % interval: one in twenty lies"
                + " outside by chance alone. Setting up again moves figures by "
                + spread.words() + ": "
                + spread.basisWords() + ". " + InWords.asked(compared.comparison())
                + "; a difference counts as certain if it stands all of them considered.";
    }
}
