package io.github.tapwright.sitting;

/**
 * A workshop's picture, kept bit for bit.
 *
 * @param original the bytes kept
 * @param fileName the name the maker's file had, without its folder
 */
public record ShopPicture(Original original, String fileName) {}
