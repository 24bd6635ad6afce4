package io.github.tapwright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Which archive a command works on. */
final class ArchiveOption {

    @Option(
            names = "--archive",
            paramLabel = "DIR",
            defaultValue = "${env:TAPWRIGHT_ARCHIVE:-${sys:user.home}/Tapwright}",
            description = "The archive's folder; TAPWRIGHT_ARCHIVE if set, else Tapwright in your home.")
    private Path folder = Path.of("Tapwright");

    Path folder() {
        return folder;
    }
}
