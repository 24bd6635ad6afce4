package io.github.tapwright.sitting;

import java.nio.file.Path;

/**
 * A sound file and what the maker calls it; a kept copy lies under a name of its own.
 *
 * @param path where it lies
 * @param name how to speak of it
 */
record SoundFile(Path path, String name) {

    static SoundFile of(Path path) {
        return new SoundFile(path, path.toString());
    }
}
