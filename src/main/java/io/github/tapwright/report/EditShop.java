package io.github.tapwright.report;

import io.github.tapwright.sitting.NewShop;
import io.github.tapwright.sitting.ShopPicture;
import io.github.tapwright.sitting.ShopProfile;
import io.github.tapwright.sitting.ShopStore;
import io.github.tapwright.sitting.StagedOriginal;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;

/** Shows and changes what the workshop says of itself on its reports. */
public final class EditShop {

    private final ShopStore shop;
    private final Clock clock;

    /**
     * Joins the use case with what it needs.
     *
     * @param shop where it is kept
     * @param clock what tells the time
     */
    public EditShop(ShopStore shop, Clock clock) {
        this.shop = shop;
        this.clock = clock;
    }

    /**
     * What to change; what is not said stays as it was.
     *
     * @param name its name, empty text for none; not present to keep it
     * @param address its lines, an empty list for none; not present to keep them
     * @param picture a file, PNG, JPEG or SVG; not present to keep the picture there is
     * @param withoutPicture whether the picture goes
     */
    public record Change(
            Optional<String> name, Optional<List<String>> address, Optional<Path> picture, boolean withoutPicture) {}

    /**
     * What holds now.
     *
     * @return {@link ShopProfile#UNKNOWN} if nothing was said yet
     */
    public ShopProfile show() {
        return shop.latest();
    }

    /**
     * Changes it; the picture is checked before it is kept.
     *
     * @param change what to change
     * @return what holds from now on
     * @throws io.github.tapwright.instrument.RefusedEntryException if a text is too long, or the picture cannot stand on a report
     * @throws io.github.tapwright.recording.UnreadableRecordingException if the picture is not there or may not be read
     */
    public ShopProfile edit(Change change) {
        ShopProfile before = shop.latest();
        Optional<ShopPicture> kept = change.withoutPicture() ? Optional.empty() : before.picture();
        ShopProfile after =
                new ShopProfile(change.name().or(before::name), change.address().orElse(before.address()), kept);
        if (change.picture().isEmpty()) {
            shop.add(new NewShop(clock.instant(), after, Optional.empty()));
            return shop.latest();
        }
        StagedOriginal copy = shop.stage(change.picture().get());
        try {
            Emblem.of(copy.file(), copy.fileName());
            shop.add(new NewShop(clock.instant(), after, Optional.of(copy)));
            return shop.latest();
        } finally {
            shop.discard(copy);
        }
    }
}
