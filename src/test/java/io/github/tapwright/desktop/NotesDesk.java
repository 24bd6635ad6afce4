package io.github.tapwright.desktop;

import io.github.tapwright.archive.Archive;
import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.note.run.Tuning;
import io.github.tapwright.recording.Recording;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.CutStretch;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingRequest;
import io.github.tapwright.sitting.SoundOutput;
import io.github.tapwright.sitting.SourceRecording;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.FingerboardRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** A real archive with real recordings of synthesised notes, and an output that remembers what it was given. */
public final class NotesDesk implements AutoCloseable {

    /** The time it always is. */
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-14T09:26:53Z"), ZoneOffset.UTC);

    private static final ShopNumber NUMBER = new ShopNumber("T-17");
    private static final FingerboardRun RUN =
            new FingerboardRun(List.of(new Fret(4, 0), new Fret(4, 1), new Fret(3, 0), new Fret(3, 1)), 2.5);
    private static final FingerboardRun PLUCKS = new FingerboardRun(
            List.of(new Fret(4, 0), new Fret(3, 0), new Fret(4, 0), new Fret(3, 0), new Fret(4, 0), new Fret(3, 0)),
            1.6);

    /** The open archive. */
    public final Archive archive;

    /** What was played. */
    public final List<Played> played = new ArrayList<>();

    /** One sound given to the output. */
    public record Played(Recording sound, double gainDb) {}

    private final Path folder;

    private NotesDesk(Path folder) {
        this.folder = folder;
        this.archive = Archive.open(folder.resolve("archive"), CLOCK);
        if (archive.instruments().find(NUMBER).isEmpty()) {
            archive.instruments().add(Instrument.of(NUMBER, InstrumentKind.CLASSICAL));
        }
    }

    /** Opens the desk in a folder. */
    public static NotesDesk in(Path folder) {
        return new NotesDesk(folder);
    }

    /** Copies the archive of a closed desk and opens the copy. */
    public static NotesDesk copyOf(Path closed, Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(closed)) {
            for (Path file : files.toList()) {
                Path copy = folder.resolve(closed.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(file, copy);
                }
            }
        }
        return new NotesDesk(folder);
    }

    /** Keeps a run of four notes. */
    public Sitting addRun() throws IOException {
        return add("run.wav", RUN, new Procedure.NoteRun(io.github.tapwright.sitting.Fingerboard.Settings.STANDARD));
    }

    /** Keeps three plucks of each of two open strings. */
    public Sitting addPlucks() throws IOException {
        return add("plucks.wav", PLUCKS, new Procedure.OpenPlucks(Tuning.CLASSICAL, Optional.empty()));
    }

    private Sitting add(String name, FingerboardRun run, Procedure procedure) throws IOException {
        Path file = folder.resolve(name);
        WavWriter.write(file, run.recording(48_000, Chance.seeded(12)), WavSamples.INT_24);
        return new AddSitting(archive.instruments(), archive.sittings(), archive.calibrations(), NotesDesk::open, CLOCK)
                .add(
                        new SittingRequest(NUMBER, Optional.empty(), Conditions.UNKNOWN, List.of(file), procedure),
                        Progress.SILENT);
    }

    private static SourceRecording open(Path path) {
        OpenedAudio audio = AudioFile.open(path);
        return new SourceRecording(audio, "WAV", audio::notices);
    }

    /** Lists sittings. */
    public ListSittings listSittings() {
        return new ListSittings(archive.instruments(), archive.sittings());
    }

    /** Shows a sitting. */
    public ShowSitting showSitting() {
        return new ShowSitting(archive.sittings());
    }

    /** Cuts sound out of originals. */
    public CutStretch cutStretch() {
        return new CutStretch(archive.sittings(), NotesDesk::open);
    }

    /** An output that plays everything at once and remembers it. */
    public SoundOutput output() {
        return new SoundOutput() {
            @Override
            public void play(Recording sound, double gainDb, Consumer<Optional<String>> over) {
                played.add(new Played(sound, gainDb));
                over.accept(Optional.empty());
            }

            @Override
            public void stop() {}
        };
    }

    @Override
    public void close() {
        archive.close();
    }
}
