package io.github.tapwright.archive;

import io.github.tapwright.archive.BackupManifest.Item;
import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Reads a backup's ZIP file into a folder, trusting nothing in it.
 *
 * <p>The list of files decides what is written: plain files under the paths an archive has, each no longer
 * than the list says and with the SHA-256 it says. Links are never made, whatever an entry claims to be. A list that
 * needs more than the disk has free, or more than 1 GB and 200 times the backup's own size, is refused before anything
 * is written.
 */
final class BackupReader {

    /** Enough for half a million originals. */
    private static final int LONGEST_MANIFEST_BYTES = 64 << 20;

    /** Sound of a real room hardly gets smaller; nothing but a trap unpacks to hundreds of times its size. */
    private static final long MOST_EXPANSION = 200;

    /** Always allowed, for an archive of little but an empty database. */
    private static final long FREE_EXPANSION_BYTES = 1L << 30;

    private final Path zipFile;

    BackupReader(Path zipFile) {
        this.zipFile = zipFile;
    }

    void readInto(Path folder, Progress progress) throws IOException {
        try (ZipFile zip = new ZipFile(zipFile.toFile())) {
            BackupManifest manifest = manifest(zip);
            refuseOthers(zip, manifest);
            refuseTooLarge(manifest, folder);
            refuseTrap(manifest);
            int done = 0;
            for (Item item : manifest.files()) {
                progress.at("restoring " + item.path(), done++, manifest.files().size());
                extract(zip, item, folder);
            }
        } catch (ZipException e) {
            throw new ArchiveException(
                    zipFile + " is cut short, damaged or no backup (" + e.getMessage()
                            + "); nothing was restored, copy the backup again or use another one",
                    e);
        }
    }

    private static BackupManifest manifest(ZipFile zip) throws IOException {
        try (InputStream in = zip.getInputStream(entry(zip, BackupManifest.ENTRY))) {
            byte[] text = in.readNBytes(LONGEST_MANIFEST_BYTES + 1);
            if (text.length > LONGEST_MANIFEST_BYTES) {
                throw BackupManifest.refused("its list of files is longer than any archive's");
            }
            return BackupManifest.parse(new String(text, StandardCharsets.UTF_8));
        }
    }

    private static ZipEntry entry(ZipFile zip, String path) {
        ZipEntry entry = zip.getEntry(path);
        if (entry == null) {
            throw BackupManifest.refused("it lacks " + path);
        }
        return entry;
    }

    private static void refuseOthers(ZipFile zip, BackupManifest manifest) {
        Set<String> expected = new HashSet<>(Set.of(BackupManifest.ENTRY));
        manifest.files().forEach(item -> expected.add(item.path()));
        List<String> others = zip.stream()
                .map(ZipEntry::getName)
                .filter(name -> !expected.remove(name))
                .toList();
        if (!others.isEmpty()) {
            throw BackupManifest.refused("it holds " + others.get(0) + ", which is not on its list of files");
        }
    }

    private static void refuseTooLarge(BackupManifest manifest, Path folder) {
        // Not Files.getFileStore: it looks the disk up in a list that containers and changed roots do not have.
        long free = folder.toFile().getUsableSpace();
        long left = free;
        for (Item item : manifest.files()) {
            left -= Math.min(left, item.content().sizeBytes());
            if (left == 0) {
                throw new ArchiveException("the backup needs more space than the " + free + " bytes free on the disk"
                        + " of " + folder + "; free some space, or restore onto another disk");
            }
        }
    }

    private void refuseTrap(BackupManifest manifest) throws IOException {
        long left = FREE_EXPANSION_BYTES + MOST_EXPANSION * Files.size(zipFile);
        for (Item item : manifest.files()) {
            left -= item.content().sizeBytes(); // their sum fits: they fit on the disk together
        }
        if (left < 0) {
            throw BackupManifest.refused("it would unpack to more than 1 GB and " + MOST_EXPANSION + " times its size");
        }
    }

    private static void extract(ZipFile zip, Item item, Path folder) throws IOException {
        Path target = folder.resolve(item.path());
        Files.createDirectories(Durable.parent(target));
        try (InputStream in = zip.getInputStream(entry(zip, item.path()));
                OutputStream out = Files.newOutputStream(target, StandardOpenOption.CREATE_NEW)) {
            Sha256 content = Sha256.copy(new LimitedStream(in, item.content().sizeBytes() + 1), out);
            if (content.sizeBytes() > item.content().sizeBytes()) {
                throw BackupManifest.refused(item.path() + " is longer than its list of files says");
            }
            if (!content.equals(item.content())) {
                throw BackupManifest.refused(item.path() + " does not fit its SHA-256");
            }
        }
        Durable.sync(target);
        Durable.sync(Durable.parent(target));
    }
}
