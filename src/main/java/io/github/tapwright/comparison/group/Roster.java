package io.github.tapwright.comparison.group;

import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.sitting.SittingOutline;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/** Sittings sorted by group and instrument once, whatever is then asked of them. */
final class Roster {

    private final Map<String, Map<String, List<SittingOutline>>> byInstrument = new TreeMap<>();

    /** What one sitting has to say. */
    @FunctionalInterface
    interface Answers {

        Optional<SittingFigure> of(Subject subject);
    }

    /** Enters a sitting; those of one instrument oldest first. */
    void add(String group, SittingOutline sitting) {
        byInstrument
                .computeIfAbsent(group, g -> new TreeMap<>())
                .computeIfAbsent(sitting.instrument().text(), n -> new ArrayList<>())
                .add(sitting);
    }

    /** In the order of the subjects, each with every group that has it. */
    Map<Subject, Map<String, GroupSample>> samples(List<Subject> subjects, Function<SittingOutline, Answers> figures) {
        Map<Subject, Map<String, GroupSample>> samples = new LinkedHashMap<>();
        subjects.forEach(subject -> samples.put(subject, new TreeMap<>()));
        byInstrument.forEach((group, instruments) -> {
            // Side by side, each with all subjects while its sittings are at hand; the order stays the same.
            List<Map<Subject, InstrumentMean>> means = instruments.values().parallelStream()
                    .map(own -> means(own, subjects, figures))
                    .toList();
            samples.forEach((subject, byGroup) -> {
                List<InstrumentMean> having = means.stream()
                        .flatMap(m -> Optional.ofNullable(m.get(subject)).stream())
                        .toList();
                if (!having.isEmpty()) {
                    byGroup.put(group, new GroupSample(new GroupFigures(group, having)));
                }
            });
        });
        return samples;
    }

    /** One instrument's means by subject; those of which it has no figure are missing. */
    private static Map<Subject, InstrumentMean> means(
            List<SittingOutline> own, List<Subject> subjects, Function<SittingOutline, Answers> figures) {
        List<Answers> sittings = own.stream().map(figures).toList();
        Map<Subject, InstrumentMean> means = new HashMap<>();
        for (Subject subject : subjects) {
            List<SittingFigure> known = new ArrayList<>(sittings.size());
            sittings.forEach(s -> s.of(subject).ifPresent(known::add));
            if (!known.isEmpty()) {
                means.put(subject, new InstrumentMean(own.get(0).instrument(), known));
            }
        }
        return means;
    }
}
