package io.github.tapwright.sitting;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.mode.TapAnalysis;
import io.github.tapwright.mode.TapResult;
import io.github.tapwright.tap.TapSettings;
import io.github.tapwright.tap.TapTrack;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;

/** Analyses tap recordings that belong to no sitting; nothing is kept. */
public final class AnalyseTaps {

    private final NamedSource source;
    private final SideBySide sideBySide;

    /**
     * Joins the use case with what it needs.
     *
     * @param source what opens sound files
     * @param sideBySide how files that stand each for itself are analysed
     */
    public AnalyseTaps(RecordingSource source, SideBySide sideBySide) {
        this.source = new NamedSource(source);
        this.sideBySide = sideBySide;
    }

    /**
     * What a set of files gave.
     *
     * @param facts what reading each file showed, in the order of the files
     * @param result what was found in all of them together
     */
    public record Found(List<SoundFacts> facts, TapResult result) {

        /** Keeps a copy of the list. */
        public Found {
            facts = List.copyOf(facts);
        }
    }

    /**
     * Analyses files as one set: same instrument, same set-up.
     *
     * @param files at least one
     * @param settings what to look for
     * @param hole whether the soundhole was open
     * @param progress told about each file
     * @return what was found
     * @throws RefusedEntryException if two files hold the same recording
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public Found analyse(List<Path> files, TapSettings settings, HoleState hole, Progress progress) {
        refuseTwice(files);
        return read(files.stream().map(SoundFile::of).toList(), settings, hole, progress);
    }

    /** Strikes counted twice would make every interval narrower than it is. */
    private static void refuseTwice(List<Path> files) {
        for (int later = 1; later < files.size(); later++) {
            for (int earlier = 0; earlier < later; earlier++) {
                if (areAlike(files.get(earlier), files.get(later))) {
                    throw new RefusedEntryException(files.get(later) + " holds the same recording as "
                            + (files.get(later).equals(files.get(earlier)) ? "a file before it" : files.get(earlier))
                            + "; give each recording once");
                }
            }
        }
    }

    /** Byte for byte; a file that cannot be read says so when it is its turn. */
    private static boolean areAlike(Path one, Path other) {
        try {
            return Files.isRegularFile(one)
                    && Files.isRegularFile(other)
                    && Files.size(one) == Files.size(other)
                    && Files.mismatch(one, other) < 0;
        } catch (IOException e) {
            return false;
        }
    }

    Found read(List<SoundFile> files, TapSettings settings, HoleState hole, Progress progress) {
        List<SoundFacts> facts = new ArrayList<>();
        List<TapTrack> tracks = new ArrayList<>();
        try {
            for (SoundFile file : files) {
                progress.at("reading " + file.name(), tracks.size(), files.size() + 1);
                facts.add(source.read(file, recording -> {
                    TapTrack track = TapTrack.read(recording.stream(), settings);
                    tracks.add(track);
                    return recording.facts(track.channelUsed(), track.durationSeconds());
                }));
            }
            progress.at("finding resonances", files.size(), files.size() + 1);
            return new Found(facts, TapAnalysis.analyse(tracks, settings, hole));
        } finally {
            progress.end();
        }
    }

    /**
     * Analyses files each for itself.
     *
     * @param files any number
     * @param settings what to look for
     * @param hole whether the soundhole was open
     * @param progress told about each file
     * @return what was found in each, in the order of the files
     * @throws io.github.tapwright.recording.UnreadableRecordingException if a file holds no sound that can be read
     */
    public List<Found> analyseEach(List<Path> files, TapSettings settings, HoleState hole, Progress progress) {
        if (files.size() == 1) {
            return List.of(analyse(files, settings, hole, progress));
        }
        AtomicInteger done = new AtomicInteger();
        try {
            return sideBySide.each(files.iterator(), file -> {
                Found found = analyse(List.of(file), settings, hole, Progress.SILENT);
                synchronized (done) {
                    progress.at("finding resonances", done.incrementAndGet(), files.size());
                }
                return found;
            });
        } finally {
            progress.end();
        }
    }
}
