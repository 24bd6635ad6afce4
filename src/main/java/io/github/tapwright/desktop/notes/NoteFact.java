package io.github.tapwright.desktop.notes;

/**
 * One line about a note.
 *
 * @param name what it is
 * @param words the figure with its uncertainty, or why there is none
 */
public record NoteFact(String name, String words) {}
