package io.github.tapwright.sitting;

import io.github.tapwright.level.LevelAnalysis;
import io.github.tapwright.level.LevelReport;
import io.github.tapwright.level.LevelSettings;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Measures levels and loudness of recordings, each by itself; nothing is kept. */
public final class MeasureLevels {

    private final NamedSource source;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     */
    public MeasureLevels(RecordingSource source) {
        this.source = new NamedSource(source);
    }

    /**
     * Measures files.
     *
     * @param files at least one
     * @param settings what the samples mean, the same for all files
     * @param progress told about each file
     * @return the levels, in the order of the files
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public List<MeasuredLevels> measure(List<Path> files, LevelSettings settings, Progress progress) {
        List<MeasuredLevels> measured = new ArrayList<>();
        try {
            for (Path file : files) {
                progress.at("measuring " + file.getFileName(), measured.size(), files.size());
                measured.add(source.read(SoundFile.of(file), recording -> measure(file, recording, settings)));
            }
            return measured;
        } finally {
            progress.end();
        }
    }

    private static MeasuredLevels measure(Path file, SourceRecording recording, LevelSettings settings) {
        LevelReport report = LevelAnalysis.of(recording.stream(), settings);
        SoundFacts facts = recording.facts(MeasuredLevels.loudest(report), report.durationSeconds());
        return new MeasuredLevels(file.toString(), facts, report);
    }
}
