package io.github.tapwright.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.InventedResults;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.GivenName;
import io.github.tapwright.sitting.KeptRecording;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SoundFacts;
import java.io.IOException;
import java.io.StringReader;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class ArchiveTablesTest {

    private static final Instant NOON = Instant.parse("2026-03-14T12:00:00Z");

    @Test
    void whatNobodyWroteDownIsAnEmptyCellAndNamedAmongTheUnknown() throws IOException {
        CSVRecord row = rows("sittings.csv").get(0);

        assertThat(row.get("shop_number")).isEqualTo("117");
        assertThat(row.get("relative_humidity_percent")).isEmpty();
        assertThat(row.get("unknown")).contains("relative humidity", "soundhole");
    }

    @Test
    void theMakersNameStandsInTheTableOfResonances() throws IOException {
        assertThat(rows("resonances.csv"))
                .extracting(r -> r.get("name"))
                .containsExactly("main air", "main top", "main back");
        assertThat(rows("resonances.csv").get(2).get("key")).isEqualTo("back-monopole");
        assertThat(rows("resonances.csv").get(0).get("level_reference")).startsWith("strongest resonance found");
    }

    @Test
    void everyStrikeLeadsBackToItsRecordingAndSitting() throws IOException {
        CSVRecord strike = rows("strikes.csv").get(2);

        assertThat(strike.get("file")).isEqualTo("taps.wav");
        assertThat(strike.get("sitting")).isEqualTo(rows("sittings.csv").get(0).get("sitting"));
        assertThat(strike.get("rejected_because")).isEqualTo("clipped; double strike");
        assertThat(rows("recordings.csv").get(0).get("sha256")).isEqualTo("ab".repeat(32));
    }

    @Test
    void theJsonHoldsEveryInstrumentAndEveryAnalysis() throws JsonProcessingException {
        JsonNode document = new ObjectMapper()
                .readTree(ArchiveJson.everything(List.of(instrument()), List.of(sitting()), List.of(), List.of()));

        assertThat(document.path("instruments").path(0).path("shop_number").textValue())
                .isEqualTo("117");
        JsonNode sitting = document.path("sittings").path(0);
        assertThat(sitting.path("temperature_c").isNull()).isTrue();
        assertThat(sitting.path("unknown")).extracting(JsonNode::textValue).contains("temperature");
        assertThat(sitting.path("analyses").path(0).path("resonances")).hasSize(3);
        assertThat(sitting.path("names_given").path(0).path("name").textValue()).isEqualTo("main back");
    }

    private static List<CSVRecord> rows(String table) throws IOException {
        Map<String, String> tables = ArchiveCsv.tables(List.of(instrument()), List.of(sitting()), List.of(), List.of());
        CSVFormat format = CSVFormat.RFC4180.builder().setHeader().get();
        return format.parse(new StringReader(tables.getOrDefault(table, ""))).getRecords();
    }

    private static Instrument instrument() {
        return Instrument.of(new ShopNumber("117"), InstrumentKind.CLASSICAL);
    }

    private static Sitting sitting() {
        SoundFacts facts = new SoundFacts("WAV, 24 bit integer", 48000, 1, 0, 5.25, List.of());
        return new Sitting(
                new SittingId(1),
                new ShopNumber("117"),
                Moment.at(NOON),
                NOON,
                Conditions.UNKNOWN,
                List.of(new KeptRecording(new Original("ab".repeat(32), 1000, "wav"), "taps.wav", facts)),
                List.of(new Analysis(1, NOON, new Findings.OfTaps(InventedResults.threeResonances()))),
                List.of(new GivenName(231.5, Optional.of("main back"), NOON)),
                Optional.empty());
    }
}
