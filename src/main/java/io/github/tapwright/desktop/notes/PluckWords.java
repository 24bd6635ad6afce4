package io.github.tapwright.desktop.notes;

import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Estimate;
import io.github.tapwright.statistics.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** What a run of plucks says, and what it does not. */
final class PluckWords {

    private PluckWords() {}

    static String of(PluckRun run) {
        List<PluckMean> means = PluckMean.of(run);
        long astray = run.plucks().stream().filter(p -> p.string().isEmpty()).count();
        List<String> words = new ArrayList<>();
        words.add(Figures.count(run.plucks().size(), "pluck") + " on " + Figures.count(means.size(), "open string")
                + (astray == 0 ? "." : "; " + astray + " with the pitch of no open string left out."));
        words.add(run.withdrawn()
                .map(why -> "Their calibration is withdrawn (" + why.reason()
                        + "): these are no sound pressure levels, and loudness in sone is left out. Measure them anew with"
                        + " “Analyse anew” on the Shelf.")
                .orElse("Levels are in " + run.levelUnit() + "."));
        comparison(means).ifPresent(words::add);
        words.add(
                "± is half the 95 % interval of the mean of these plucks in this set-up; setting up again is not in it."
                        + " To hold two instruments against each other, compare their sittings.");
        return String.join(" ", words);
    }

    private static java.util.Optional<String> comparison(List<PluckMean> means) {
        List<PluckMean> judged = means.stream()
                .filter(m -> m.lafMaxDb().flatMap(PluckMean.Figure::estimate).isPresent())
                .sorted(Comparator.comparingDouble(
                        m -> -m.lafMaxDb().orElseThrow().mean()))
                .toList();
        if (judged.size() < 2) {
            return java.util.Optional.empty();
        }
        PluckMean loud = judged.get(0);
        PluckMean soft = judged.get(judged.size() - 1);
        Estimate a = loud.lafMaxDb().flatMap(PluckMean.Figure::estimate).orElseThrow();
        Estimate b = soft.lafMaxDb().flatMap(PluckMean.Figure::estimate).orElseThrow();
        boolean apart = a.value() - a.halfWidth95() > b.value() + b.halfWidth95();
        return java.util.Optional.of(
                apart
                        ? "String " + loud.string() + " is the loudest, " + Figures.text(a.value() - b.value(), 1)
                                + " dB above string " + soft.string() + ", the softest; their intervals do not touch."
                        : "Whether any string is louder than another cannot be told: even the intervals of the loudest"
                                + " and the softest overlap.");
    }
}
