package io.github.tapwright.sitting;

import io.github.tapwright.note.NoteAnalysis;
import io.github.tapwright.note.NoteResult;
import io.github.tapwright.note.NoteSettings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Analyses recordings of single plucked notes; nothing is kept. */
public final class AnalyseNotes {

    private final NamedSource source;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     */
    public AnalyseNotes(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /**
     * A recording of a note.
     *
     * @param facts what reading it showed
     * @param result what was found
     */
    public record Found(SoundFacts facts, NoteResult result) {}

    /**
     * Analyses files one by one.
     *
     * @param files each of one note
     * @param settings what to look for
     * @param progress told about each file
     * @return one for each file
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public List<Found> analyse(List<Path> files, NoteSettings settings, Progress progress) {
        List<Found> found = new ArrayList<>();
        try {
            for (Path file : files) {
                progress.at("listening to " + file.getFileName(), found.size(), files.size());
                found.add(source.read(SoundFile.of(file), recording -> {
                    NoteResult result = NoteAnalysis.analyse(recording.stream(), settings);
                    return new Found(recording.facts(result.channelUsed(), result.durationSeconds()), result);
                }));
            }
            return found;
        } finally {
            progress.end();
        }
    }
}
