package io.github.tapwright.cli;

import io.github.tapwright.sitting.SittingId;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the number of a sitting. */
final class SittingIdConverter implements ITypeConverter<SittingId> {

    @Override
    public SittingId convert(String text) {
        try {
            return new SittingId(Long.parseLong(text));
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException("sittings are numbered 1, 2, 3 and so on, not '" + text + "'");
        }
    }
}
