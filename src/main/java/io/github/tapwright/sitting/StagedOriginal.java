package io.github.tapwright.sitting;

import java.nio.file.Path;

/**
 * A copy of the maker's file that is safe on disk but not yet part of the archive.
 *
 * @param original what the copy holds
 * @param fileName the name the maker's file had, without its folder
 * @param file where the copy lies until the sitting is added; its file name is the maker's
 */
public record StagedOriginal(Original original, String fileName, Path file) {}
