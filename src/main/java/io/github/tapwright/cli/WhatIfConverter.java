package io.github.tapwright.cli;

import io.github.tapwright.mode.body.BodyChange;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a change such as "mass=+5g,stiffness=-5%,hole=+1mm,volume=-0.5l"; the hole's figure is its radius. */
final class WhatIfConverter implements ITypeConverter<BodyChange> {

    private static final Map<String, String> UNITS = Map.of("mass", "g", "stiffness", "%", "hole", "mm", "volume", "l");
    private static final Pattern PART = Pattern.compile("([a-z]+)=([+-]?[0-9]+(?:\\.[0-9]+)?)([a-z%]+)");
    private static final double LEAST_STIFFNESS_PERCENT = -100;

    @Override
    public BodyChange convert(String text) {
        Map<String, Double> figures = new HashMap<>();
        for (String part : text.strip().split(",", -1)) {
            Matcher form = PART.matcher(part.strip());
            if (!form.matches() || !form.group(3).equals(UNITS.get(form.group(1)))) {
                throw new TypeConversionException(
                        "a change is one or more of mass=+5g, stiffness=-5%, hole=+1mm (radius),"
                                + " volume=-0.5l with commas between, not '" + part.strip() + "'");
            }
            if (figures.put(form.group(1), Double.parseDouble(form.group(2))) != null) {
                throw new TypeConversionException(form.group(1) + " is changed twice in '" + text + "'; say it once");
            }
        }
        if (figures.getOrDefault("stiffness", 0.0) <= LEAST_STIFFNESS_PERCENT) {
            throw new TypeConversionException("a change must leave some stiffness; choose one above -100%");
        }
        return new BodyChange(
                figures.getOrDefault("mass", 0.0) / 1000,
                figures.getOrDefault("stiffness", 0.0) / 100,
                figures.getOrDefault("hole", 0.0) / 1000,
                figures.getOrDefault("volume", 0.0) / 1000);
    }
}
