package io.github.tapwright.audio;

/**
 * The two companding laws of telephony (ITU-T G.711), as tables from the stored byte to a number re full
 * scale.
 *
 * <p>The laws are laid out on 14 bit (mu) and 13 bit (A) integers; scaled up to 16 bit their largest values
 * are 32124 and 32256, and full scale is taken as 32768, as is the custom.
 */
final class Companding {

    private Companding() {}

    /** Mu-law: byte inverted; sign, 3 bits of exponent, 4 bits of mantissa, bias 33 (14 bit). */
    static double[] muLaw() {
        double[] table = new double[256];
        for (int stored = 0; stored < 256; stored++) {
            int code = ~stored & 0xFF;
            int magnitude = ((2 * (code & 0x0F) + 33) << (code >> 4 & 7)) - 33;
            table[stored] = signed(4 * magnitude, (code & 0x80) != 0);
        }
        return table;
    }

    /** A-law: even bits inverted; sign (set means positive), 3 bits of exponent, 4 bits of mantissa. */
    static double[] aLaw() {
        double[] table = new double[256];
        for (int stored = 0; stored < 256; stored++) {
            int code = stored ^ 0x55;
            int exponent = code >> 4 & 7;
            int step = 2 * (code & 0x0F) + 1;
            int magnitude = exponent == 0 ? step : (step + 32) << (exponent - 1);
            table[stored] = signed(8 * magnitude, (code & 0x80) == 0);
        }
        return table;
    }

    private static double signed(int magnitude, boolean negative) {
        return (negative ? -magnitude : magnitude) / 32768.0;
    }
}
