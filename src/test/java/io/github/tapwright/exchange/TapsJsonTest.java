package io.github.tapwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.InventedResults;
import io.github.tapwright.exchange.TapsJson.Single;
import io.github.tapwright.sitting.SoundFacts;
import java.util.List;
import org.junit.jupiter.api.Test;

class TapsJsonTest {

    private static final SoundFacts FACTS =
            new SoundFacts("WAV, 24 bit integer", 48000, 2, 1, 5.25, List.of("the header promises 9 s"));

    @Test
    void oneFileIsOneObjectWithTheStableKeys() throws JsonProcessingException {
        JsonNode document = parse(TapsJson.each(List.of(single("a.wav"))));

        assertThat(document.path("file").textValue()).isEqualTo("a.wav");
        assertThat(document.path("sample_rate_hz").doubleValue()).isEqualTo(48000);
        assertThat(document.path("channels").intValue()).isEqualTo(2);
        assertThat(document.path("duration_s").doubleValue()).isEqualTo(5.25);
        assertThat(document.path("method_version").textValue()).isEqualTo("invented-1");
        assertThat(document.path("settings").path("low_hz").doubleValue()).isEqualTo(60);
    }

    @Test
    void aRejectedStrikeListsEveryReasonWorstFirst() throws JsonProcessingException {
        JsonNode strikes = parse(TapsJson.each(List.of(single("a.wav")))).path("strikes");

        assertThat(strikes).hasSize(3);
        assertThat(strikes.path(0).path("used").booleanValue()).isTrue();
        assertThat(strikes.path(0).path("rejected_because")).isEmpty();
        assertThat(strikes.path(2).path("used").booleanValue()).isFalse();
        assertThat(strikes.path(2).path("rejected_because"))
                .extracting(JsonNode::textValue)
                .containsExactly("clipped", "double strike");
    }

    @Test
    void aResonanceGivesItsUncertaintiesAndTheHalfWidthsOfNinetyFivePercent() throws JsonProcessingException {
        JsonNode resonance = parse(TapsJson.each(List.of(single("a.wav"))))
                .path("resonances")
                .path(0);

        assertThat(resonance.path("frequency_hz").doubleValue()).isEqualTo(98.42);
        assertThat(resonance.path("frequency_u_hz").doubleValue()).isEqualTo(0.061);
        assertThat(resonance.path("frequency_half_width_95_hz").doubleValue()).isGreaterThan(2.7 * 0.061);
        assertThat(resonance.path("q_u").doubleValue()).isEqualTo(0.7);
        assertThat(resonance.path("level_db").doubleValue()).isEqualTo(-3.2);
        assertThat(resonance.path("decay_time_u_s").isDouble()).isTrue();
        assertThat(resonance.path("name").textValue()).isEqualTo("main air");
        assertThat(resonance.path("key").textValue()).isEqualTo("air-1");
    }

    @Test
    void aResonanceWithoutANameHasNullAndSaysWhy() throws JsonProcessingException {
        JsonNode resonance = parse(TapsJson.each(List.of(single("a.wav"))))
                .path("resonances")
                .path(2);

        assertThat(resonance.path("name").isNull()).isTrue();
        assertThat(resonance.path("name_reason").textValue()).isEqualTo("two candidates");
    }

    @Test
    void noticesOfTheFileStandAmongTheWarnings() throws JsonProcessingException {
        JsonNode warnings = parse(TapsJson.each(List.of(single("a.wav")))).path("warnings");

        assertThat(warnings).hasSize(2);
        assertThat(warnings.path(0).textValue()).isEqualTo("a.wav: the header promises 9 s");
    }

    @Test
    void severalFilesAreAnArray() throws JsonProcessingException {
        JsonNode document = parse(TapsJson.each(List.of(single("a.wav"), single("b.wav"))));

        assertThat(document).extracting(d -> d.path("file").textValue()).containsExactly("a.wav", "b.wav");
    }

    @Test
    void filesTogetherAreOneObjectAndEachStrikeNamesItsFile() throws JsonProcessingException {
        JsonNode document = parse(TapsJson.together(
                List.of(new TapFile("a.wav", FACTS), new TapFile("b.wav", FACTS)), InventedResults.threeResonances()));

        assertThat(document.path("files")).extracting(JsonNode::textValue).containsExactly("a.wav", "b.wav");
        assertThat(document.path("recordings")).hasSize(2);
        assertThat(document.path("strikes"))
                .extracting(s -> s.path("file").textValue())
                .containsExactly("a.wav", "a.wav", "a.wav");
        assertThat(document.path("resonances")).hasSize(3);
    }

    @Test
    void whatZeroDecibelsAreIsSaid() throws JsonProcessingException {
        JsonNode document = parse(TapsJson.each(List.of(single("a.wav"))));

        assertThat(document.path("level_reference").textValue()).isEqualTo("strongest resonance found, listed or not");
        assertThat(document.path("response_curve").path("level_reference").textValue())
                .isEqualTo("highest point of the mean curve");
    }

    @Test
    void theCurveIsFourListsOfOneLength() throws JsonProcessingException {
        JsonNode curve = parse(TapsJson.each(List.of(single("a.wav")))).path("response_curve");

        assertThat(curve.path("resolution_hz").doubleValue()).isEqualTo(1.4);
        assertThat(List.of("frequency_hz", "level_db", "lower_db", "upper_db"))
                .allSatisfy(key -> assertThat(curve.path(key)).hasSize(941));
    }

    @Test
    void whereNothingWasFoundTheCurveIsNull() throws JsonProcessingException {
        Single nothing = new Single(new TapFile("a.wav", FACTS), InventedResults.nothing());
        JsonNode document = parse(TapsJson.each(List.of(nothing)));

        assertThat(document.path("response_curve").isNull()).isTrue();
        assertThat(document.path("resonances").isArray()).isTrue();
        assertThat(document.path("resonances")).isEmpty();
    }

    private static Single single(String name) {
        return new Single(new TapFile(name, FACTS), InventedResults.threeResonances());
    }

    private static JsonNode parse(String json) throws JsonProcessingException {
        return new ObjectMapper().readTree(json);
    }
}
