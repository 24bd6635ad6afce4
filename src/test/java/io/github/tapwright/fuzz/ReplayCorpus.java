package io.github.tapwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Gives every file below some folders to one fuzz test, without the fuzzer around it, so that the heap can be as small
 * as the program's own needs.
 */
public final class ReplayCorpus {

    private ReplayCorpus() {}

    /** Arguments: the test's class, its method, then the folders; those that are not there are passed over. */
    public static void main(String[] arguments) throws Exception {
        FuzzTarget target = FuzzTarget.of(arguments[0], arguments[1]);
        int replayed = 0;
        for (String folder : List.of(arguments).subList(2, arguments.length)) {
            for (Path input : inputs(Path.of(folder))) {
                target.run(Files.readAllBytes(input));
                replayed++;
            }
        }
        System.out.println(replayed + " inputs replayed");
        System.exit(0);
    }

    private static List<Path> inputs(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }
}
