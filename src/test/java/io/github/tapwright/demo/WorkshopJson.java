package io.github.tapwright.demo;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.tapwright.demo.DemoInstrument.Layer;
import io.github.tapwright.mode.HoleState;
import java.time.LocalDate;

/** The invented shelf and sittings as workshop.json; recordings-demo/README.md documents the format. */
final class WorkshopJson {

    static final String INVENTED =
            "Everything in this folder is invented: workshop, place, instruments, conditions and sounds.";

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private WorkshopJson() {}

    static ObjectNode all() {
        ObjectNode root = JSON.objectNode();
        root.put("invented", INVENTED);
        root.put("workshop", DemoWorkshop.NAME);
        root.put("place", DemoWorkshop.PLACE);
        root.put("time_zone", DemoWorkshop.ZONE);
        var instruments = root.putArray("instruments");
        DemoWorkshop.instruments().forEach(i -> instruments.add(instrument(i)));
        var sittings = root.putArray("sittings");
        DemoWorkshop.sittings().forEach(s -> sittings.add(sitting(s)));
        sittings.add(run(DemoWorkshop.run()));
        return root;
    }

    private static ObjectNode instrument(DemoInstrument guitar) {
        ObjectNode node = JSON.objectNode();
        node.put("number", guitar.shopNumber());
        node.put("kind", "classical");
        node.put("scale_length_mm", 650);
        node.put("string_count", 6);
        node.put("soundhole_diameter_mm", Math.round(2000 * guitar.hole().radiusMetres()));
        ObjectNode construction = node.putObject("construction");
        construction.put("kind", guitar.construction());
        construction.set("outer_skin", layer(guitar.layers().outerSkin()));
        guitar.layers().core().ifPresent(l -> construction.set("core", layer(l)));
        guitar.layers().innerSkin().ifPresent(l -> construction.set("inner_skin", layer(l)));
        construction.put("bracing", guitar.bracing());
        node.put("notes", "invented for the demo");
        return node;
    }

    private static ObjectNode layer(Layer layer) {
        return JSON.objectNode().put("material", layer.material()).put("thickness_mm", layer.thicknessMm());
    }

    private static ObjectNode sitting(DemoSitting sitting) {
        ObjectNode node = visit(sitting.instrument(), sitting.taken(), sitting.stage(), sitting.file(), sitting.room());
        node.set("strings", strings(sitting));
        node.put("hole", sitting.hole() == HoleState.OPEN ? "open" : "covered");
        node.put("support", "hung from the headstock, lower end on soft foam");
        node.put("strike_tool", "small hammer with a cork tip");
        node.put("strike_place", "bridge, between the third and fourth string");
        return recorded(node, sitting.note());
    }

    private static ObjectNode run(DemoRun run) {
        ObjectNode node = visit(run.instrument(), run.taken(), run.stage(), run.file(), run.room());
        node.put("procedure", "notes");
        node.set("strings", strings(run.taken(), run.stage(), "free"));
        node.put("hole", "open");
        node.put("support", "held as for playing");
        node.put("strike_tool", "thumb");
        node.put("strike_place", "over the lower edge of the soundhole");
        return recorded(node, run.note());
    }

    private static ObjectNode visit(
            DemoInstrument instrument, String taken, DemoStage stage, String file, DemoSitting.Room room) {
        return JSON.objectNode()
                .put("instrument", instrument.shopNumber())
                .put("taken", taken)
                .put("stage", stage.words)
                .put("file", file)
                .put("temperature_c", room.temperatureC())
                .put("relative_humidity_percent", room.relativeHumidityPercent());
    }

    private static ObjectNode recorded(ObjectNode node, String note) {
        node.put("microphone", "small omnidirectional measuring microphone");
        node.put("distance_m", BodySound.DISTANCE_METRES);
        node.put("gain", "30 dB");
        node.put("operator", "bench");
        return note.isEmpty() ? node : node.put("note", note);
    }

    private static ObjectNode strings(DemoSitting sitting) {
        return sitting.stage().strung()
                ? strings(sitting.taken(), sitting.stage(), "damped")
                : JSON.objectNode().put("state", "off");
    }

    private static ObjectNode strings(String taken, DemoStage stage, String state) {
        LocalDate day = LocalDate.parse(taken.substring(0, 10));
        int daysOld = stage == DemoStage.STRUNG ? 4 : 3;
        return JSON.objectNode()
                .put("state", state)
                .put("set", "nylon, medium tension")
                .put("fitted", day.minusDays(daysOld).toString());
    }
}
