package io.github.tapwright.comparison.played;

import io.github.tapwright.level.FullScale;
import io.github.tapwright.level.Level;
import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.DecayRange;
import io.github.tapwright.note.DecayTime;
import io.github.tapwright.note.Finding;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.WholeDecay;
import io.github.tapwright.note.run.FastDecays;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.sitting.Fingerboard;
import io.github.tapwright.statistics.Estimate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Runs of notes made up for tests: decay and level of every place, times what a hand and the day make of them.
 *
 * @param longer how many times longer notes ring than on the usual guitar
 * @param louderDb how much louder they are
 * @param noteSpread scatter of the logarithm of a single decay time
 * @param noteSpreadDb scatter of a single level
 * @param dead places that die away in a third of the time
 */
public record InventedRun(double longer, double louderDb, double noteSpread, double noteSpreadDb, List<Fret> dead) {

    /** Thirteen notes on each of six strings. */
    public static final List<Fret> SIX_STRINGS = IntStream.rangeClosed(1, 6)
            .boxed()
            .flatMap(s -> IntStream.rangeClosed(0, 12).mapToObj(f -> new Fret(s, f)))
            .toList();

    /** As far from even as a real guitar, without a dead note. */
    public static InventedRun of(double longer, double louderDb) {
        return new InventedRun(longer, louderDb, 0.1, 1, List.of());
    }

    /** What a run over these places found. */
    public Fingerboard played(List<Fret> places, Random chance) {
        List<Fingerboard.Note> notes = places.stream().map(p -> note(p, chance)).toList();
        Map<Fret, Double> times = new HashMap<>();
        notes.forEach(n -> times.put(
                n.place().orElseThrow(), n.earlyDecayTimeSeconds().found().orElseThrow()));
        return new Fingerboard(
                notes, FastDecays.in(times), List.of(), Fingerboard.Settings.STANDARD, "fingerboard-test");
    }

    private Fingerboard.Note note(Fret place, Random chance) {
        double usual = (4 - 0.12 * place.fret()) * (dead.contains(place) ? 1 / 3.0 : 1);
        double early = usual * longer * Math.exp(noteSpread * chance.nextGaussian());
        double late = 1.5 * usual * longer * Math.exp(noteSpread * chance.nextGaussian());
        double level = -30 + louderDb + noteSpreadDb * chance.nextGaussian();
        return new Fingerboard.Note(0, 0, result(place, early, late), Optional.of(levels(level)), Optional.of(place));
    }

    private static NoteResult result(Fret place, double early, double late) {
        Finding<DecayTime> t20 = new Finding.Found<>(new DecayTime(DecayRange.T20, Estimate.of(late, 0.01), 0));
        return new NoteResult(
                new Finding.Found<>(Pitch.of(Estimate.of(Tuning.CLASSICAL.hz(place), 0.01), 440)),
                new Finding.NotFound<>("invented"),
                List.of(),
                new WholeDecay(
                        new Finding.Found<>(new DecayTime(DecayRange.EDT, Estimate.of(early, 0.01), 0)),
                        t20,
                        new Finding.NotFound<>("invented"),
                        60),
                new Finding.Found<>(0.1),
                new Finding.Found<>(0.01),
                new Finding.Found<>(1200.0),
                new Finding.Found<>(1.0),
                Optional.empty(),
                0,
                5,
                List.of(),
                NoteSettings.STANDARD,
                "note-test");
    }

    private static SoundLevels levels(double lafMaxDb) {
        List<Level> all = Stream.generate(() -> new Level(lafMaxDb, new FullScale()))
                .limit(7)
                .toList();
        return new SoundLevels(all.get(0), all.get(1), all.get(2), all.get(3), all.get(4), all.get(5), all.get(6), 5);
    }
}
