package io.github.tapwright.desktop.part;

import io.github.tapwright.sitting.Analysis;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.KeptCalibration;
import io.github.tapwright.sitting.PluckRun;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ReanalyseSitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.statistics.Figures;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What levels of plucks are measured by when they are analysed anew.
 *
 * @param by what
 * @param words how the choice reads
 */
public record LevelBasis(By by, String words) {

    /** As before, where there are no levels that could be measured otherwise. */
    public static final LevelBasis AS_BEFORE = new LevelBasis(new By.AsBefore(), "as before");

    private static final LevelBasis NONE = new LevelBasis(new By.FullScale(), "no calibration: dB re full scale");

    /** One of three, so that what was chosen is done, whatever was withdrawn or taken back meanwhile. */
    public sealed interface By {

        /**
         * Analyses a sitting so.
         *
         * @param use analyses it
         * @param id which sitting
         * @param progress told about each file and step
         * @return its latest analysis then
         */
        Analysis reanalyse(ReanalyseSitting use, SittingId id, Progress progress);

        /** Whatever it was before. */
        record AsBefore() implements By {
            @Override
            public Analysis reanalyse(ReanalyseSitting use, SittingId id, Progress progress) {
                return use.reanalyse(id, Optional.empty(), progress);
            }
        }

        /** No calibration. */
        record FullScale() implements By {
            @Override
            public Analysis reanalyse(ReanalyseSitting use, SittingId id, Progress progress) {
                return use.withoutCalibration(id, progress);
            }
        }

        /** A calibration in use. */
        record Calibration(CalibrationId calibration) implements By {
            @Override
            public Analysis reanalyse(ReanalyseSitting use, SittingId id, Progress progress) {
                return use.reanalyse(id, calibration, progress);
            }
        }

        /** What an analysis of plucks was measured by; empty if that is withdrawn since. */
        static Optional<By> of(PluckRun run) {
            return run.withdrawn().isPresent()
                    ? Optional.empty()
                    : Optional.of(run.calibration().<By>map(Calibration::new).orElseGet(FullScale::new));
        }
    }

    /**
     * What the levels of a sitting can be measured by.
     *
     * @param run its plucks
     * @param kept every calibration of the archive
     * @param zone the workshop's
     * @return what holds if nothing else is chosen first
     */
    public static List<LevelBasis> of(PluckRun run, List<KeptCalibration> kept, ZoneId zone) {
        Stream<LevelBasis> now = By.of(run)
                .filter(By.Calibration.class::isInstance)
                .map(by -> new LevelBasis(by, "calibration " + run.calibration().orElseThrow() + ", as before"))
                .stream();
        return Stream.of(now, Stream.of(NONE), others(run.calibration(), kept, zone))
                .flatMap(each -> each)
                .toList();
    }

    /**
     * What levels that rest on a calibration can be measured by instead.
     *
     * @param instead of which
     * @param kept every calibration of the archive
     * @param zone the workshop's
     * @return none first
     */
    public static List<LevelBasis> insteadOf(KeptCalibration instead, List<KeptCalibration> kept, ZoneId zone) {
        return Stream.concat(Stream.of(NONE), others(Optional.of(instead.id()), kept, zone))
                .toList();
    }

    private static Stream<LevelBasis> others(Optional<CalibrationId> but, List<KeptCalibration> kept, ZoneId zone) {
        return kept.stream()
                .filter(k -> k.withdrawn().isEmpty() && !Optional.of(k.id()).equals(but))
                .map(k -> new LevelBasis(new By.Calibration(k.id()), words(k, zone)));
    }

    private static String words(KeptCalibration kept, ZoneId zone) {
        return "calibration " + kept.id() + ", " + kept.takenAt().text(zone) + ", "
                + Figures.plain(kept.calibration().tone().levelDb()) + " dB"
                + kept.input().microphone().map(m -> ", " + m).orElse("")
                + kept.input().gain().map(g -> ", gain " + g).orElse("");
    }
}
