package io.github.tapwright.archive;

import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LiveFormat;
import java.sql.SQLException;

/** The notes of a live recording as columns. */
final class CaptureColumns {

    private CaptureColumns() {}

    static Insert put(Insert row, CaptureNotes notes) {
        row.put("started_at", notes.startedAt())
                .put("device", notes.device())
                .put("rate_hz", notes.format().rateHz())
                .put("channel_count", notes.format().channelCount())
                .put("bits", notes.format().bits());
        ProcedureColumns.put(row, notes.procedure());
        return ConditionColumns.put(row, notes.conditions());
    }

    static CaptureNotes read(Row row) throws SQLException {
        return new CaptureNotes(
                new ShopNumber(row.text("shop_number")),
                ProcedureColumns.read(row),
                ConditionColumns.read(row),
                row.text("device"),
                new LiveFormat(row.integer("rate_hz"), row.integer("channel_count"), row.integer("bits")),
                row.instant("started_at"));
    }
}
