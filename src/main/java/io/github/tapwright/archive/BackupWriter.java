package io.github.tapwright.archive;

import io.github.tapwright.archive.BackupManifest.Item;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Progress;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * Writes an archive into one ZIP file: the list of files, the database, the originals.
 *
 * <p>The database is copied first and in one consistent state. Every original it refers to was on disk before,
 * so others may go on adding sittings meanwhile. Each byte is compared with its SHA-256 on the way.
 */
final class BackupWriter {

    private final ArchiveFolder folder;
    private final Database database;

    BackupWriter(ArchiveFolder folder, Database database) {
        this.folder = folder;
        this.database = database;
    }

    void write(Path target, Progress progress) {
        Path absolute = target.toAbsolutePath().normalize();
        if (Files.exists(absolute)) {
            throw new ArchiveException(target + " exists already; choose another name for the backup");
        }
        Path into = absolute.getParent();
        if (into == null || !Files.isDirectory(into)) {
            throw new ArchiveException("there is no folder for " + target + "; make it, or choose another name");
        }
        Path copy = absolute.resolveSibling(absolute.getFileName() + ".partial-" + UUID.randomUUID() + ".db");
        try {
            try {
                database.vacuumInto(copy);
                Durable.write(absolute, partial -> writeZip(partial, copy, manifest(copy), progress));
            } finally {
                Files.deleteIfExists(copy);
                progress.end();
            }
        } catch (IOException e) {
            throw Trouble.with(target, e);
        }
    }

    /** Everything the copied database refers to, and the originals nobody refers to besides. */
    private BackupManifest manifest(Path copy) throws IOException {
        Map<String, Item> items = new LinkedHashMap<>();
        items.put(ArchiveFolder.DATABASE, new Item(Sha256.of(copy), ArchiveFolder.DATABASE));
        try (Database snapshot = Database.open(copy)) {
            List<String> problems = snapshot.read(TableCheck::problems);
            if (!problems.isEmpty()) {
                throw new ArchiveException(problems.get(0) + ", so no good backup can be made and none was written; run"
                        + " verify, keep the folder as it is, and restore the latest backup into a new folder");
            }
            List<Original> referenced = snapshot.read(OriginalTable::all);
            List<Original> found = OriginalFiles.in(folder).originals();
            Stream.concat(referenced.stream(), found.stream()).forEach(o -> {
                String path = ArchiveFolder.relative(o);
                items.putIfAbsent(path, new Item(new Sha256(o.sha256(), o.sizeBytes()), path));
            });
        }
        return new BackupManifest(List.copyOf(items.values()));
    }

    private void writeZip(Path file, Path copy, BackupManifest manifest, Progress progress) throws IOException {
        try (OutputStream out = Files.newOutputStream(file, StandardOpenOption.CREATE_NEW);
                ZipOutputStream zip = new ZipOutputStream(new BufferedOutputStream(out))) {
            zip.setLevel(Deflater.BEST_SPEED);
            zip.putNextEntry(new ZipEntry(BackupManifest.ENTRY));
            zip.write(manifest.text().getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
            int done = 0;
            for (Item item : manifest.files()) {
                progress.at("copying " + item.path(), done++, manifest.files().size());
                Path from = item.path().equals(ArchiveFolder.DATABASE)
                        ? copy
                        : folder.root().resolve(item.path());
                add(zip, from, item);
            }
        }
    }

    private static void add(ZipOutputStream zip, Path from, Item item) throws IOException {
        zip.putNextEntry(new ZipEntry(item.path()));
        try (InputStream in = Files.newInputStream(from)) {
            if (!Sha256.copy(in, zip).equals(item.content())) {
                throw noGoodBackup(from + " is damaged");
            }
        } catch (NoSuchFileException e) {
            throw noGoodBackup(from + " is missing");
        }
        zip.closeEntry();
    }

    private static ArchiveException noGoodBackup(String reason) {
        return new ArchiveException(reason + ", so no good backup can be made and none was written; run verify, and put"
                + " a good copy in its place from an earlier backup");
    }
}
