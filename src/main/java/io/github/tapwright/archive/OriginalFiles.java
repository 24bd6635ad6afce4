package io.github.tapwright.archive;

import io.github.tapwright.sitting.Original;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What lies in an archive's {@code originals} folder, sorted by what it is.
 *
 * @param originals files named as originals, where originals belong
 * @param temporary copies on their way in
 * @param strangers anything else
 */
record OriginalFiles(List<Original> originals, List<Path> temporary, List<Path> strangers) {

    OriginalFiles {
        originals = List.copyOf(originals);
        temporary = List.copyOf(temporary);
        strangers = List.copyOf(strangers);
    }

    static OriginalFiles in(ArchiveFolder folder) throws IOException {
        List<Original> originals = new ArrayList<>();
        List<Path> temporary = new ArrayList<>();
        List<Path> strangers = new ArrayList<>();
        for (Path file : filesBelow(folder.originals())) {
            Optional<Original> original = named(folder, file);
            if (file.startsWith(folder.incoming())) {
                temporary.add(file);
            } else if (original.isPresent()) {
                originals.add(original.get());
            } else {
                strangers.add(file);
            }
        }
        return new OriginalFiles(originals, temporary, strangers);
    }

    private static List<Path> filesBelow(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(p -> !Files.isDirectory(p, LinkOption.NOFOLLOW_LINKS))
                    .sorted()
                    .toList();
        }
    }

    private static Optional<Original> named(ArchiveFolder folder, Path file) throws IOException {
        String name = String.valueOf(file.getFileName());
        int dot = name.indexOf('.');
        if (!name.matches("[0-9a-f]{64}\\.[0-9a-z]{1,8}") || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return Optional.empty();
        }
        Original original = new Original(name.substring(0, dot), Files.size(file), name.substring(dot + 1));
        return folder.original(original).equals(file) ? Optional.of(original) : Optional.empty();
    }
}
