package io.github.tapwright.validation;

import java.util.Optional;

/**
 * What came of a check.
 *
 * @param check which
 * @param got the number the program gave; empty if it gave none
 * @param failure why it gave none; blank if it did
 */
public record Outcome(Check check, Optional<Double> got, String failure) {

    /**
     * The verdict.
     *
     * @return true if a number was got and lies within the tolerance
     */
    public boolean isWithin() {
        return got.filter(g -> check.tolerance().allows(check.expected(), g)).isPresent();
    }

    /**
     * The number as people read it.
     *
     * @return as many digits as the tolerance lets mean anything, or "none"
     */
    public String gotText() {
        return got.map(g -> Numbers.got(g, check.tolerance())).orElse("none");
    }

    /**
     * The expected number as people read it.
     *
     * @return all its digits
     */
    public String expectedText() {
        return Numbers.expected(check.expected());
    }
}
