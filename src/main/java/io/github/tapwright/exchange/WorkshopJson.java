package io.github.tapwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.github.tapwright.exchange.Workshop.Visit;
import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.recording.UnreadableRecordingException;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.Procedure;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.StreamSupport;

/** Reads a workshop from its JSON file; what the file leaves out is unknown. */
public final class WorkshopJson {

    private WorkshopJson() {}

    /**
     * Reads a workshop.
     *
     * @param file in the form recordings-demo/README.md describes
     * @return the workshop
     * @throws UnreadableRecordingException if the file cannot be read
     * @throws RefusedEntryException if it is no JSON, or something in it cannot be right
     */
    public static Workshop read(Path file) {
        JsonNode document;
        try {
            document = new ObjectMapper().readTree(Files.readString(file));
        } catch (JsonProcessingException e) {
            throw new RefusedEntryException(file + " is no JSON (" + e.getOriginalMessage() + ", line "
                    + (e.getLocation() == null ? 0 : e.getLocation().getLineNr()) + "); correct it there");
        } catch (CharacterCodingException e) {
            throw new RefusedEntryException(file + " is no text in UTF-8; save it as UTF-8");
        } catch (IOException e) {
            throw new UnreadableRecordingException(file + " cannot be read; check its permissions and the disk", e);
        }
        try {
            return workshop(document);
        } catch (RefusedEntryException e) {
            throw e;
        } catch (IllegalArgumentException | DateTimeException e) {
            throw new RefusedEntryException(file + " describes no workshop: " + e.getMessage() + "; correct it there");
        }
    }

    private static Workshop workshop(JsonNode document) {
        return new Workshop(
                document.path("workshop").asText(),
                document.path("place").asText(),
                document.path("invented").asText(),
                ZoneId.of(document.path("time_zone").asText()),
                StreamSupport.stream(document.path("instruments").spliterator(), false)
                        .map(WorkshopJson::instrument)
                        .toList(),
                StreamSupport.stream(document.path("sittings").spliterator(), false)
                        .map(WorkshopJson::visit)
                        .toList());
    }

    private static Instrument instrument(JsonNode node) {
        JsonNode top = node.path("construction");
        return new Instrument(
                new ShopNumber(node.path("number").asText()),
                known(node, "kind", InstrumentKind::find).orElse(InstrumentKind.OTHER),
                new Body(
                        figure(node, "scale_length_mm"),
                        figure(node, "string_count").map(Double::intValue),
                        figure(node, "soundhole_diameter_mm"),
                        Optional.empty()),
                new Construction(
                        known(top, "kind", ConstructionKind::find),
                        layer(top.path("outer_skin")),
                        layer(top.path("core")),
                        layer(top.path("inner_skin")),
                        text(top, "bracing")),
                Optional.empty(),
                text(node, "notes"));
    }

    private static Layer layer(JsonNode node) {
        return new Layer(text(node, "material"), figure(node, "thickness_mm"));
    }

    private static Visit visit(JsonNode node) {
        return new Visit(
                new ShopNumber(node.path("instrument").asText()),
                LocalDateTime.parse(node.path("taken").asText()),
                conditions(node),
                text(node, "procedure").orElse(Procedure.BodyTaps.KEY),
                node.path("file").asText());
    }

    private static Conditions conditions(JsonNode node) {
        JsonNode strings = node.path("strings");
        return new Conditions(
                known(node, "stage", Stage::find),
                new Air(
                        figure(node, "temperature_c"),
                        figure(node, "relative_humidity_percent"),
                        figure(node, "rested_h")),
                new Strings(
                        known(strings, "state", StringState::find),
                        text(strings, "set"),
                        text(strings, "fitted").map(LocalDate::parse)),
                known(node, "hole", WorkshopJson::hole).orElse(HoleState.UNKNOWN),
                new Placing(text(node, "support"), text(node, "strike_tool"), text(node, "strike_place")),
                new Microphone(
                        text(node, "microphone"), figure(node, "distance_m").map(m -> 1000 * m), text(node, "gain")),
                figure(node, "added_mass_g").map(g -> new AddedMass(g, text(node, "added_mass_place"))),
                text(node, "operator"),
                text(node, "note"));
    }

    private static Optional<HoleState> hole(String text) {
        return Arrays.stream(HoleState.values())
                .filter(h -> h.name().equalsIgnoreCase(text))
                .findFirst();
    }

    /** A word of a short list; a mistyped one must not pass for "not said". */
    private static <T> Optional<T> known(JsonNode node, String key, Function<String, Optional<T>> find) {
        return text(node, key)
                .map(word -> find.apply(word)
                        .orElseThrow(() -> new IllegalArgumentException("'" + word + "' is no " + key)));
    }

    private static Optional<String> text(JsonNode node, String key) {
        return Optional.of(node.path(key)).filter(JsonNode::isTextual).map(JsonNode::textValue);
    }

    private static Optional<Double> figure(JsonNode node, String key) {
        return Optional.of(node.path(key)).filter(JsonNode::isNumber).map(JsonNode::doubleValue);
    }
}
