package io.github.tapwright.sitting;

/** Keeps what the workshop says of itself; all that was ever said stays. */
public interface ShopStore extends OriginalStore {

    /**
     * What holds now.
     *
     * @return the latest that was kept; {@link ShopProfile#UNKNOWN} if nothing was
     */
    ShopProfile latest();

    /**
     * Keeps what holds from now on.
     *
     * @param shop all of it
     */
    void add(NewShop shop);
}
