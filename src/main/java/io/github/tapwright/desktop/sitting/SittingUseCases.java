package io.github.tapwright.desktop.sitting;

import io.github.tapwright.comparison.StudyBench;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.AddSitting;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.ListInstruments;
import io.github.tapwright.sitting.ListSittings;
import io.github.tapwright.sitting.ShowSitting;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.live.KeepCapture;
import io.github.tapwright.sitting.live.RecordLive;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;

/**
 * What a sitting is made with.
 *
 * @param listInstruments whom one can choose
 * @param listSittings finds the last one, whose conditions are remembered
 * @param showSitting reads it
 * @param addSitting keeps recordings made elsewhere
 * @param recordLive opens the microphone
 * @param keepCapture keeps what it recorded
 * @param studyBench keeps a repeatability study
 * @param clock tells the day, in the workshop's zone
 */
public record SittingUseCases(
        ListInstruments listInstruments,
        ListSittings listSittings,
        ShowSitting showSitting,
        AddSitting addSitting,
        RecordLive recordLive,
        KeepCapture keepCapture,
        StudyBench studyBench,
        Clock clock) {

    /** The day of a sitting that is made now. */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** What was written down last about an instrument, of two sittings of a day the later kept; empty before its first. */
    Optional<Conditions> lastConditions(ShopNumber of) {
        return listSittings.of(of).stream()
                .filter(s -> s.setAside().isEmpty())
                .max(Comparator.comparing((SittingSummary s) -> s.takenAt().instant())
                        .thenComparing(s -> s.id().number()))
                .map(s -> showSitting.show(s.id()).conditions());
    }
}
