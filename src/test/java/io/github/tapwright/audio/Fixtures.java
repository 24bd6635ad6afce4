package io.github.tapwright.audio;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Path;
import java.util.Objects;

/** The small sound files that make-fixtures.sh wrote. */
final class Fixtures {

    private Fixtures() {}

    static Path file(String name) {
        URL resource = Objects.requireNonNull(Fixtures.class.getResource("/audio/" + name), name);
        try {
            return Path.of(resource.toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }
}
