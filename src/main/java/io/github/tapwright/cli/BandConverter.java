package io.github.tapwright.cli;

import io.github.tapwright.tap.TapSettings;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a band such as "60:1000". */
final class BandConverter implements ITypeConverter<TapSettings> {

    @Override
    public TapSettings convert(String text) {
        int colon = text.indexOf(':');
        try {
            double low = Decimals.parsed(text.substring(0, Math.max(0, colon)));
            double high = Decimals.parsed(text.substring(colon + 1));
            return TapSettings.STANDARD.withBand(low, high);
        } catch (NumberFormatException e) {
            throw new TypeConversionException("a band is two frequencies in Hz such as 60:1000, not '" + text + "'");
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }
}
