package io.github.tapwright.sitting;

import io.github.tapwright.level.FullScale;
import io.github.tapwright.level.LevelAnalysis;
import io.github.tapwright.level.SoundLevelMeter;
import io.github.tapwright.level.SoundLevels;
import io.github.tapwright.note.NoteAnalysis;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.Pitch;
import io.github.tapwright.note.run.FastDecays;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.PlaceAssignment;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.recording.SampleStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Cuts a run of notes into its notes, measures each, and lays them over the fingerboard. */
public final class MapFingerboard {

    /** Version of the cutting and placing, kept with every result. */
    public static final String METHOD_VERSION = "fingerboard-2, " + LevelAnalysis.METHOD_VERSION;

    private static final double LONGEST_SECONDS = 15;

    /** As many as the meter takes at once, so that its sums are added up as in one go. */
    private static final int BLOCK = 4096;

    private final RunReader runs;
    private final SideBySide sideBySide;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     * @param sideBySide how the notes are analysed, each read only when somebody is free for it
     */
    public MapFingerboard(RecordingSource source, SideBySide sideBySide) {
        this.runs = new RunReader(source);
        this.sideBySide = sideBySide;
    }

    /** A note before it has its place. */
    private record Heard(int file, double attackSeconds, NoteResult result, Optional<SoundLevels> levels) {}

    /**
     * Maps a run, recorded in one file or many.
     *
     * @param files in the order played, each of one note or more
     * @param settings how to read the run
     * @param progress told about each file
     * @return the notes with their places
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public Fingerboard map(List<Path> files, Fingerboard.Settings settings, Progress progress) {
        return read(files.stream().map(SoundFile::of).toList(), settings, progress)
                .board();
    }

    /** What a run's files gave, and what reading each showed. */
    record Mapped(List<SoundFacts> facts, Fingerboard board) {}

    Mapped read(List<SoundFile> files, Fingerboard.Settings settings, Progress progress) {
        List<Heard> heard = new ArrayList<>();
        List<SoundFacts> facts = new ArrayList<>();
        try {
            for (int f = 0; f < files.size(); f++) {
                progress.at("listening to " + files.get(f).name(), f, files.size());
                facts.add(notes(files.get(f), f, settings, heard));
            }
        } finally {
            progress.end();
        }
        List<String> warnings = new ArrayList<>(notices(files, facts));
        List<Optional<Double>> pitches = heard.stream()
                .map(h -> h.result.pitch().found().map(Pitch::hz).map(hz -> hz.value()))
                .toList();
        List<Optional<Fret>> places = PlaceAssignment.of(pitches, settings.tuning(), settings.order());
        List<Fingerboard.Note> notes = new ArrayList<>();
        for (int i = 0; i < heard.size(); i++) {
            Heard h = heard.get(i);
            notes.add(new Fingerboard.Note(h.file, h.attackSeconds, h.result, h.levels, places.get(i)));
        }
        warnings.addAll(doubts(notes));
        return new Mapped(
                facts,
                new Fingerboard(
                        notes,
                        FastDecays.in(Fingerboard.earlyDecayTimesSeconds(notes)),
                        warnings,
                        settings,
                        METHOD_VERSION));
    }

    private static List<String> notices(List<SoundFile> files, List<SoundFacts> facts) {
        List<String> notices = new ArrayList<>();
        for (int f = 0; f < files.size(); f++) {
            String name = files.get(f).name();
            facts.get(f).remarks().forEach(n -> notices.add(name + ": " + n));
        }
        return notices;
    }

    private SoundFacts notes(SoundFile file, int number, Fingerboard.Settings settings, List<Heard> heard) {
        return runs.read(
                file,
                LONGEST_SECONDS,
                cuts -> heard.addAll(sideBySide.each(cuts, cut -> heard(number, cut, settings))));
    }

    private static Heard heard(int file, RunReader.Cut cut, Fingerboard.Settings settings) {
        NoteResult result = NoteAnalysis.analyse(cut.sound().stream(), settings.notes());
        return new Heard(file, cut.attackSeconds(), result.ofChannel(cut.channel()), levels(cut.sound()));
    }

    private static Optional<SoundLevels> levels(Recording excerpt) {
        SoundLevelMeter meter = new SoundLevelMeter(excerpt.sampleRate());
        SampleStream stream = excerpt.stream();
        double[][] block = new double[excerpt.channelCount()][BLOCK];
        for (int n = stream.read(block); n > 0; n = stream.read(block)) {
            meter.take(block[0], n);
        }
        return meter.levels(new FullScale());
    }

    private static List<String> doubts(List<Fingerboard.Note> notes) {
        List<String> doubts = new ArrayList<>();
        if (notes.isEmpty()) {
            doubts.add("no notes found: nothing in the recording begins as a pluck does");
        }
        long pitchless =
                notes.stream().filter(n -> n.result().pitch().found().isEmpty()).count();
        if (pitchless > 0) {
            doubts.add(count(pitchless, " sound has", " sounds have") + " no pitch: knocks, or two strings at once");
        }
        long astray = notes.stream()
                .filter(n -> n.result().pitch().found().isPresent() && n.place().isEmpty())
                .count();
        if (astray > 0) {
            doubts.add(count(astray, " note lies", " notes lie")
                    + " on no fret of this tuning within 60 cents; check the tuning given");
        }
        Map<Fret, Integer> played = new HashMap<>();
        notes.forEach(n -> n.place().ifPresent(p -> played.merge(p, 1, Integer::sum)));
        long twice = played.values().stream().filter(c -> c > 1).count();
        if (twice > 0) {
            doubts.add(count(twice, " place holds", " places hold")
                    + " more than one note; the map shows the last, fast decays use the longest");
        }
        return doubts;
    }

    private static String count(long number, String one, String several) {
        return number + (number == 1 ? one : several);
    }
}
