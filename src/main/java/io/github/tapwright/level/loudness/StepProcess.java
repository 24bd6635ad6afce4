package io.github.tapwright.level.loudness;

/** A process with a memory that advances by one small step at a time. */
@FunctionalInterface
interface StepProcess {

    /** Takes the next input and gives the output at it. */
    double step(double input);
}
