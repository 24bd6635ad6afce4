package io.github.tapwright.demo;

import io.github.tapwright.demo.DemoInstrument.Layer;
import io.github.tapwright.demo.DemoSitting.Room;
import io.github.tapwright.mode.body.Plate;
import io.github.tapwright.mode.body.Soundhole;
import io.github.tapwright.synthesis.PlantedFault;
import java.util.List;
import java.util.Map;

/** The invented Oar Lane workshop in Tidewick, a harbour town that does not exist, and all its sittings. */
final class DemoWorkshop {

    static final String NAME = "Oar Lane workshop";
    static final String PLACE = "Tidewick, an invented harbour town";
    static final String ZONE = "Etc/GMT";

    private static final Soundhole HOLE = new Soundhole(0.0425, 0.0025, 38);
    private static final Layer THIN_SPRUCE = new Layer("spruce", 0.6);
    private static final Layer THIN_CEDAR = new Layer("cedar", 0.6);
    private static final Layer HONEYCOMB = new Layer("aramid honeycomb", 1.5);
    private static final Layer LIGHT_WOOD = new Layer("light wood, grain across", 1.4);

    private static final DemoInstrument I31 = guitar(
            "31", "solid", DemoInstrument.solid("spruce", 2.4), plate(78, 0.042, 172, 38), plate(160, 0.033, 222, 34));
    private static final DemoInstrument I32 = guitar(
            "32", "solid", DemoInstrument.solid("cedar", 2.6), plate(84, 0.041, 164, 34), plate(150, 0.034, 217, 32));
    private static final DemoInstrument I33 = guitar(
            "33",
            "honeycomb-sandwich",
            DemoInstrument.sandwich(THIN_SPRUCE, HONEYCOMB),
            plate(57, 0.044, 168, 36),
            plate(165, 0.033, 231, 34));
    private static final DemoInstrument I34 = guitar(
            "34",
            "honeycomb-sandwich",
            DemoInstrument.sandwich(THIN_CEDAR, HONEYCOMB),
            plate(54, 0.043, 173, 33),
            plate(158, 0.032, 236, 33));
    private static final DemoInstrument I35 = guitar(
            "35",
            "wood-sandwich",
            DemoInstrument.sandwich(THIN_SPRUCE, LIGHT_WOOD),
            plate(66, 0.043, 170, 36),
            plate(155, 0.034, 226, 33));
    private static final DemoInstrument I36 = guitar(
            "36",
            "wood-sandwich",
            DemoInstrument.sandwich(THIN_CEDAR, LIGHT_WOOD),
            plate(64, 0.042, 175, 35),
            plate(162, 0.032, 229, 35));
    private static final DemoInstrument I37 = guitar(
            "37",
            "solid",
            DemoInstrument.solid("spruce", 2.5),
            plate(81, 0.0415, 168, 36),
            plate(156, 0.0335, 219, 33));
    private static final DemoInstrument I38 = guitar(
            "38",
            "honeycomb-sandwich",
            DemoInstrument.sandwich(THIN_SPRUCE, HONEYCOMB),
            plate(56, 0.0435, 171, 35),
            plate(161, 0.0325, 233, 33));
    private static final DemoInstrument I39 = guitar(
            "39",
            "wood-sandwich",
            DemoInstrument.sandwich(THIN_SPRUCE, LIGHT_WOOD),
            plate(65, 0.0425, 172, 35),
            plate(158, 0.033, 228, 34));

    private DemoWorkshop() {}

    static List<DemoInstrument> instruments() {
        return List.of(I31, I32, I33, I34, I35, I36, I37, I38, I39);
    }

