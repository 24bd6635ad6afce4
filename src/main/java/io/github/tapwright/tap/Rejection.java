package io.github.tapwright.tap;

/**
 * One reason against a strike, with its figure.
 *
 * @param reason the kind of trouble
 * @param figure the measured figure and the limit it broke, in words, such as "second contact 43 ms later"
 */
public record Rejection(RejectionReason reason, String figure) {

    /**
     * The reason with its figure.
     *
     * @return such as "cut off (next strike after 0.11 s)"
     */
    public String text() {
        return figure.isEmpty() ? reason.words() : reason.words() + " (" + figure + ")";
    }
}
