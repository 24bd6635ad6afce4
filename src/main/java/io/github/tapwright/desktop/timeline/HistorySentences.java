package io.github.tapwright.desktop.timeline;

import io.github.tapwright.comparison.trend.Drift;
import io.github.tapwright.comparison.trend.History;
import io.github.tapwright.comparison.trend.Series;
import io.github.tapwright.comparison.trend.TrendWords;
import io.github.tapwright.desktop.part.Sentences.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Says a history in sentences. */
final class HistorySentences {

    private final History history;

    HistorySentences(History history) {
        this.history = history;
    }

    List<Sentence> all() {
        List<Sentence> lines = new ArrayList<>();
        if (history.series().isEmpty()) {
            lines.add(Sentence.open("There is " + TrendWords.NOTHING + "."));
        } else if (history.questions() > 0) {
            history.series().stream()
                    .sorted(Comparator.comparing(s -> !drifts(s)))
                    .map(this::sentence)
                    .forEach(lines::add);
        } else {
            history.longest()
                    .ifPresent(longest -> lines.add(Sentence.open("Cannot tell a drift: sittings "
                            + TrendWords.tooFew(history, longest)
                            + ", better eight through more than one season, each with its humidity.")));
        }
        history.warnings().forEach(w -> lines.add(Sentence.warning("mind: " + w)));
        history.leftOut()
                .forEach(l -> lines.add(Sentence.warning("sitting " + l.sitting() + " left out: " + l.reason())));
        lines.add(Sentence.remark(TrendWords.CAUTION));
        return lines;
    }

    private Sentence sentence(Series series) {
        String words = TrendWords.sentence(series, history);
        return drifts(series) ? Sentence.certain(words) : Sentence.open(words);
    }

    static boolean drifts(Series series) {
        return series.drift().filter(Drift::drifts).isPresent();
    }
}
