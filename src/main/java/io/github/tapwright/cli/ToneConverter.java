package io.github.tapwright.cli;

import io.github.tapwright.level.CalibratorTone;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what a calibrator promises: "94", or with its tolerance "94:0.5"; class 1 where none is given. */
final class ToneConverter implements ITypeConverter<CalibratorTone> {

    @Override
    public CalibratorTone convert(String text) {
        int colon = text.indexOf(':');
        try {
            return colon < 0
                    ? CalibratorTone.classOne(Decimals.parsed(text))
                    : new CalibratorTone(
                            Decimals.parsed(text.substring(0, colon)), Decimals.parsed(text.substring(colon + 1)));
        } catch (NumberFormatException e) {
            throw new TypeConversionException(
                    "a calibrator's level is in dB, such as 94, or 94:0.5 with its tolerance, not '" + text + "'");
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }
}
