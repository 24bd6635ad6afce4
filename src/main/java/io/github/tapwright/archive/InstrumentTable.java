package io.github.tapwright.archive;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.FormerNumber;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.ShelfPlace;
import io.github.tapwright.sitting.SittingId;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Instruments in the database. */
final class InstrumentTable implements InstrumentStore {

    private static final String SHELF = """
            SELECT i.*, (SELECT count(*) FROM sitting c WHERE c.instrument_id = i.id) AS sittings,
                   (SELECT count(*) FROM sitting c WHERE c.instrument_id = i.id AND c.id IN (%1$s)) AS set_aside,
                   s.id AS last_id, s.taken_at, s.time_known, s.stage, s.strings, s.string_set, s.strings_fitted_on
            FROM instrument i LEFT JOIN sitting s ON s.id =
                (SELECT id FROM sitting WHERE instrument_id = i.id AND id NOT IN (%1$s)
                 ORDER BY taken_at DESC, id DESC LIMIT 1)
            ORDER BY i.shop_number
            """.formatted(OutOfUseTable.SITTINGS.ids());

    /** Rows that an edit replaced by one of another number: the next row put aside, or the instrument as it is now. */
    private static final String FORMER = """
            SELECT b.shop_number, b.replaced_at
            FROM instrument i JOIN instrument_before b ON b.instrument_id = i.id
            WHERE i.shop_number = ? AND b.shop_number <> coalesce(
                (SELECT n.shop_number FROM instrument_before n WHERE n.instrument_id = i.id AND n.id > b.id
                 ORDER BY n.id LIMIT 1), i.shop_number)
            ORDER BY b.id
            """;

    private static final String ONCE =
            "SELECT shop_number FROM instrument WHERE id IN (SELECT instrument_id FROM instrument_before WHERE shop_number = ?)"
                    + " ORDER BY shop_number";

    private final Database database;

    InstrumentTable(Database database) {
        this.database = database;
    }

    @Override
    public void add(Instrument instrument) {
        database.write(connection -> {
            refuseTaken(
                    connection,
                    instrument.shopNumber(),
                    Optional.empty(),
                    "edit that instrument, or choose another number");
            return row(instrument).run(connection);
        });
    }

    @Override
    public void replace(ShopNumber shopNumber, Instrument instrument) {
        ShopNumber now = instrument.shopNumber();
        database.write(connection -> {
            long id = required(connection, shopNumber);
            if (!now.equals(shopNumber)) {
                refuseTaken(
                        connection,
                        now,
                        Optional.of(shopNumber),
                        "if that is the same guitar, move the sittings of " + shopNumber
                                + " there with sitting edit, else choose another number");
            }
            return row(instrument).updateWhere(connection, "id", id);
        });
    }

    /** Two numbers that differ only in small and capital letters would make two guitars of one label. */
    private static void refuseTaken(
            Connection connection, ShopNumber wanted, Optional<ShopNumber> except, String remedy) throws SQLException {
        for (ShopNumber taken : numbers(connection)) {
            if (taken.equals(wanted)) {
                throw new RefusedEntryException("the shop number " + wanted + " is taken; " + remedy);
            }
            if (taken.differsOnlyInCase(wanted) && !except.equals(Optional.of(taken))) {
                throw new RefusedEntryException("the shop number " + wanted + " would differ from " + taken
                        + ", which is taken, only in small and capital letters; " + remedy);
            }
        }
    }

    private static List<ShopNumber> numbers(Connection connection) throws SQLException {
        return Query.all(
                connection, "SELECT shop_number FROM instrument ORDER BY shop_number", InstrumentTable::number);
    }

    private static ShopNumber number(Row row) throws SQLException {
        return new ShopNumber(row.text("shop_number"));
    }

    @Override
    public List<FormerNumber> formerNumbers(ShopNumber shopNumber) {
        return database.read(connection -> Query.all(connection, FORMER, InstrumentTable::former, shopNumber.text()));
    }

    private static FormerNumber former(Row row) throws SQLException {
        return new FormerNumber(number(row), row.instant("replaced_at"));
    }

    @Override
    public List<ShopNumber> perhapsMeant(ShopNumber shopNumber) {
        return database.read(connection -> {
            Set<ShopNumber> meant = new LinkedHashSet<>(numbers(connection));
            meant.removeIf(n -> !n.differsOnlyInCase(shopNumber));
            meant.addAll(Query.all(connection, ONCE, InstrumentTable::number, shopNumber.text()));
            return List.copyOf(meant);
        });
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
                row.integer("sittings") - row.integer("set_aside"),
                row.integer("set_aside"),
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
