package io.github.tapwright.archive;

import io.github.tapwright.sitting.live.CaptureId;
import java.nio.file.Path;
import java.util.List;

/**
 * What a check of an archive found.
 *
 * @param sittingCount sittings in the archive
 * @param calibrationCount calibrations in the archive
 * @param originalCount originals read and compared with their SHA-256
 * @param problems what is wrong, one line each, naming the file or the table; empty if nothing is
 * @param unreferenced sound originals nothing refers to; kept, and no error: a program was stopped between
 *     keeping a recording and keeping its sitting or calibration; paths below the archive's folder
 * @param temporary leftovers of programs that were stopped, or of ones still running; paths below the archive's folder
 * @param waiting live recordings that are part of no sitting yet, oldest first; nothing is wrong with them
 */
public record VerifyReport(
        long sittingCount,
        long calibrationCount,
        int originalCount,
        List<String> problems,
        List<Path> unreferenced,
        List<Path> temporary,
        List<WaitingRecording> waiting) {

    /** Keeps copies of the lists. */
    public VerifyReport {
        problems = List.copyOf(problems);
        unreferenced = List.copyOf(unreferenced);
        temporary = List.copyOf(temporary);
        waiting = List.copyOf(waiting);
    }

    /**
     * A live recording that is part of no sitting yet.
     *
     * @param id the number under which it can be kept
     * @param file its path below the archive's folder
     * @param running whether a program is writing it now; it can be kept once it was stopped
     */
    public record WaitingRecording(CaptureId id, Path file, boolean running) {}

    /**
     * Whether nothing is wrong.
     *
     * @return true if there are no problems, whatever else lies about
     */
    public boolean clean() {
        return problems.isEmpty();
    }
}
