package io.github.tapwright.archive;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;

/** A real disk of a few megabytes that can be filled and made read-only. Tests are skipped where none can be had. */
public final class SmallDisk implements AutoCloseable {

    private static final int MEGABYTES = 8;

    private final Path folder;

    private SmallDisk(Path folder) {
        this.folder = folder;
    }

    /**
     * Puts the disk into an empty folder, or has the running test skipped.
     *
     * @param folder an empty folder
     * @return the disk
     */
    public static SmallDisk in(Path folder) {
        assumeTrue(
                done("mount", "-t", "tmpfs", "-o", "size=" + MEGABYTES + "m", "tapwright-test", folder.toString()),
                "needs the right to mount a small disk");
        return new SmallDisk(folder);
    }

    /**
     * Where it is mounted.
     *
     * @return a folder
     */
    public Path folder() {
        return folder;
    }

    /**
     * Fills it up.
     *
     * @param freeKilobytes what is left free
     * @throws IOException if that cannot be done
     */
    public void fill(int freeKilobytes) throws IOException {
        Path filling = folder.resolve("holiday pictures");
        byte[] page = new byte[4096];
        long left = Files.getFileStore(folder).getUsableSpace() / page.length - freeKilobytes / 4;
        try (OutputStream out = Files.newOutputStream(filling, StandardOpenOption.CREATE, StandardOpenOption.APPEND)) {
            for (long p = 0; p < left; p++) {
                out.write(page);
            }
        }
    }

    /**
     * Frees what was filled up.
     *
     * @throws IOException if that cannot be done
     */
    public void free() throws IOException {
        Files.deleteIfExists(folder.resolve("holiday pictures"));
    }

    /** Lets nobody write any more. */
    public void makeReadOnly() {
        assumeTrue(done("mount", "-o", "remount,ro", folder.toString()), "cannot make a disk read-only");
    }

    /** Lets everybody write again. */
    public void makeWritable() {
        assumeTrue(done("mount", "-o", "remount,rw", folder.toString()), "cannot make a disk writable");
    }

    private static boolean done(String... command) {
        try {
            return new ProcessBuilder(Arrays.asList(command))
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    @Override
    public void close() {
        assumeTrue(done("umount", folder.toString()), "the small disk is still in use");
    }
}
