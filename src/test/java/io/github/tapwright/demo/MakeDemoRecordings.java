package io.github.tapwright.demo;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.tapwright.synthesis.SyntheticTaps;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes all demo recordings with workshop.json and truth.json; the same bytes every time. */
public final class MakeDemoRecordings {

    private MakeDemoRecordings() {}

    /**
     * Writes the demo.
     *
     * @param args the folder to write into
     * @throws IOException if a file cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        Files.createDirectories(folder);
        ObjectNode truth = JsonNodeFactory.instance.objectNode();
        truth.put("invented", WorkshopJson.INVENTED);
        var sittings = truth.putArray("sittings");
        for (DemoSitting sitting : DemoWorkshop.sittings()) {
            BodySound sound = BodySound.of(sitting);
            SyntheticTaps taps = DemoRecording.of(sitting, sound);
            FlacFile.write(
                    folder.resolve(sitting.file()), DemoRecording.quantised(taps.recording()), DemoRecording.RATE_HZ);
            sittings.add(TruthJson.sitting(sitting, sound, taps));
        }
        DemoRun run = DemoWorkshop.run();
        FlacFile.write(folder.resolve(run.file()), run.quantised(), DemoRecording.RATE_HZ);
        truth.putArray("runs").add(TruthJson.run(run));
        write(folder.resolve("workshop.json"), WorkshopJson.all());
        write(folder.resolve("truth.json"), truth);
    }

    private static void write(Path file, JsonNode json) throws IOException {
        DefaultIndenter lines = new DefaultIndenter("  ", "\n");
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
        printer.indentArraysWith(lines);
        printer.indentObjectsWith(lines);
        Files.writeString(file, new ObjectMapper().writer(printer).writeValueAsString(json) + "\n");
    }
}
