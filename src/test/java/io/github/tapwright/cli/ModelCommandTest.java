package io.github.tapwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.demo.TrueBody;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The model from recordings to words: truth is the body from which the demo was made. */
class ModelCommandTest {

    @TempDir
    Path folder;

    private ArchiveRun archive;

    @BeforeEach
    void nothingKeptYet() {
        archive = ArchiveRun.in(folder);
    }

    private void add(String number, Path file, Object... more) {
        CommandRun run = archive.run(Stream.concat(
                        Stream.of("sitting", "add", number, file, "--stage", "strung", "--strings", "damped"),
                        Stream.of(more))
                .toArray());
        assertThat(run.code()).as(run.out() + run.err()).isZero();
    }

    private JsonNode model(Object... more) throws IOException {
        CommandRun run = archive.run(
                Stream.concat(Stream.of("model", 1, "--json"), Stream.of(more)).toArray());
        assertThat(run.code()).as(run.err()).isZero();
        return new ObjectMapper().readTree(run.out());
    }

    private static JsonNode quantity(JsonNode model, String key) {
        for (JsonNode quantity : model.path("quantities")) {
            if (quantity.path("quantity").asText().equals(key)) {
                return quantity;
            }
        }
        throw new AssertionError("no " + key);
    }

    private static void holds(JsonNode model, String key, double truth) {
        JsonNode quantity = quantity(model, key);
        assertThat(truth)
                .as("%s: %s", key, quantity)
                .isBetween(
                        quantity.path("low_95").doubleValue(),
                        quantity.path("high_95").doubleValue());
    }

    @ParameterizedTest
    @CsvSource({"31,2024-04-09", "34,2024-05-28"})
    void findsTheBodyBehindTheDemoWithinItsIntervals(String number, String day) throws IOException {
        TrueBody truth = TrueBody.of(number, day);
        assertThat(archive.run("instrument", "add", number, "--soundhole", 85).code())
                .isZero();
        Path open = CommandRun.DEMO.resolve(number + "-" + day + "-strung.flac");
        add(number, open, "--hole", "open", "--temperature", truth.celsius(), "--humidity", truth.percent());
        add(number, CommandRun.DEMO.resolve(number + "-" + day + "-strung-hole-covered.flac"), "--hole", "covered");
        add(
                number,
                truth.loaded(20, folder.resolve("loaded.wav")),
                "--hole",
                "open",
                "--added-mass",
                20,
                "--mass-place",
                "bridge, middle");

        JsonNode model = model("--volume", "14.2:0.2", "--top-thickness", 2.5, "--back");

        assertThat(model.path("covered_sitting").asText()).isEqualTo("2");
        assertThat(model.path("loaded_sitting").asText()).isEqualTo("3");
        holds(model, "helmholtz", truth.body().helmholtzFrequencyHz());
        holds(model, "top_alone", truth.body().top().frequencyHz());
        holds(model, "top_mass", truth.body().top().massKilograms());
        holds(model, "top_stiffness", truth.body().top().stiffnessNewtonsPerMetre());
        holds(model, "top_area", truth.body().top().areaSquareMetres());
        holds(model, "helmholtz_computed", truth.body().helmholtzFrequencyHz());
        assertThat(quantity(model, "helmholtz").path("value_u").doubleValue()).isBetween(1.0, 3.0);
        assertThat(model.path("naive_mass_kg").doubleValue())
                .isGreaterThan(1.08 * truth.body().top().massKilograms());
    }

    @Test
    void saysWhatIsKnownWhatIsMissingAndWhatToDoNext() throws IOException {
        assertThat(archive.run("instrument", "add", "31", "--soundhole", 85).code())
                .isZero();
        add("31", CommandRun.DEMO.resolve("31-2024-04-09-strung.flac"), "--hole", "open");
        CommandRun alone = archive.run("model", 1);
        assertThat(alone.code()).isEqualTo(ExitCode.NOTHING_USABLE);
        assertThat(alone.out())
                .contains("hole covered: none found", "Next: one more sitting with the hole covered")
                .contains("is not the air's frequency in the hole");

        add("31", CommandRun.DEMO.resolve("31-2024-04-09-strung-hole-covered.flac"), "--hole", "covered");
        CommandRun two = archive.run(
                "model",
                1,
                "--what-if",
                "stiffness=-5%,hole=+1mm",
                "--top-thickness",
                2.5,
                "--csv",
                folder.resolve("m.csv"));
        assertThat(two.code()).as(two.err()).isZero();
        assertThat(two.out())
                .contains("air in the hole, rigid walls", "Next: one more sitting with the hole open and 10 to 25 g")
                .contains("unseen spot", "What if: stiffness −5.0 %, radius of the hole +1.0 mm", "cents");
        assertThat(Files.readAllLines(folder.resolve("m.csv")))
                .hasSizeGreaterThan(13)
                .first()
                .asString()
                .contains("what_if_stiffness_share", "covered_sitting", "set_up_spread_frequency_percent");
        assertThat(Files.readString(folder.resolve("m.csv")))
                .contains("what_if_resonance_1,Hz,", "what_if_resonance_1_shift,Hz,", "assumed, not measured");
        assertThat(archive.run("model", 1, "--what-if", "mass=+5g").out())
                .contains("a change of mass needs the top's mass");
        assertThat(model("--what-if", "volume=-0.5l", "--volume", 14.2)
                        .path("what_if")
                        .path("resonances"))
                .hasSize(3)
                .first()
                .satisfies(r -> assertThat(r.path("shift_hz").doubleValue()).isCloseTo(1.3, within(0.5)));
    }

    @Test
    void wrongUseIsRefusedInOneLine() {
        assertThat(archive.run("instrument", "add", "31").code()).isZero();
        add("31", CommandRun.DEMO.resolve("31-2024-04-09-strung-hole-covered.flac"), "--hole", "covered");
        assertThat(archive.run("model", 1).err())
                .contains("hole covered; choose the sitting")
                .hasLineCount(1);
        assertThat(archive.run("model", 7).err())
                .contains("there is no sitting 7")
                .hasLineCount(1);
        assertThat(archive.run("model", 1, "--what-if", "mass=+5kg").err())
                .contains("mass=+5g", "not 'mass=+5kg'")
                .hasLineCount(1);
        assertThat(archive.run("model", 1, "--volume", "big").err())
                .contains("litres such as 14.2")
                .hasLineCount(1);
        assertThat(archive.run("sitting", "edit", 1, "--mass-place", "bridge").err())
                .contains("say its grams with --added-mass")
                .hasLineCount(1);
    }
}
