package io.github.tapwright.audio;

import java.io.IOException;
import java.util.Arrays;

/**
 * One channel of a FLAC frame: a prediction and what it missed ([RFC9639] section 9.2).
 *
 * <p>All sums are taken in 64 bits, which hold 32 coefficients of 15 bits times samples of 33 bits.
 */
final class FlacSubframe {

    private static final int CONSTANT = 0;
    private static final int VERBATIM = 1;
    private static final int FIRST_FIXED = 8;
    private static final int LAST_FIXED = 12;
    private static final int FIRST_LINEAR = 32;

    /** Coefficients of the fixed predictors of order 0 to 4, nearest sample first. */
    private static final int[][] FIXED = {{}, {1}, {2, -1}, {3, -3, 1}, {4, -6, 4, -1}};

    private FlacSubframe() {}

    /** Decodes the next subframe into the first {@code n} places of {@code samples}. */
    static void decode(FlacBits in, int bits, long[] samples, int n) throws IOException {
        require(in.unsigned(1) == 0, "a subframe does not start with zero");
        int type = (int) in.unsigned(6);
        int wasted = in.unsigned(1) == 0 ? 0 : (int) Math.min(64, in.unary() + 1);
        int width = bits - wasted;
        require(width > 0, "a subframe wastes all its bits");
        if (type == CONSTANT) {
            Arrays.fill(samples, 0, n, in.signed(width));
        } else if (type == VERBATIM) {
            warmUp(in, width, samples, n);
        } else if (type >= FIRST_FIXED && type <= LAST_FIXED) {
            fixed(in, width, type - FIRST_FIXED, samples, n);
        } else if (type >= FIRST_LINEAR) {
            linear(in, width, type - FIRST_LINEAR + 1, samples, n);
        } else {
            throw new DecoderTrouble("a subframe is of a reserved type");
        }
        for (int i = 0; wasted > 0 && i < n; i++) {
            samples[i] <<= wasted;
        }
    }

    private static void warmUp(FlacBits in, int width, long[] samples, int count) throws IOException {
        for (int i = 0; i < count; i++) {
            samples[i] = in.signed(width);
        }
    }

    private static void fixed(FlacBits in, int width, int order, long[] samples, int n) throws IOException {
        require(order <= n, "a predictor is longer than its block");
        warmUp(in, width, samples, order);
        residual(in, order, samples, n);
        predict(samples, n, FIXED[order], 0);
    }

    private static void linear(FlacBits in, int width, int order, long[] samples, int n) throws IOException {
        require(order <= n, "a predictor is longer than its block");
        warmUp(in, width, samples, order);
        int precision = (int) in.unsigned(4) + 1;
        int shift = (int) in.signed(5);
        require(precision < 16 && shift >= 0, "a predictor's precision or shift is reserved");
        int[] coefficients = new int[order];
        for (int i = 0; i < order; i++) {
            coefficients[i] = (int) in.signed(precision);
        }
        residual(in, order, samples, n);
        predict(samples, n, coefficients, shift);
    }

    /** Adds the prediction from the samples before to each residual, in place. */
    private static void predict(long[] samples, int n, int[] coefficients, int shift) {
        int order = coefficients.length;
        for (int i = order; i < n; i++) {
            long sum = 0;
            for (int j = 0; j < order; j++) {
                sum += coefficients[j] * samples[i - 1 - j];
            }
            samples[i] += sum >> shift;
        }
    }

    /** What the prediction missed, in Rice-coded partitions. */
    private static void residual(FlacBits in, int order, long[] samples, int n) throws IOException {
        int method = (int) in.unsigned(2);
        require(method <= 1, "the residual's coding is reserved");
        int parameterBits = 4 + method;
        int partitionOrder = (int) in.unsigned(4);
        int length = n >> partitionOrder;
        require(length << partitionOrder == n && length >= order, "the residual's partitions do not fit the block");
        int at = order;
        for (int partition = 0; partition < 1 << partitionOrder; partition++) {
            int end = (partition + 1) * length;
            partition(in, parameterBits, samples, at, end);
            at = end;
        }
    }

    private static void partition(FlacBits in, int parameterBits, long[] samples, int from, int to) throws IOException {
        int parameter = (int) in.unsigned(parameterBits);
        if (parameter == (1 << parameterBits) - 1) {
            int width = (int) in.unsigned(5);
            for (int i = from; i < to; i++) {
                samples[i] = in.signed(width);
            }
            return;
        }
        for (int i = from; i < to; i++) {
            long folded = in.unary() << parameter | in.unsigned(parameter);
            samples[i] = folded >>> 1 ^ -(folded & 1);
        }
    }

    private static void require(boolean holds, String rule) throws DecoderTrouble {
        if (!holds) {
            throw new DecoderTrouble(rule);
        }
    }
}
