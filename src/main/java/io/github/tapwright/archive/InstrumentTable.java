package io.github.tapwright.archive;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.ShelfPlace;
import io.github.tapwright.sitting.SittingId;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** Instruments in the database. */
final class InstrumentTable implements InstrumentStore {

    private static final String SHELF = """
            SELECT i.*, (SELECT count(*) FROM sitting c WHERE c.instrument_id = i.id) AS sittings,
                   s.id AS last_id, s.taken_at, s.time_known, s.stage, s.strings, s.string_set, s.strings_fitted_on
            FROM instrument i LEFT JOIN sitting s ON s.id =
                (SELECT id FROM sitting WHERE instrument_id = i.id ORDER BY taken_at DESC, id DESC LIMIT 1)
            ORDER BY i.shop_number
            """;

    private final Database database;

    InstrumentTable(Database database) {
        this.database = database;
    }

    @Override
    public void add(Instrument instrument) {
        database.write(connection -> {
            if (id(connection, instrument.shopNumber()).isPresent()) {
                throw new RefusedEntryException("the shop number " + instrument.shopNumber()
                        + " is taken; edit that instrument, or choose another number");
            }
            return row(instrument).run(connection);
        });
    }

    @Override
    public void replace(Instrument instrument) {
        String number = instrument.shopNumber().text();
        int changed = database.write(connection -> row(instrument).updateWhere(connection, "shop_number", number));
        if (changed == 0) {
            throw unknown(instrument.shopNumber());
        }
    }

    @Override
    public Optional<Instrument> find(ShopNumber shopNumber) {
        return database.read(connection -> Query.one(
                connection,
                "SELECT * FROM instrument WHERE shop_number = ?",
                InstrumentTable::instrument,
                shopNumber.text()));
    }

    @Override
    public List<Instrument> all() {
        return database.read(connection ->
                Query.all(connection, "SELECT * FROM instrument ORDER BY shop_number", InstrumentTable::instrument));
    }

    @Override
    public List<ShelfPlace> shelf() {
        return database.read(connection -> Query.all(connection, SHELF, InstrumentTable::place));
    }

    private static ShelfPlace place(Row row) throws SQLException {
        Optional<SittingId> last = row.optionalInteger("last_id").map(SittingId::new);
        return new ShelfPlace(
                instrument(row),
                row.integer("sittings"),
                last.isEmpty()
                        ? Optional.empty()
                        : Optional.of(new ShelfPlace.LastSitting(
                                last.get(),
                                SittingReader.takenAt(row),
                                ConditionColumns.stage(row),
                                ConditionColumns.strings(row))));
    }

    /** The row number of an instrument. */
    static Optional<Long> id(Connection connection, ShopNumber shopNumber) throws SQLException {
        return Query.one(
                connection,
                "SELECT id FROM instrument WHERE shop_number = ?",
                row -> row.longInteger("id"),
                shopNumber.text());
    }

    /** The row of an instrument that must be on the shelf. */
    static long required(Connection connection, ShopNumber shopNumber) throws SQLException {
        return id(connection, shopNumber).orElseThrow(() -> unknown(shopNumber));
    }

    static RefusedEntryException unknown(ShopNumber shopNumber) {
        return new RefusedEntryException("no instrument has the shop number " + shopNumber + "; add it first");
    }

    private static Insert row(Instrument instrument) {
        Body body = instrument.body();
        Construction construction = instrument.construction();
        return Insert.into("instrument")
                .put("shop_number", instrument.shopNumber().text())
                .put("kind", instrument.kind().key())
                .put("scale_length_mm", body.scaleLengthMm())
                .put("string_count", body.stringCount())
                .put("soundhole_diameter_mm", body.soundholeDiameterMm())
                .put("body_notes", body.notes())
                .put("construction", construction.kind().map(ConstructionKind::key))
                .put("outer_skin", construction.outerSkin().material())
                .put("outer_skin_mm", construction.outerSkin().thicknessMm())
                .put("core", construction.core().material())
                .put("core_mm", construction.core().thicknessMm())
                .put("inner_skin", construction.innerSkin().material())
                .put("inner_skin_mm", construction.innerSkin().thicknessMm())
                .put("bracing", construction.bracing())
                .put("nickname", instrument.nickname())
                .put("notes", instrument.notes());
    }

    private static Instrument instrument(Row row) throws SQLException {
        return new Instrument(
                new ShopNumber(row.text("shop_number")),
                row.requiredKey("kind", InstrumentKind::find),
                new Body(
                        row.optionalNumber("scale_length_mm"),
                        row.optionalInteger("string_count"),
                        row.optionalNumber("soundhole_diameter_mm"),
                        row.optionalText("body_notes")),
                new Construction(
                        row.key("construction", ConstructionKind::find),
                        layer(row, "outer_skin"),
                        layer(row, "core"),
                        layer(row, "inner_skin"),
                        row.optionalText("bracing")),
                row.optionalText("nickname"),
                row.optionalText("notes"));
    }

    private static Layer layer(Row row, String column) throws SQLException {
        return new Layer(row.optionalText(column), row.optionalNumber(column + "_mm"));
    }
}
