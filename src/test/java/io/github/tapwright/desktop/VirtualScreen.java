package io.github.tapwright.desktop;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;

/** A screen nobody sees: an X server of its own that draws into memory. */
final class VirtualScreen implements AutoCloseable {

    private final Process server;
    private final String display;

    private VirtualScreen(Process server, String display) {
        this.server = server;
        this.display = display;
    }

    /** Starts it; skips the test, saying so, where Xvfb is not installed. */
    static VirtualScreen start(int width, int height) throws IOException {
        require("Xvfb", "xvfb");
        Process server = new ProcessBuilder(
                        "Xvfb", "-displayfd", "1", "-screen", "0", width + "x" + height + "x24", "-nolisten", "tcp")
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        BufferedReader reader =
                new BufferedReader(new InputStreamReader(server.getInputStream(), StandardCharsets.US_ASCII));
        String number = reader.readLine();
        if (number == null) {
            throw new IOException("Xvfb did not start");
        }
        return new VirtualScreen(server, ":" + number.strip());
    }

    /** Skips the test, saying so, where a program is not installed. */
    static void require(String program, String debianPackage) {
        Assumptions.assumeTrue(
                Arrays.stream(System.getenv("PATH").split(File.pathSeparator))
                        .anyMatch(p -> Files.isExecutable(Path.of(p, program))),
                program + " is not installed, so no window is tested: apt-get install " + debianPackage);
    }

    /** What a program needs to find this screen. */
    Map<String, String> environment() {
        return Map.of("DISPLAY", display);
    }

    @Override
    public void close() {
        server.destroy();
    }
}
