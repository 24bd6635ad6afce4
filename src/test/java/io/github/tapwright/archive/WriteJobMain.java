package io.github.tapwright.archive;

import io.github.tapwright.sitting.SittingId;
import java.nio.file.Path;

/** A program of its own that does one job, and says what is done; ends as the real program does. */
public final class WriteJobMain {

    private static final int ARCHIVE_TROUBLE = 4;

    private WriteJobMain() {}

    /**
     * Does one job.
     *
     * @param args the job and the folder to work in
     */
    public static void main(String[] args) {
        try {
            WriteJob.valueOf(args[0]).run(Path.of(args[1]), new Aloud());
        } catch (ArchiveException e) {
            System.out.println("trouble " + e.getMessage());
            System.exit(ARCHIVE_TROUBLE);
        }
    }

    /** Says it on standard output. */
    private static final class Aloud implements WriteJob.Said {

        @Override
        public void kept(SittingId id) {
            System.out.println("kept " + id.number());
        }

        @Override
        public void done(String name) {
            System.out.println("done " + name);
        }
    }
}
