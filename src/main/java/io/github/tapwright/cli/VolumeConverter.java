package io.github.tapwright.cli;

import io.github.tapwright.statistics.Estimate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the volume of a box in litres, such as "14.2" or "14.2:0.3"; without its uncertainty 2 % are taken. */
final class VolumeConverter implements ITypeConverter<Estimate> {

    private static final String FIGURE = "([0-9]+(?:\\.[0-9]+)?)";
    private static final Pattern FORM = Pattern.compile(FIGURE + "(?::" + FIGURE + ")?");
    private static final double USUAL_SHARE = 0.02;
    private static final double GREATEST_LITRES = 100;

    @Override
    public Estimate convert(String text) {
        Matcher form = FORM.matcher(text);
        if (!form.matches()) {
            throw new TypeConversionException(
                    "a volume is litres such as 14.2, or with its standard uncertainty 14.2:0.3," + " not '" + text
                            + "'");
        }
        double litres = Double.parseDouble(form.group(1));
        double u = form.group(2) == null ? USUAL_SHARE * litres : Double.parseDouble(form.group(2));
        if (!(litres > 0 && litres <= GREATEST_LITRES && u < litres / 4)) {
            throw new TypeConversionException("the volume of a box lies between 0 and 100 litres and is known to better"
                    + " than a quarter, was '" + text + "'");
        }
        return Estimate.of(litres, u);
    }
}
