package io.github.tapwright.desktop.part;

import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What levels of plucks are measured by when they are analysed anew.
 *
 * @param calibration another than before; empty for the one before, or for none if there was none or it is withdrawn
 * @param words how the choice reads
 */
public record LevelBasis(Optional<CalibrationId> calibration, String words) {

    /** As before, where no level rests on a calibration withdrawn. */
    public static final LevelBasis AS_BEFORE = new LevelBasis(Optional.empty(), "as before");

    private static final LevelBasis NONE = new LevelBasis(Optional.empty(), "no calibration: dB re full scale");

    /**
     * What the levels of a sitting can be measured by.
     *
     * @param run its plucks
     * @param kept every calibration of the archive
     * @param zone the workshop's
     * @return what holds if nothing else is chosen first
     */
    public static List<LevelBasis> of(PluckRun run, List<KeptCalibration> kept, ZoneId zone) {
        Optional<CalibrationId> now =
                run.calibration().filter(id -> run.withdrawn().isEmpty());
        LevelBasis first = now.map(id -> new LevelBasis(Optional.empty(), "calibration " + id + ", as before"))
                .orElse(NONE);
        return Stream.concat(Stream.of(first), others(run.calibration(), kept, zone))
                .toList();
    }

    /**
     * What levels that rest on a calibration can be measured by instead.
     *
     * @param instead of which
     * @param kept every calibration of the archive
     * @param zone the workshop's
     * @return without any first, if it is withdrawn; empty if there is no other
     */
    public static List<LevelBasis> insteadOf(KeptCalibration instead, List<KeptCalibration> kept, ZoneId zone) {
        return Stream.concat(
                        Stream.of(NONE).filter(none -> instead.withdrawn().isPresent()),
                        others(Optional.of(instead.id()), kept, zone))
                .toList();
    }

    private static Stream<LevelBasis> others(Optional<CalibrationId> but, List<KeptCalibration> kept, ZoneId zone) {
        return kept.stream()
                .filter(k -> k.withdrawn().isEmpty() && !Optional.of(k.id()).equals(but))
                .map(k -> new LevelBasis(Optional.of(k.id()), words(k, zone)));
    }

    private static String words(KeptCalibration kept, ZoneId zone) {
        return "calibration " + kept.id() + ", " + kept.takenAt().text(zone) + ", "
                + Figures.plain(kept.calibration().tone().levelDb()) + " dB"
                + kept.input().microphone().map(m -> ", " + m).orElse("")
                + kept.input().gain().map(g -> ", gain " + g).orElse("");
    }
}
