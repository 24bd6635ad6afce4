package io.github.tapwright.exchange;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;

/**
 * A workshop described in a file: its instruments, and what was written down at each sitting.
 *
 * @param name what the workshop is called
 * @param place where it stands
 * @param remark what a reader must know about the file, such as that all of it is invented
 * @param zone where its clock goes
 * @param instruments its instruments
 * @param visits its sittings in the order of the file
 */
public record Workshop(
        String name, String place, String remark, ZoneId zone, List<Instrument> instruments, List<Visit> visits) {

    /** Keeps copies of the lists. */
    public Workshop {
        instruments = List.copyOf(instruments);
        visits = List.copyOf(visits);
    }

    /**
     * One sitting of the file.
     *
     * @param instrument whose sitting
     * @param taken when, by the workshop's clock
     * @param conditions what was written down
     * @param procedure what was done, as {@link Procedure#key()} names it
     * @param file name of the recording beside the file
     */
    public record Visit(
            ShopNumber instrument, LocalDateTime taken, Conditions conditions, String procedure, String file) {}
}
