package io.github.tapwright.exchange;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Turns maps, lists, texts and numbers into the text of one JSON document. */
final class JsonText {

    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private JsonText() {}

    /** The object with one key for each field, null where the value is unknown. */
    static <T> Map<String, @Nullable Object> object(List<Field<T>> fields, T thing) {
        Map<String, @Nullable Object> object = new LinkedHashMap<>();
        fields.forEach(f -> object.put(f.name(), f.read(thing).orElse(null)));
        return object;
    }

    /** One object for each thing. */
    static <T> List<Map<String, @Nullable Object>> array(List<Field<T>> fields, List<T> things) {
        return things.stream().map(t -> object(fields, t)).toList();
    }

    /** The document's text, ending in a line break. */
    static String of(Object document) {
        try {
            return MAPPER.writeValueAsString(document) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("maps, lists, texts and numbers always have a JSON form", e);
        }
    }
}
