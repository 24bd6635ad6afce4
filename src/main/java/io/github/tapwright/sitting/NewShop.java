package io.github.tapwright.sitting;

import java.time.Instant;
import java.util.Optional;

/**
 * What a workshop says of itself, about to be kept.
 *
 * @param keptAt when
 * @param profile name, address, and a picture that is kept already
 * @param newPicture a safe copy of a new picture, which then takes the place of the profile's; empty if there is none
 */
public record NewShop(Instant keptAt, ShopProfile profile, Optional<StagedOriginal> newPicture) {}
