package io.github.tapwright.sitting.live;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Procedure;
import java.time.Instant;

/**
 * What is known about a recording while it runs, so that a crash loses none of it.
 *
 * @param instrument whose recording it is
 * @param procedure what it is for; strikes set aside so far are in its settings
 * @param conditions what was written down so far
 * @param device what was listened to
 * @param format how
 * @param startedAt when
 */
public record CaptureNotes(
        ShopNumber instrument,
        Procedure procedure,
        Conditions conditions,
        String device,
        LiveFormat format,
        Instant startedAt) {

    /**
     * These notes with other conditions.
     *
     * @param known what is known now
     * @return changed notes
     */
    public CaptureNotes with(Conditions known) {
        return new CaptureNotes(instrument, procedure, known, device, format, startedAt);
    }

    /**
     * These notes for another procedure, or the same with other settings.
     *
     * @param wanted what the recording is for
     * @return changed notes
     */
    public CaptureNotes with(Procedure wanted) {
        return new CaptureNotes(instrument, wanted, conditions, device, format, startedAt);
    }

    /**
     * These notes for another instrument, where the recording was begun for the wrong one.
     *
     * @param other whose recording it is
     * @return changed notes
     */
    public CaptureNotes with(ShopNumber other) {
        return new CaptureNotes(other, procedure, conditions, device, format, startedAt);
    }
}
