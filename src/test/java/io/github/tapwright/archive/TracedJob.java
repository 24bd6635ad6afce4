package io.github.tapwright.archive;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A job in a program of its own, watched by strace, which can kill the program as it is about to write or let the
 * write fail.
 */
final class TracedJob {

    /** All calls by which something gets onto a disk, or a name there changes. */
    private static final String CALLS = "openat,write,pwrite64,writev,sendfile,copy_file_range,fsync,fdatasync,"
            + "ftruncate,rename,renameat,renameat2,link,linkat,unlink,unlinkat,rmdir,mkdir,mkdirat";

    private static final Pattern LINE = Pattern.compile("([0-9]+) +([a-z0-9_]+)\\((.*)");

    private final WriteJob job;
    private final Path place;
    private final Path log;

    TracedJob(WriteJob job, Path place) {
        this.job = job;
        this.place = place;
        this.log = place.resolveSibling("strace.log");
    }

    /**
     * A write of the job.
     *
     * @param call the system call
     * @param number its number among those calls of its thread, from 1; how strace counts
     */
    record Point(String call, int number) {}

    /**
     * How a program ended.
     *
     * @param code its exit code; 137 if it was killed
     * @param lines what it said
     */
    record End(int code, List<String> lines) {}

    static boolean isPossible() {
        try {
            return new ProcessBuilder("strace", "-f", "-o", "/dev/null", "true")
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

    /** Runs it undisturbed and lists its writes into the place. */
    List<Point> points() throws IOException, InterruptedException {
        End end = run(List.of());
        if (end.code() != 0) {
            throw new IOException(job + " ended with " + end);
        }
        Map<String, Integer> counts = new HashMap<>();
        List<Point> points = new ArrayList<>();
        for (String line : Files.readAllLines(log, StandardCharsets.UTF_8)) {
            Matcher matcher = LINE.matcher(line);
            if (matcher.matches()) {
                String call = matcher.group(2);
                int number = counts.merge(matcher.group(1) + call, 1, Integer::sum);
                if (line.contains(place.toString() + "/") && writes(call, matcher.group(3))) {
                    points.add(new Point(call, number));
                }
            }
        }
        return points;
    }

    private static boolean writes(String call, String arguments) {
        return !call.equals("openat") || arguments.contains("O_CREAT") || arguments.contains("O_TRUNC");
    }

    /** Runs it with what strace shall do to it, as strace's option "inject" takes it. */
    End run(List<String> injections) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of("strace", "-f", "-y", "-qq", "-s", "0", "--seccomp-bpf", "-o", log.toString(), "-e"));
        command.add("trace=" + CALLS);
        injections.forEach(i -> command.addAll(List.of("-e", "inject=" + i)));
        command.addAll(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-Dorg.sqlite.tmpdir=" + Durable.parent(place),
                "-cp",
                classPath(),
                WriteJobMain.class.getName(),
                job.name(),
                place.toString()));
        Path said = place.resolveSibling("said.txt");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        int code = process.waitFor();
        return new End(code, Files.readAllLines(said, StandardCharsets.UTF_8));
    }

    /** Without the logging library that comes with a test's tool and greets everybody. */
    private static String classPath() {
        String tests = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return Arrays.stream(tests.split(File.pathSeparator))
                .filter(entry -> !entry.contains("slf4j-api"))
                .collect(Collectors.joining(File.pathSeparator));
    }
}
