package io.github.tapwright.cli;

import io.github.tapwright.mode.HoleState;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads "open", "covered" or "unknown". */
final class HoleConverter implements ITypeConverter<HoleState> {

    @Override
    public HoleState convert(String text) {
        if (Said.isUnknown(text)) {
            return HoleState.UNKNOWN;
        }
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "open" -> HoleState.OPEN;
            case "covered" -> HoleState.COVERED;
            default ->
                throw new TypeConversionException("the soundhole is open, covered or unknown, not '" + text + "'");
        };
    }
}
