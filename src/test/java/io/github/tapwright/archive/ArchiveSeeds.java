package io.github.tapwright.archive;

import io.github.tapwright.fuzz.SeedFolder;
import io.github.tapwright.sitting.Progress;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipFile;

/** Seeds of archives and backups, from an invented workshop. */
public final class ArchiveSeeds {

    private ArchiveSeeds() {}

    public static void write(Path resources) throws IOException {
        Path folder = Files.createTempDirectory("seeds");
        try {
            backup(resources, folder);
        } finally {
            Restore.delete(folder);
        }
        blobs(resources);
        new SeedFolder(resources, DatabaseFuzzTest.class, "everythingIsReadOrRefused")
                .put("sound", new byte[0])
                .put("header", new byte[] {0, 0, 16, 2, 0, 0, 17, 2})
                .put("pages", new byte[] {1, 0, 0, 9, 0, 16, 3, -1, 0, 32, 5, -1});
        values(new SeedFolder(resources, DatabaseTextFuzzTest.class, "everythingIsReadOrRefused"));
    }

    private static void backup(Path resources, Path folder) throws IOException {
        Path backup = folder.resolve("backup.zip");
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            workshop.add(TestWav.writeRoom(folder.resolve("a.wav"), 1));
            workshop.archive.backUp(backup, Progress.SILENT);
        }
        new SeedFolder(resources, RestoreFuzzTest.class, "isRestoredOrRefused")
                .put("backup.zip", Files.readAllBytes(backup));
        try (ZipFile zip = new ZipFile(backup.toFile());
                var list = zip.getInputStream(zip.getEntry(BackupManifest.ENTRY))) {
            new SeedFolder(resources, BackupManifestFuzzTest.class, "isReadOrRefused")
                    .put("manifest.txt", list.readAllBytes());
        }
    }

    private static void blobs(Path resources) throws IOException {
        var taps = TestResults.of(101.5, 204.25, "taps-1");
        new SeedFolder(resources, BlobFuzzTest.class, "aCurveIsReadOrRefused")
                .put("curve", CurveBlob.of(taps.curve().orElseThrow()));
        new SeedFolder(resources, BlobFuzzTest.class, "resonancesAreReadOrRefused")
                .put("resonances", TapDigest.of(taps.resonances()));
        byte[] octaves = ByteBuffer.allocate(20)
                .putInt(1)
                .putInt(1)
                .putInt(-3)
                .putDouble(-20.5)
                .array();
        new SeedFolder(resources, BlobFuzzTest.class, "thirdOctavesAreReadOrRefused").put("octaves", octaves);
    }

    /** A column's number in two bytes, then what shall stand there. */
    private static void values(SeedFolder folder) throws IOException {
        folder.put("path", "\u0000\u0001../../elsewhere")
                .put("letters", "\u0000 not a number")
                .put("infinite", "\u000009e999")
                .put("blank", "\u0001\u0001");
    }
}
