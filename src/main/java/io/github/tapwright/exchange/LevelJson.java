package io.github.tapwright.exchange;

import io.github.tapwright.level.Calibration;
import io.github.tapwright.level.ChannelLevels;
import io.github.tapwright.sitting.AppliedCalibration;
import io.github.tapwright.sitting.MeasuredLevels;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * The JSON of measured levels. The levels of the main channel stand at the top, those of every channel below
 * "channel_levels".
 */
public final class LevelJson {

    private LevelJson() {}

    /**
     * Recordings measured one by one.
     *
     * @param measured at least one
     * @param calibration what they were calibrated by; empty for levels re full scale
     * @return an object if there is one recording, an array if there are several
     */
    public static String each(List<MeasuredLevels> measured, Optional<AppliedCalibration> calibration) {
        List<Map<String, @Nullable Object>> documents =
                measured.stream().map(m -> document(m, calibration)).toList();
        return JsonText.of(documents.size() == 1 ? documents.get(0) : documents);
    }

    private static Map<String, @Nullable Object> document(
            MeasuredLevels measured, Optional<AppliedCalibration> calibration) {
        Map<String, @Nullable Object> document = JsonText.object(LevelFields.FILE, measured);
        document.put("calibrated", measured.report().settings().reference() instanceof Calibration);
        document.put("reference", measured.report().settings().reference().unit());
        document.putAll(JsonText.object(LevelFields.CHANNEL, measured.mainChannel()));
        document.putAll(JsonText.object(LevelFields.PROGRAMME, measured));
        document.put(
                "third_octaves",
                JsonText.array(LevelFields.BAND, measured.mainChannel().thirdOctaves()));
        document.put("channel_levels", channels(measured.report().channels()));
        document.put(
                "calibration",
                calibration
                        .map(c -> JsonText.object(CalibrationFields.APPLIED, c))
                        .orElse(null));
        document.put("warnings", measured.warnings());
        document.put("method_version", measured.report().methodVersion());
        document.put(
                "settings",
                JsonText.object(LevelFields.SETTINGS, measured.report().settings()));
        return document;
    }

    private static List<Map<String, @Nullable Object>> channels(List<ChannelLevels> channels) {
        return IntStream.range(0, channels.size())
                .mapToObj(c -> {
                    Map<String, @Nullable Object> object = new LinkedHashMap<>();
                    object.put("channel", c + 1);
                    object.putAll(JsonText.object(LevelFields.CHANNEL, channels.get(c)));
                    object.put(
                            "third_octaves",
                            JsonText.array(LevelFields.BAND, channels.get(c).thirdOctaves()));
                    return object;
                })
                .toList();
    }
}
