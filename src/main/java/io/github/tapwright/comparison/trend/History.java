package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.BenchKnowledge;
import io.github.tapwright.comparison.CommonAir;
import io.github.tapwright.comparison.LeftOut;
import io.github.tapwright.comparison.PluckSittings;
import io.github.tapwright.comparison.SharedRecordings;
import io.github.tapwright.comparison.SittingFigure;
import io.github.tapwright.comparison.Subject;
import io.github.tapwright.comparison.SubjectsAtOnce;
import io.github.tapwright.comparison.TapSittings;
import io.github.tapwright.comparison.TapsInAir;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingOutline;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An instrument over time.
 *
 * <p>Formulas and sources are in docs/methods/comparison.md.
 *
 * @param instrument whose
 * @param sittings those used, oldest first
 * @param air what frequencies are corrected to
 * @param bench what is known about the workshop
 * @param events what was done to the instrument, oldest first
 * @param series one for each quantity found in any sitting
 * @param questions how many questions were asked at once
 * @param levelUnit what levels of plucks are measured against
 * @param warnings what speaks against reading too much into it
 * @param leftOut sittings that were not used
 */
public record History(
        ShopNumber instrument,
        List<SittingOutline> sittings,
        CommonAir air,
        BenchKnowledge bench,
        List<Event> events,
        List<Series> series,
        int questions,
        String levelUnit,
        List<String> warnings,
        List<LeftOut> leftOut) {

    /** Keeps copies of the lists. */
    public History {
        sittings = List.copyOf(sittings);
        events = List.copyOf(events);
        series = List.copyOf(series);
        warnings = List.copyOf(warnings);
        leftOut = List.copyOf(leftOut);
    }

    /**
     * What began the stretch in which drifts are sought.
     *
     * @return the latest event; empty if there was none and all sittings count
     */
    public Optional<Event> since() {
        return events.isEmpty() ? Optional.empty() : Optional.of(events.get(events.size() - 1));
    }

    /**
     * Whether levels of plucks are among its figures.
     *
     * @return false if no sitting of plucks could be used
     */
    public boolean hasPlucks() {
        return series.stream().anyMatch(s -> s.subject().equals(Subject.PLUCKS));
    }

    /**
     * The quantity with the most days in the stretch in which drifts are sought.
     *
     * @return of several the one with the most sittings; empty without any
     */
    public Optional<Series> longest() {
        return series.stream()
                .max(Comparator.comparingInt(Series::daysInStretch).thenComparingInt(Series::inStretch));
    }

    /**
     * Follows an instrument.
     *
     * @param instrument whose
     * @param all its sittings, in any order
     * @param sharing sittings that hold the same recording, as {@link io.github.tapwright.sitting.SittingStore#sharing} gives
     *     them; of these the one taken first counts
     * @param bench what is known about the workshop, and how humidity moves this instrument
     * @param zone where the workshop is, whose days count
     * @return its history
     */
    public static History of(
            ShopNumber instrument,
            List<SittingOutline> all,
            List<List<SittingId>> sharing,
            BenchKnowledge bench,
            ZoneId zone) {
        List<LeftOut> leftOut = new ArrayList<>();
        List<SittingOutline> ordered = LeftOut.without(
                all.stream()
                        .sorted(Comparator.comparing(s -> s.takenAt().instant()))
                        .toList(),
                LeftOut::reason,
                leftOut);
        List<SittingOutline> taps = SharedRecordings.once(taps(ordered, leftOut), sharing, leftOut);
        PluckSittings plucks = PluckSittings.among(SharedRecordings.once(
                ordered.stream().filter(is(Procedure.OpenPlucks.KEY)).toList(), sharing, leftOut));
        leftOut.addAll(plucks.leftOut());
        Set<SittingId> counted = Stream.concat(taps.stream(), plucks.used().stream())
                .map(SittingOutline::id)
                .collect(Collectors.toSet());
        List<SittingOutline> used =
                ordered.stream().filter(s -> counted.contains(s.id())).toList();
        List<Event> events = Events.between(used, zone);
        CommonAir air = CommonAir.of(taps);
        List<TapsInAir> inAir =
                taps.stream().map(s -> air.taps(s, bench.sensitivities())).toList();
        List<Series> series = new ArrayList<>();
        for (Subject subject : Subject.ofTaps()) {
            add(subject, figures(inAir, s -> s.figure(subject)), events, bench, zone, series);
        }
        add(Subject.PLUCKS, figures(plucks.used(), plucks::figure), events, bench, zone, series);
        SubjectsAtOnce<Series> atOnce = new SubjectsAtOnce<>(series, Series::subject, History::probability);
        return new History(
                instrument,
                used,
                air,
                bench,
                events,
                atOnce.adjusted(Series::adjusted),
                atOnce.count(),
                plucks.unit(),
                Doubts.about(used, within(events, used), bench, zone),
                leftOut);
    }

    private static Predicate<SittingOutline> is(String procedure) {
        return s -> s.procedure().equals(procedure);
    }

    private static List<SittingOutline> taps(List<SittingOutline> ordered, List<LeftOut> leftOut) {
        return LeftOut.without(
                ordered.stream().filter(is(Procedure.BodyTaps.KEY)).toList(), TapSittings::objection, leftOut);
    }

    private static <S> List<SittingFigure> figures(List<S> sittings, Function<S, Optional<SittingFigure>> figure) {
        return sittings.stream().flatMap(s -> figure.apply(s).stream()).toList();
    }

    private static void add(
            Subject subject,
            List<SittingFigure> figures,
            List<Event> events,
            BenchKnowledge bench,
            ZoneId zone,
            List<Series> series) {
        if (figures.isEmpty()) {
            return;
        }
        List<SittingFigure> stretch = figures.stream()
                .filter(f ->
                        events.stream().noneMatch(e -> f.takenAt().instant().isBefore(e.at())))
                .toList();
        List<DayFigure> days = DayFigure.of(stretch, zone);
        series.add(new Series(subject, figures, stretch.size(), days.size(), Drift.of(subject, days, bench)));
    }

    private static List<SittingOutline> within(List<Event> events, List<SittingOutline> used) {
        return used.stream()
                .filter(s ->
                        events.stream().noneMatch(e -> s.takenAt().instant().isBefore(e.at())))
                .toList();
    }

    private static OptionalDouble probability(Series series) {
        return series.drift()
                .map(d -> OptionalDouble.of(d.adjustedProbability()))
                .orElseGet(OptionalDouble::empty);
    }
}
