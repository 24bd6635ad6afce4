package io.github.tapwright.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Where the seeds of one fuzz test lie, as the test looks for them. */
public final class SeedFolder {

    private final Path folder;

    /** Of a test's only method of that name, below the folder of the test resources. */
    public SeedFolder(Path resources, Class<?> test, String method) {
        this.folder =
                resources.resolve(test.getName().replace('.', '/') + "Inputs").resolve(method);
    }

    /** Keeps a seed; one of that name is replaced, all others stay. */
    public SeedFolder put(String name, byte[] seed) throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve(name), seed);
        return this;
    }

    public SeedFolder put(String name, String seed) throws IOException {
        return put(name, seed.getBytes(StandardCharsets.UTF_8));
    }
}
