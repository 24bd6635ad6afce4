package io.github.tapwright.desktop.part;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingSummary;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What sittings are called on the screen: instrument, day, stage.
 *
 * @param zone the workshop's
 */
public record SittingTitle(ZoneId zone) {

    /**
     * What a sitting is called.
     *
     * @param sitting which
     * @return instrument, day, stage
     */
    public String of(Sitting sitting) {
        return of(sitting.instrument(), sitting.takenAt(), sitting.conditions().stage());
    }

    /**
     * What a sitting is called.
     *
     * @param sitting which
     * @return instrument, day, stage
     */
    public String of(SittingSummary sitting) {
        return of(sitting.instrument(), sitting.takenAt(), sitting.stage());
    }

    private String of(ShopNumber instrument, Moment taken, Optional<Stage> stage) {
        return instrument + ", " + taken.text(zone)
                + stage.map(s -> ", " + s.words()).orElse("");
    }
}
