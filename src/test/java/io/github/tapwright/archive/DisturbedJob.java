package io.github.tapwright.archive;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A job in a program of its own, which validation/faults/disturb.c disturbs at one of its writes into a place. */
final class DisturbedJob {

    private static final Path SOURCE = Path.of("validation", "faults", "disturb.c");

    private final Path library;
    private final WriteJob job;
    private final Path place;
    private final Path log;

    DisturbedJob(Path library, WriteJob job, Path place) {
        this.library = library;
        this.job = job;
        this.place = place;
        this.log = place.resolveSibling("writes.log");
    }

    /** What is done to the program; the words are those of disturb.c. */
    enum Disturbance {
        KILL,
        TORN,
        FULL,
        FAIL,
        SLOW;

        String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        /** Whether the program gets no chance to say anything. */
        boolean ends() {
            return this == KILL || this == TORN;
        }
    }

    /**
     * How a program ended.
     *
     * @param code its exit code; 137 if it was killed
     * @param lines what it said
     */
    record End(int code, List<String> lines) {}

    /** Compiles the library; false where that cannot be done, as on a system without a C compiler or LD_PRELOAD. */
    static boolean compile(Path library) {
        try {
            String[] command = {"cc", "-shared", "-fPIC", "-O2", "-o", library.toString(), SOURCE.toString(), "-ldl"};
            return System.getProperty("os.name", "").equals("Linux")
                    && new ProcessBuilder(command).inheritIO().start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Its writes into the place in the last run: the call and the path. */
    List<String> writes() throws IOException {
        return Files.exists(log) ? Files.readAllLines(log, StandardCharsets.UTF_8) : List.of();
    }

    /** Runs it, disturbed at one write counted from 1, or at none. */
    End run(Disturbance disturbance, int at) throws IOException, InterruptedException {
        Files.deleteIfExists(log);
        Path said = place.resolveSibling("said.txt");
        ProcessBuilder program = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Dorg.sqlite.tmpdir=" + Durable.parent(place),
                "-cp",
                classPath(),
                WriteJobMain.class.getName(),
                job.name(),
                place.toString());
        Map<String, String> settings = program.environment();
        settings.put("LD_PRELOAD", library.toString());
        settings.put("DISTURB_PLACE", place.toString());
        settings.put("DISTURB_LOG", log.toString());
        settings.put("DISTURB_AT", Integer.toString(at));
        settings.put("DISTURB_HOW", disturbance.word());
        int code = program.redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start()
                .waitFor();
        return new End(code, Files.readAllLines(said, StandardCharsets.UTF_8));
    }

    /** Without the logging library that comes with a test's tool and greets everybody. */
    static String classPath() {
        String tests = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(tests.split(File.pathSeparator))
                .filter(entry -> !entry.contains("slf4j-api"))
                .collect(Collectors.joining(File.pathSeparator));
    }
}
