package io.github.tapwright.desktop.shelf;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.tap.ResponseCurve;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One instrument on the shelf.
 *
 * @param instrument which
 * @param sittings its sittings, latest first
 * @param sketch how its body answered last: levels in dB at evenly spaced steps of pitch; empty if never tapped
 */
public record ShelfRow(Instrument instrument, List<SittingSummary> sittings, List<Double> sketch) {

    private static final int STEPS = 90;
    private static final double LOW_HZ = 60;
    private static final double HIGH_HZ = 900;

    /** Keeps copies. */
    public ShelfRow {
        sittings = List.copyOf(sittings);
        sketch = List.copyOf(sketch);
    }

    /**
     * What it is, in a line.
     *
     * @return kind and construction
     */
    public String nature() {
        return Stream.concat(
                        Stream.of(instrument.kind().words()),
                        instrument.construction().kind().stream().map(k -> k.words()))
                .collect(Collectors.joining(", "));
    }

    /**
     * When it was last at the microphone, in a line.
     *
     * @param zone the workshop's
     * @return date and stage
     */
    public String lastSitting(ZoneId zone) {
        return latest().map(s -> s.takenAt().text(zone)
                        + s.stage().map(Stage::words).map(w -> ", " + w).orElse(""))
                .orElse("no sitting yet");
    }

    Optional<SittingSummary> latest() {
        return sittings.stream().filter(s -> s.setAside().isEmpty()).findFirst();
    }

    /** The sitting the sketch is drawn from. */
    Optional<SittingSummary> latestTaps() {
        return sittings.stream().filter(SittingSummary::tapsTheBodyAsItIs).findFirst();
    }

    /** Whether a search finds it: every word typed must occur somewhere in what the shelf says of it. */
    boolean answers(String search) {
        String all = (instrument.shopNumber() + " " + nature() + " "
                        + instrument.nickname().orElse("") + " "
                        + latest().flatMap(SittingSummary::stage)
                                .map(Stage::words)
                                .orElse(""))
                .toLowerCase(Locale.ROOT);
        return Stream.of(search.toLowerCase(Locale.ROOT).strip().split("\\s+")).allMatch(all::contains);
    }

    ShelfRow withSketch(List<Double> drawn) {
        return new ShelfRow(instrument, sittings, drawn);
    }

    /** The curve of a sitting thinned to a sketch: the highest level within each step. */
    static List<Double> sketch(Sitting sitting) {
        return sitting.latest()
                .taps()
                .flatMap(t -> t.curve())
                .map(ShelfRow::sketch)
                .orElse(List.of());
    }

    private static List<Double> sketch(ResponseCurve curve) {
        double ratio = Math.pow(HIGH_HZ / LOW_HZ, 1.0 / STEPS);
        return Stream.iterate(LOW_HZ, hz -> hz * ratio)
                .limit(STEPS)
                .flatMap(low -> curve.points().stream()
                        .filter(p -> p.frequencyHz() >= low && p.frequencyHz() < low * ratio)
                        .map(ResponseCurve.Point::levelDb)
                        .max(Double::compare)
                        .stream())
                .toList();
    }
}
