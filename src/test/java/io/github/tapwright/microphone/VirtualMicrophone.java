package io.github.tapwright.microphone;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Assumptions;

/**
 * A sound server of its own with a sink that makes no noise; what is played into it is what its monitor, the only input,
 * hears. Programs that shall hear it are children that get {@link #environment}.
 */
public final class VirtualMicrophone implements AutoCloseable {

    private static final String NEEDS = "PulseAudio, its tools and the ALSA plugin for it are not installed, so"
            + " recording is not tested: apt-get install pulseaudio pulseaudio-utils libasound2-plugins";

    private final Path folder;
    private final Process server;

    private VirtualMicrophone(Path folder, Process server) {
        this.folder = folder;
        this.server = server;
    }

    /**
     * Starts the server; skips the test, saying so, where the parts are missing.
     *
     * @param folder an empty folder
     * @param rateHz samples per second of its sink, which then converts nothing
     */
    public static VirtualMicrophone start(Path folder, int rateHz) throws IOException, InterruptedException {
        boolean complete = installed("pulseaudio") && installed("paplay") && installed("pacat") && plugin();
        Assumptions.assumeTrue(complete, NEEDS);
        Files.writeString(folder.resolve("asound.conf"), """
                </usr/share/alsa/alsa.conf>
                pcm.!default { type pulse }
                ctl.!default { type pulse }
                """);
        ProcessBuilder builder = new ProcessBuilder(
                        "pulseaudio",
                        "-n",
                        "--daemonize=no",
                        "--use-pid-file=no",
                        "--exit-idle-time=-1",
                        "--disallow-exit",
                        "--log-target=file:" + folder.resolve("pulseaudio.log"),
                        "-L",
                        "module-null-sink sink_name=bench format=s24le channels=2 rate=" + rateHz,
                        "-L",
                        "module-native-protocol-unix auth-anonymous=1 socket=" + socket(folder))
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("pulseaudio.out").toFile());
        builder.environment().putAll(environment(folder));
        VirtualMicrophone microphone = new VirtualMicrophone(folder, builder.start());
        microphone.awaitReady();
        return microphone;
    }

    private static boolean installed(String program) {
        return Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(p -> Files.isExecutable(Path.of(p, program)));
    }

    private static boolean plugin() throws IOException {
        try (var found = Files.find(Path.of("/usr/lib"), 4, (p, a) -> p.endsWith("libasound_module_pcm_pulse.so"))) {
            return Files.isDirectory(Path.of("/usr/lib")) && found.findAny().isPresent();
        }
    }

    private static Path socket(Path folder) {
        return folder.resolve("native");
    }

    private void awaitReady() throws IOException, InterruptedException {
        for (int attempt = 0; attempt < 100; attempt++) {
            if (run("pactl", "info") == 0) {
                return;
            }
            Thread.sleep(100);
        }
        throw new IOException("the sound server did not start: " + Files.readString(folder.resolve("pulseaudio.log")));
    }

    private static Map<String, String> environment(Path folder) {
        return Map.of(
                "HOME", folder.toString(),
                "XDG_RUNTIME_DIR", folder.toString(),
                "PULSE_RUNTIME_PATH", folder.toString(),
                "PULSE_SERVER", "unix:" + socket(folder),
                "ALSA_CONFIG_PATH", folder.resolve("asound.conf").toString());
    }

    private int run(String... command) throws IOException, InterruptedException {
        Process process = command(List.of(command)).start();
        if (!process.waitFor(20, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException(command[0] + " hangs");
        }
        return process.exitValue();
    }

    private ProcessBuilder command(List<String> command) {
        ProcessBuilder builder = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("commands.out").toFile());
        builder.environment().putAll(environment(folder));
        return builder;
    }

    /** Plays a file into the microphone; the process ends with the file. */
    public Process play(Path file) throws IOException {
        return command(List.of("paplay", "--device=bench", file.toString())).start();
    }

    /** Plays raw samples into the microphone: 24 bit, two channels, as they are written to the process's input. */
    public Process playRaw(int rateHz) throws IOException {
        return command(List.of(
                        "pacat",
                        "--playback",
                        "--raw",
                        "--device=bench",
                        "--format=s24le",
                        "--channels=2",
                        "--rate=" + rateHz,
                        "--latency-msec=2000"))
                .start();
    }

    /** A Java program that hears this microphone; its output can be read from the process. */
    public Process java(List<String> options, Class<?> main, String... arguments) throws IOException {
        return java(Map.of(), options, main, arguments);
    }

    /** A Java program that hears this microphone and finds more than that in its environment. */
    public Process java(Map<String, String> more, List<String> options, Class<?> main, String... arguments)
            throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(options);
        command.addAll(List.of("-cp", classPath(), main.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment().putAll(environment(folder));
        builder.environment().putAll(more);
        return builder.start();
    }

    private static String classPath() {
        return Arrays.stream(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"))
                        .split(File.pathSeparator))
                .map(p -> Path.of(p).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    @Override
    public void close() {
        server.destroy();
        try {
            if (!server.waitFor(5, TimeUnit.SECONDS)) {
                server.destroyForcibly();
            }
        } catch (InterruptedException e) {
            server.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
