package io.github.tapwright.cli;

import io.github.tapwright.mode.HoleState;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads "open" or "covered". */
final class HoleConverter implements ITypeConverter<HoleState> {

    @Override
    public HoleState convert(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "open" -> HoleState.OPEN;
            case "covered" -> HoleState.COVERED;
            default -> throw new TypeConversionException("the soundhole is open or covered, not '" + text + "'");
        };
    }
}
