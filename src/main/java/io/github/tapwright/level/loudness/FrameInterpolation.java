package io.github.tapwright.level.loudness;

/**
 * Runs a process that is finer than a frame: 24 small steps from each frame's value to the next, on a straight
 * line.
 *
 * <p>The result of a frame is the process' output at that frame's own value, so it is known one frame later.
 * After the last frame the input falls to 0. Source: [ISO532-1], annex A.
 */
final class FrameInterpolation {

    /** Small steps in a frame of 0.5 ms. */
    static final int STEPS = 24;

    /** Length of a small step, s. */
    static final double STEP_SECONDS = 0.0005 / STEPS;

    private final StepProcess process;
    private double held;

    /** A frame line whose first frame is {@code firstFrame}. */
    FrameInterpolation(StepProcess process, double firstFrame) {
        this.process = process;
        this.held = firstFrame;
    }

    /** The output of the frame before {@code nextFrame}. */
    double advance(double nextFrame) {
        double output = process.step(held);
        double slope = (nextFrame - held) / STEPS;
        for (int k = 1; k < STEPS; k++) {
            process.step(held + k * slope);
        }
        held = nextFrame;
        return output;
    }
}
