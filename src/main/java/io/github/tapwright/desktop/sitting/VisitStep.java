package io.github.tapwright.desktop.sitting;

/** How far a visit has come. */
public enum VisitStep {
    /** Setting up and writing down. */
    PREPARING,
    /** The microphone is open. */
    RECORDING,
    /** The recording is on disk and waits to be kept. */
    RECORDED
}
