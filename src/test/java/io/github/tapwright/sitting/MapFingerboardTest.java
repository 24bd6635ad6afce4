package io.github.tapwright.sitting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.tapwright.audio.AudioFile;
import io.github.tapwright.audio.OpenedAudio;
import io.github.tapwright.audio.WavSamples;
import io.github.tapwright.audio.WavWriter;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.synthesis.Chance;
import io.github.tapwright.synthesis.FingerboardRun;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run is the same run however many processors analyse it. */
class MapFingerboardTest {

    private static final FingerboardRun RUN = new FingerboardRun(
            List.of(new Fret(4, 0), new Fret(4, 1), new Fret(4, 2), new Fret(3, 0), new Fret(3, 1), new Fret(3, 2)),
            2.5);

    @TempDir
    Path folder;

    private static SourceRecording open(Path path) {
        OpenedAudio audio = AudioFile.open(path);
        return new SourceRecording(audio, "WAV", audio::notices);
    }

    private Path written() throws IOException {
        Path file = folder.resolve("run.wav");
        WavWriter.write(file, RUN.recording(48_000, Chance.seeded(12)), WavSamples.INT_24);
        return file;
    }

    private static Fingerboard map(Path file, SideBySide crew) {
        return new MapFingerboard(MapFingerboardTest::open, crew)
                .map(List.of(file), Fingerboard.Settings.STANDARD, Progress.SILENT);
    }

    @Test
    void severalAtOnceGiveTheSameBitsInTheSameOrder() throws IOException {
        Path file = written();
        assertThat(map(file, SideBySide.ALL_PROCESSORS)).isEqualTo(map(file, SideBySide.ONE_BY_ONE));
    }

    @Test
    void everyNoteIsFoundInItsPlaceAndInTune() throws IOException {
        List<Fingerboard.Note> notes = map(written(), SideBySide.ONE_BY_ONE).notes();
        assertThat(notes).extracting(n -> n.place().orElseThrow()).isEqualTo(RUN.places());
        for (int i = 0; i < notes.size(); i++) {
            Fingerboard.Note note = notes.get(i);
            assertThat(note.attackSeconds()).isCloseTo(RUN.onsetSeconds(i), within(0.012));
            // The mean of two planes 0.7 cents apart lies between them.
            assertThat(note.pitchErrorCents(Fingerboard.Settings.STANDARD.tuning())
                            .found()
                            .orElseThrow())
                    .isBetween(0.0, 0.7);
        }
    }
}
