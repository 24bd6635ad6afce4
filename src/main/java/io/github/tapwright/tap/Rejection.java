package io.github.tapwright.tap;

/**
 * One reason against a strike, with its figure.
 *
 * @param reason the kind of trouble
 * @param figure the measured figure and the limit it broke, in words, such as "second contact 43 ms later"
 */
public record Rejection(RejectionReason reason, String figure) {}
