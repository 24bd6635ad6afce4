package io.github.tapwright.validation;

import java.util.List;

/** A part of the book: checks of one kind of calculation. */
public interface Section {

    /**
     * Its heading.
     *
     * @return a few words
     */
    String title();

    /**
     * What is calculated, and with which part of the program.
     *
     * @return one or two sentences
     */
    String about();

    /**
     * Its checks; making the list computes nothing that the checks could not get wrong.
     *
     * @return in the order of the page
     */
    List<Check> checks();
}