    static List<DemoSitting> sittings() {
        return List.of(
                DemoSitting.at(1, I31, "2024-02-06T10:20", DemoStage.BEFORE_FINISH, new Room(17.5, 52)),
                DemoSitting.at(2, I31, "2024-03-19T09:40", DemoStage.FINISHED, new Room(18.0, 54)),
                DemoSitting.at(3, I31, "2024-04-09T10:05", DemoStage.STRUNG, new Room(18.5, 55))
                        .note("first strings on for four days"),
                DemoSitting.at(4, I31, "2024-04-09T10:25", DemoStage.STRUNG, new Room(18.5, 55))
                        .covered()
                        .note("hole closed with a foam-backed disc"),
                DemoSitting.at(5, I31, "2024-10-15T09:50", DemoStage.LATER, new Room(18.5, 55))
                        .note("back for a look; new strings three days ago"),
                DemoSitting.at(6, I32, "2024-02-13T11:00", DemoStage.BEFORE_FINISH, new Room(17.0, 51))
                        .with(Map.of(2, PlantedFault.CLIPPED))
                        .note("one tap too hard, the input light went red"),
                DemoSitting.at(7, I32, "2024-04-16T10:15", DemoStage.STRUNG, new Room(18.5, 57)),
                DemoSitting.at(8, I32, "2024-11-05T14:30", DemoStage.LATER, new Room(17.5, 58))
                        .hum(-72),
                DemoSitting.at(9, I33, "2024-03-05T10:10", DemoStage.BEFORE_FINISH, new Room(17.5, 53)),
                DemoSitting.at(10, I33, "2024-04-23T09:30", DemoStage.FINISHED, new Room(18.0, 55))
                        .with(Map.of(3, PlantedFault.DOUBLE_STRIKE))
                        .note("the hammer bounced once"),
                DemoSitting.at(11, I33, "2024-05-14T10:00", DemoStage.STRUNG, new Room(19.0, 56)),
                DemoSitting.at(12, I33, "2024-12-03T10:40", DemoStage.LATER, new Room(19.0, 56))
                        .drifted(1.013)
                        .note("owner says it has opened up"),
                DemoSitting.at(13, I34, "2024-03-12T15:20", DemoStage.BEFORE_FINISH, new Room(18.0, 52)),
                DemoSitting.at(14, I34, "2024-05-28T10:10", DemoStage.STRUNG, new Room(19.5, 58))
                        .hum(-70),
                DemoSitting.at(15, I34, "2024-05-28T10:30", DemoStage.STRUNG, new Room(19.5, 58))
                        .covered()
                        .note("hole closed with a foam-backed disc"),
                DemoSitting.at(16, I35, "2024-06-04T09:45", DemoStage.BEFORE_FINISH, new Room(20.0, 47)),
                DemoSitting.at(17, I35, "2024-07-16T10:00", DemoStage.STRUNG, new Room(20.5, 46))
                        .with(Map.of(1, PlantedFault.NEXT_TOO_EARLY))
                        .note("hurried between the second and third tap"),
                DemoSitting.at(18, I35, "2025-01-14T11:15", DemoStage.LATER, new Room(17.0, 63))
                        .note("a wet month; nothing done to the instrument"),
                DemoSitting.at(19, I36, "2024-06-11T10:30", DemoStage.IN_THE_WHITE, new Room(20.0, 48)),
                DemoSitting.at(20, I36, "2024-08-06T09:20", DemoStage.FINISHED, new Room(20.5, 50))
                        .with(Map.of(5, PlantedFault.TOO_QUIET, 6, PlantedFault.RECORDING_ENDS))
                        .note("sixth tap hardly touched; stopped the recording too soon"),
                DemoSitting.at(21, I36, "2024-09-03T10:50", DemoStage.STRUNG, new Room(19.5, 53)),
                DemoSitting.at(22, I37, "2024-10-08T10:15", DemoStage.STRUNG, new Room(18.5, 54)),
                DemoSitting.at(23, I38, "2024-11-12T09:55", DemoStage.STRUNG, new Room(19.0, 54)),
                DemoSitting.at(24, I39, "2024-12-10T10:35", DemoStage.STRUNG, new Room(18.5, 53)));
    }

    /** A run up the fourth string of 31, whose fourth fret lies beside its main top. */
    static DemoRun run() {
        return new DemoRun(
                25,
                I31,
                "2024-10-15T09:20",
                DemoStage.LATER,
                new Room(18.5, 55),
                DemoRun.upTheString(4, 8, 4, 0.3),
                "one note dies away too soon");
    }

    private static DemoInstrument guitar(
            String number, String construction, DemoInstrument.Layers layers, Plate top, Plate back) {
        String bracing = "solid".equals(construction) ? "seven-strut fan" : "light lattice";
        return new DemoInstrument(number, construction, layers, bracing, 0.0142, HOLE, top, back);
    }

    private static Plate plate(double grams, double area, double frequencyHz, double q) {
        return new Plate(grams / 1000, area, frequencyHz, q);
    }
}
