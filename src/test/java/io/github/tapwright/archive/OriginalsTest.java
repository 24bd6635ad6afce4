package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.sitting.StagedOriginal;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OriginalsTest {

    @TempDir
    Path folder;

    private ArchiveFolder archive;
    private Originals originals;

    @BeforeEach
    void prepare() throws IOException {
        archive = new ArchiveFolder(folder.resolve("archive"));
        archive.prepare();
        archive.complete();
        originals = new Originals(archive);
    }

    @Test
    void liesUnderItsHashWithTheExtensionInLowerCase() throws IOException {
        // SHA-256 of "abc": [FIPS180-2], appendix B.1; from memory, to be verified.
        String hash = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
        StagedOriginal staged = originals.stage(file("note.FLAC", "abc"));

        originals.place(staged);

        assertThat(archive.root().resolve("originals/ba/" + hash + ".flac")).hasContent("abc");
        assertThat(staged.file()).doesNotExist();
    }

    @Test
    void fileNamesWithoutAUsableExtensionGetBin() throws IOException {
        assertThat(originals.stage(file("taps", "1")).original().extension()).isEqualTo("bin");
        assertThat(originals.stage(file("taps.w v", "2")).original().extension())
                .isEqualTo("bin");
        assertThat(originals.stage(file("taps.", "3")).original().extension()).isEqualTo("bin");
    }

    @Test
    void whatIsThereAlreadyIsComparedAndNotRewritten() throws IOException {
        Path kept = archive.original(originals.place(originals.stage(file("a.wav", "abc"))));
        FileTime old = FileTime.from(Instant.parse("2020-01-01T00:00:00Z"));
        Files.setLastModifiedTime(kept, old);

        originals.place(originals.stage(file("b.wave", "abc")));

        assertThat(Files.getLastModifiedTime(kept)).isEqualTo(old);
        assertThat(Durable.parent(kept)).isDirectoryContaining(p -> p.equals(kept));
        assertThat(Durable.parent(kept).toFile().list()).hasSize(1);
    }

    @Test
    void aDamagedOriginalIsNeitherUsedNorOverwritten() throws IOException {
        StagedOriginal staged = originals.stage(file("a.wav", "abc"));
        Path kept = archive.original(originals.place(staged));
        Files.writeString(kept, "abd");

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> originals.place(originals.stage(file("a.wav", "abc"))))
                .withMessageContaining("is damaged")
                .withMessageContaining(kept.toString());
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> originals.locate(staged.original()))
                .withMessageContaining("no longer fits its SHA-256");
        assertThat(kept).hasContent("abd");
    }

    @Test
    void aLinkInPlaceOfAnOriginalIsRefused() throws IOException {
        StagedOriginal staged = originals.stage(file("a.wav", "abc"));
        Path kept = archive.original(originals.place(staged));
        Path elsewhere = Files.move(kept, folder.resolve("elsewhere.wav"));
        Files.createSymbolicLink(kept, elsewhere);

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> originals.locate(staged.original()))
                .withMessageContaining("is a link");
    }

    private Path file(String name, String content) throws IOException {
        return Files.writeString(folder.resolve(name), content, StandardCharsets.US_ASCII);
    }
}
