package io.github.tapwright.sitting;

import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.level.LevelAnalysis;
import io.github.tapwright.level.LevelReport;
import io.github.tapwright.level.LevelSettings;
import io.github.tapwright.level.loudness.HeardLoudness;
import io.github.tapwright.note.NoteAnalysis;
import io.github.tapwright.note.NoteSettings;
import io.github.tapwright.note.RoughPitch;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.PlaceAssignment;
import io.github.tapwright.note.run.Tuning;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Measures how loud repeated plucks of the open strings are. */
public final class MeasurePlucks {

    /** Version of the cutting and measuring, kept with every result. */
    public static final String METHOD_VERSION =
            "plucks-2, " + LevelAnalysis.METHOD_VERSION + ", " + NoteAnalysis.METHOD_VERSION;

    /** Long enough for the loudest moment of any pluck and for 400 ms of loudness. */
    private static final double LONGEST_SECONDS = 1.5;

    private final RunReader runs;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     */
    public MeasurePlucks(RecordingSource source) {
        this.runs = new RunReader(source);
    }

    /**
     * Measures every pluck of some recordings.
     *
     * @param files recordings of one instrument in one set-up
     * @param tuning what the open strings sound
     * @param levels what the samples mean
     * @param progress told about each file
     * @return the plucks in the order played, and what reading each file showed
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public Measured measure(List<Path> files, Tuning tuning, LevelSettings levels, Progress progress) {
        return read(files.stream().map(SoundFile::of).toList(), tuning, levels, progress);
    }

    /**
     * What a set of files gave.
     *
     * @param facts what reading each showed
     * @param plucks in the order played
     */
    public record Measured(List<SoundFacts> facts, List<Pluck> plucks) {

        /** Keeps copies of the lists. */
        public Measured {
            facts = List.copyOf(facts);
            plucks = List.copyOf(plucks);
        }
    }

    Measured read(List<SoundFile> files, Tuning tuning, LevelSettings levels, Progress progress) {
        List<Pluck> plucks = new ArrayList<>();
        List<SoundFacts> facts = new ArrayList<>();
        try {
            for (int f = 0; f < files.size(); f++) {
                progress.at("listening to " + files.get(f).name(), f, files.size());
                int number = f;
                facts.add(runs.read(
                        files.get(f),
                        LONGEST_SECONDS,
                        cuts -> cuts.forEachRemaining(cut -> plucks.add(pluck(number, cut, tuning, levels)))));
            }
            return new Measured(facts, plucks);
        } finally {
            progress.end();
        }
    }

    private static Pluck pluck(int file, RunReader.Cut cut, Tuning tuning, LevelSettings settings) {
        RoughPitch note = NoteAnalysis.roughPitch(cut.sound().stream(), NoteSettings.STANDARD);
        LevelReport report = LevelAnalysis.of(cut.sound().stream(), settings);
        ChannelLevels levels = report.channels().get(0);
        return new Pluck(
                file,
                cut.attackSeconds(),
                note.hz().found().flatMap(hz -> openString(hz, tuning)),
                levels.soundLevels().map(l -> l.lafMax().levelDb()),
                report.programme().flatMap(p -> boxed(p.momentaryMaxLufs())),
                levels.loudness() instanceof HeardLoudness heard ? Optional.of(heard.maximumSone()) : Optional.empty(),
                note.warnings());
    }

    private static Optional<Integer> openString(double pitchHz, Tuning tuning) {
        return tuning.placesOf(pitchHz, PlaceAssignment.MOST_CENTS).stream()
                .filter(p -> p.fret() == 0)
                .map(Fret::string)
                .findFirst();
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }
}
