package io.github.tapwright.note.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gives every note of a run its string and fret, by pitch and by the order in which a hand moves.
 *
 * <p>The same pitch lies on several strings. Of all ways to play the run the cheapest is taken, by dynamic
 * programming [Viterbi1967]: one fret up costs nothing, a step to the next open string little, leaps along a string
 * more, and any other change of string most. Costs are chosen, not measured.
 */
public final class PlaceAssignment {

    /** A note farther than this from every fret has no place. */
    public static final double MOST_CENTS = 60;

    private static final double CENTS_COST = 0.01;
    private static final double NEXT_OPEN_STRING = 0.3;

    /** Dearer than the next open string, which is what the same pitch again nearly always is. */
    private static final double SAME_AGAIN = 0.5;

    private static final double OTHER_STRING = 2;
    private static final double PER_FRET = 0.25;

    private PlaceAssignment() {}

    /**
     * Assigns.
     *
     * @param pitchesHz one for each note in the order played, empty where no pitch was found
     * @param tuning of the guitar
     * @param order how the run was played
     * @return one for each note, empty where it has no pitch or lies on no fret within {@value #MOST_CENTS} cents
     */
    public static List<Optional<Fret>> of(List<Optional<Double>> pitchesHz, Tuning tuning, PlayingOrder order) {
        List<Map<Fret, Step>> steps = new ArrayList<>();
        Map<Fret, Step> before = Map.of();
        for (Optional<Double> pitch : pitchesHz) {
            Map<Fret, Step> here = new HashMap<>();
            if (pitch.isPresent()) {
                for (Fret place : tuning.placesOf(pitch.get(), MOST_CENTS)) {
                    double own = CENTS_COST * Math.abs(tuning.centsAbove(pitch.get(), place)) + order.cost(place);
                    here.put(place, cheapest(before, place, own));
                }
            }
            steps.add(here);
            before = here.isEmpty() ? before : here;
        }
        return traced(steps);
    }

    private record Step(double cost, Optional<Fret> from) {}

    private static Step cheapest(Map<Fret, Step> before, Fret place, double own) {
        if (before.isEmpty()) {
            return new Step(own + (place.fret() == 0 ? 0 : NEXT_OPEN_STRING), Optional.empty());
        }
        return before.entrySet().stream()
                .map(e -> new Step(e.getValue().cost + move(e.getKey(), place) + own, Optional.of(e.getKey())))
                .min((a, b) -> Double.compare(a.cost, b.cost))
                .orElseThrow();
    }

    private static double move(Fret from, Fret to) {
        int frets = Math.abs(to.fret() - from.fret());
        if (to.equals(from)) {
            return SAME_AGAIN;
        }
        if (to.string() == from.string()) {
            return to.fret() - from.fret() == 1 ? 0 : PER_FRET * (1 + frets);
        }
        if (Math.abs(to.string() - from.string()) == 1 && to.fret() == 0) {
            return NEXT_OPEN_STRING;
        }
        return OTHER_STRING + PER_FRET * frets;
    }

    private static List<Optional<Fret>> traced(List<Map<Fret, Step>> steps) {
        List<Optional<Fret>> places = new ArrayList<>();
        Optional<Fret> next = Optional.empty();
        boolean last = true;
        for (int i = steps.size() - 1; i >= 0; i--) {
            Map<Fret, Step> here = steps.get(i);
            if (here.isEmpty()) {
                places.add(Optional.empty());
                continue;
            }
            if (last) {
                next = here.entrySet().stream()
                        .min((a, b) -> Double.compare(a.getValue().cost, b.getValue().cost))
                        .map(Map.Entry::getKey);
                last = false;
            }
            places.add(next);
            next = next.map(here::get).flatMap(Step::from);
        }
        Collections.reverse(places);
        return places;
    }
}
