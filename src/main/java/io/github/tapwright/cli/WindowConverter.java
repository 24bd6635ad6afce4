package io.github.tapwright.cli;

import io.github.tapwright.climate.ShopWindow;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the humidity a shop keeps, such as "40:50". */
final class WindowConverter implements ITypeConverter<ShopWindow> {

    @Override
    public ShopWindow convert(String text) {
        String[] ends = text.split(":", -1);
        try {
            if (ends.length == 2) {
                return new ShopWindow(Decimals.parsed(ends[0]), Decimals.parsed(ends[1]));
            }
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("'" + text + "': " + e.getMessage());
        }
        throw new TypeConversionException("a shop's window is two humidities such as 40:50, not '" + text + "'");
    }
}
