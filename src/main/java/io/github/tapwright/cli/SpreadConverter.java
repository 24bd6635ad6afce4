package io.github.tapwright.cli;

import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.instrument.RefusedEntryException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the spread of setting up, such as "0.3:5:1". */
final class SpreadConverter implements ITypeConverter<SetUpSpread> {

    private static final String FIGURE = "([0-9]+(?:\\.[0-9]+)?)";
    private static final Pattern FORM = Pattern.compile(FIGURE + ":" + FIGURE + ":" + FIGURE);

    @Override
    public SetUpSpread convert(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new TypeConversionException(
                    "a spread is % of frequency, % of Q and dB such as 0.3:5:1, not '" + text + "'");
        }
        try {
            return SetUpSpread.given(figure(form, 1) / 100, figure(form, 2) / 100, figure(form, 3));
        } catch (RefusedEntryException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }

    private static double figure(Matcher form, int group) {
        return Double.parseDouble(form.group(group));
    }
}
