package io.github.tapwright.desktop.listening;

/** What can be heard in one question. */
public enum Letter {
    /** One of the two sounds. */
    A,
    /** The other. */
    B,
    /** One of the two again; which of them is the question. */
    X
}
