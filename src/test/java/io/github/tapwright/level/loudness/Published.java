package io.github.tapwright.level.loudness;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The tables and expected values of [ISO532-1] in validation/iso532-1, with their sources. */
final class Published {

    private static final Path FILE = Path.of("validation", "iso532-1", "iso532-1.json");

    private Published() {}

    /** Whatever stands at the path of keys. */
    static JsonNode at(String... keys) {
        try {
            JsonNode node = new ObjectMapper().readTree(FILE.toFile());
            for (String key : keys) {
                node = node.required(key);
            }
            return node;
        } catch (IOException e) {
            throw new IllegalStateException("run the tests from the project's folder", e);
        }
    }

    static List<Double> numbers(JsonNode array) {
        List<Double> numbers = new ArrayList<>();
        array.forEach(n -> numbers.add(n.asDouble()));
        return numbers;
    }

    static double[] array(JsonNode array) {
        return numbers(array).stream().mapToDouble(Double::doubleValue).toArray();
    }
}
