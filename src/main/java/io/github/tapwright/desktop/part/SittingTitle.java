package io.github.tapwright.desktop.part;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.OutOfUse;
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
     * @return instrument, day, stage, and why it is set aside if it is
     */
    public String of(Sitting sitting) {
        return of(sitting.instrument(), sitting.takenAt(), sitting.conditions().stage(), sitting.setAside());
    }

    /**
     * What a sitting is called.
     *
     * @param sitting which
     * @return instrument, day, stage, and why it is set aside if it is
     */
    public String of(SittingSummary sitting) {
        return of(sitting.instrument(), sitting.takenAt(), sitting.stage(), sitting.setAside());
    }

    private String of(ShopNumber instrument, Moment taken, Optional<Stage> stage, Optional<OutOfUse> setAside) {
        return instrument + ", " + taken.text(zone)
                + stage.map(s -> ", " + s.words()).orElse("")
                + setAside.map(why -> ", set aside: " + why.reason()).orElse("");
    }
}
