package io.github.tapwright.archive;

import io.github.tapwright.sitting.NewShop;
import io.github.tapwright.sitting.Original;
import io.github.tapwright.sitting.ShopPicture;
import io.github.tapwright.sitting.ShopProfile;
import io.github.tapwright.sitting.ShopStore;
import io.github.tapwright.sitting.StagedOriginal;
import java.io.IOException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;

/** What the workshop says of itself in the database, its picture beside it. */
final class ShopTable implements ShopStore {

    private static final String LATEST = "SELECT s.*, o.size_bytes, o.extension FROM shop s LEFT JOIN original o ON"
            + " o.sha256 = s.picture_sha256 ORDER BY s.id DESC LIMIT 1";

    private final Database database;
    private final Originals originals;

    ShopTable(Database database, Originals originals) {
        this.database = database;
        this.originals = originals;
    }

    @Override
    public StagedOriginal stage(Path file) {
        return originals.stage(file);
    }

    @Override
    public void discard(StagedOriginal staged) {
        originals.discard(staged.file());
    }

    @Override
    public Path locate(Original original) {
        return originals.locate(original);
    }

    @Override
    public ShopProfile latest() {
        return database.read(connection -> Query.one(connection, LATEST, ShopTable::profile))
                .orElse(ShopProfile.UNKNOWN);
    }

    @Override
    public void add(NewShop shop) {
        Optional<ShopPicture> picture =
                shop.newPicture().map(this::place).or(() -> shop.profile().picture());
        database.write(connection -> {
            if (picture.isPresent()) {
                OriginalTable.remember(connection, picture.get().original());
            }
            return Insert.into("shop")
                    .put("kept_at", shop.keptAt())
                    .put("name", shop.profile().name())
                    .put("address", address(shop.profile()))
                    .put("picture_sha256", picture.map(p -> p.original().sha256()))
                    .put("picture_file_name", picture.map(ShopPicture::fileName))
                    .run(connection);
        });
    }

    private static Optional<String> address(ShopProfile profile) {
        return Optional.of(String.join("\n", profile.address())).filter(text -> !text.isEmpty());
    }

    private ShopPicture place(StagedOriginal staged) {
        try {
            return new ShopPicture(originals.place(staged), staged.fileName());
        } catch (IOException e) {
            throw Trouble.with(staged.file(), e);
        }
    }

    private static ShopProfile profile(Row row) throws SQLException {
        List<String> address = row.optionalText("address")
                .map(text -> List.of(text.split("\n")))
                .orElse(List.of());
        Optional<String> sha256 = row.optionalText("picture_sha256");
        if (sha256.isEmpty()) {
            return new ShopProfile(row.optionalText("name"), address, Optional.empty());
        }
        Original original = new Original(sha256.get(), row.longInteger("size_bytes"), row.text("extension"));
        return new ShopProfile(
                row.optionalText("name"),
                address,
                Optional.of(new ShopPicture(original, row.text("picture_file_name"))));
    }
}
