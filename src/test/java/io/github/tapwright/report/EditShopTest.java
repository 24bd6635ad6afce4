package io.github.tapwright.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.sitting.ShopProfile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EditShopTest {

    private static final String SVG = "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"10\" height=\"10\">%s</svg>";

    @TempDir
    Path folder;

    private ReportedWorkshop workshop;

    @BeforeEach
    void open() {
        workshop = new ReportedWorkshop(folder, "Heron");
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    @Test
    void whatIsNotSaidStaysAsItWas() throws IOException {
        assertThat(workshop.shop().show()).isEqualTo(ShopProfile.UNKNOWN);
        edit(Optional.of("Oar Lane"), Optional.of(List.of("3 Oar Lane", " ", "Tidewick")), Optional.empty());
        edit(Optional.empty(), Optional.empty(), Optional.of(svg("<rect width=\"9\" height=\"9\"/>")));
        ShopProfile shop = edit(Optional.of("Oar Lane workshop"), Optional.empty(), Optional.empty());

        assertThat(shop.name()).contains("Oar Lane workshop");
        assertThat(shop.address()).containsExactly("3 Oar Lane", "Tidewick");
        assertThat(shop.picture()).hasValueSatisfying(p -> {
            assertThat(p.fileName()).isEqualTo("emblem.svg");
            assertThat(p.original().sha256()).hasSize(64);
        });
    }

    @Test
    void aPictureGoesWhenAskedTo() throws IOException {
        edit(Optional.of("Oar Lane"), Optional.empty(), Optional.of(svg("<rect width=\"9\" height=\"9\"/>")));
        ShopProfile shop =
                workshop.shop().edit(new EditShop.Change(Optional.empty(), Optional.empty(), Optional.empty(), true));

        assertThat(shop.picture()).isEmpty();
        assertThat(shop.name()).contains("Oar Lane");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "<rect onclick=\"alert(1)\"/>",
                "<image href=\"http://example.org/a.png\"/>",
                "<foreignObject/>",
                "<use href=\"other.svg#a\"/>",
                "<rect style=\"fill:url( 'http://example.org/a' )\"/>",
                "<style>@import 'http://example.org/a.css';</style>",
                "<animate attributeName=\"href\"/>"
            })
    void aDrawingThatRunsOrFetchesIsRefusedAndNothingIsKept(String content) throws IOException {
        Path file = svg(content);

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> edit(Optional.of("Oar Lane"), Optional.empty(), Optional.of(file)))
                .withMessageContaining("runs or fetches");
        assertThat(workshop.shop().show()).isEqualTo(ShopProfile.UNKNOWN);
    }

    @Test
    void aDocumentTypeWithEntitiesIsRefused() throws IOException {
        Path file = Files.writeString(
                folder.resolve("bomb.svg"), "<!DOCTYPE svg [<!ENTITY a \"aaaa\">]><svg><text>&a;</text></svg>");

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> edit(Optional.empty(), Optional.empty(), Optional.of(file)))
                .withMessageContaining("without a document type");
    }

    @Test
    void whatIsInTheFileCountsNotItsName() throws IOException {
        Path text = Files.writeString(folder.resolve("emblem.png"), "no picture at all");
        Path cut = Files.write(
                folder.resolve("cut.png"),
                "\u0089PNG\r\n\u001a\n and then nothing".getBytes(StandardCharsets.ISO_8859_1));

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> edit(Optional.empty(), Optional.empty(), Optional.of(text)))
                .withMessageContaining("neither PNG nor JPEG nor SVG");
        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> edit(Optional.empty(), Optional.empty(), Optional.of(cut)))
                .withMessageContaining("damaged");
    }

    @Test
    void aPictureTooLargeIsRefused() throws IOException {
        Path file = Files.write(folder.resolve("large.png"), new byte[(int) Emblem.LONGEST + 1]);

        assertThatExceptionOfType(RefusedEntryException.class)
                .isThrownBy(() -> edit(Optional.empty(), Optional.empty(), Optional.of(file)))
                .withMessageContaining("longer than 2 MB");
    }

    private ShopProfile edit(Optional<String> name, Optional<List<String>> address, Optional<Path> picture)
            throws IOException {
        return workshop.shop().edit(new EditShop.Change(name, address, picture, false));
    }

    private Path svg(String content) throws IOException {
        return Files.writeString(folder.resolve("emblem.svg"), SVG.formatted(content));
    }
}
