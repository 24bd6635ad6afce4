package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Databases no version of this program wrote, as a backup from a stranger may hold one. */
class HostileDatabaseTest {

    private static final List<String> WRONG = List.of("../../elsewhere", "9e999", "", "-1");

    @TempDir
    Path folder;

    @Test
    void aWrongValueInAnyColumnIsRefusedAsDamage() throws IOException {
        FuzzedArchive archive = FuzzedArchive.in(folder);
        for (int column = 0; column < archive.columnCount(); column++) {
            String value = WRONG.get(column % WRONG.size());
            archive.put(archive.database());
            Optional<String> changed = archive.setEveryRow(column, value);
            try {
                if (changed.isPresent()) {
                    archive.readAll();
                }
            } catch (ArchiveException e) {
                assertThat(e.getMessage()).as("%s", changed).isNotBlank();
            } catch (RuntimeException e) {
                throw new AssertionError(changed + " = '" + value + "'", e);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "%s",
                "../../elsewhere.wav",
                "..",
                "a/../../../elsewhere.wav",
                "..\\\\elsewhere.wav",
                "C:elsewhere.wav"
            })
    void aRecordingsNameLeadsToNoFileElsewhere(String name) throws IOException {
        Path elsewhere = Files.writeString(folder.resolve("elsewhere.wav"), "somebody's own file ".repeat(9));
        FuzzedArchive archive = FuzzedArchive.in(folder);
        Optional<String> set = archive.setEveryRow("capture", "file_name", name.formatted(elsewhere));

        assertThat(set).isPresent();
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(archive::readAll)
                .withMessageContaining("no name this program gives");
        assertThat(elsewhere).hasContent("somebody's own file ".repeat(9));
    }
}
