package io.github.tapwright.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Text as somebody might type or paste it, from bytes one can read in a seed. */
public final class TypedText {

    private static final Pattern ESCAPE = Pattern.compile("\\\\u([0-9A-Fa-f]{4})");

    private TypedText() {}

    /** The bytes as UTF-8; backslash, u and four hexadecimal digits stand for any UTF-16 unit, half a pair too. */
    public static String of(byte[] bytes) {
        return ESCAPE.matcher(new String(bytes, StandardCharsets.UTF_8)).replaceAll(TypedText::unit);
    }

    private static String unit(MatchResult escape) {
        return Matcher.quoteReplacement(Character.toString((char) Integer.parseInt(escape.group(1), 16)));
    }
}
