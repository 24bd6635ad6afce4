package io.github.tapwright.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;

/** Writes exported files into a folder. */
public final class ExportFolder {

    private ExportFolder() {}

    /**
     * Writes files in UTF-8; one that is there already is replaced once the new one is whole.
     *
     * @param folder where to; made if it does not exist
     * @param files text of each file by its name
     * @throws IOException if a file cannot be written
     */
    public static void write(Path folder, Map<String, String> files) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path part = folder.resolve(file.getKey() + ".part");
            try {
                Files.writeString(part, file.getValue());
                Files.move(part, folder.resolve(file.getKey()), StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
        }
    }
}
