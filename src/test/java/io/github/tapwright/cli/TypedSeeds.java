package io.github.tapwright.cli;

import io.github.tapwright.fuzz.SeedFolder;
import java.io.IOException;
import java.nio.file.Path;

/** Seeds of what is typed after the program's name. */
public final class TypedSeeds {

    private static final String[] VALUES = {
        "60:1000",
        "open",
        "0.3:5:1",
        "94:0.25",
        "14.2:0.3",
        "mass=+5g,stiffness=-5%,hole=+1mm",
        "40:50",
        "C-2031",
        "Bb3",
        "21,5",
        "NaN:NaN",
        "1e999",
        "-0",
        "0x1p-1074",
        "9".repeat(400),
        "\\u0661\\u0662:\\u0663",
        "\\uD800",
        "1::2",
        "\\u202E117"
    };

    private TypedSeeds() {}

    public static void write(Path resources) throws IOException {
        SeedFolder typed = new SeedFolder(resources, TypedValuesFuzzTest.class, "isReadOrRefused");
        for (int i = 0; i < VALUES.length; i++) {
            typed.put("value-" + i, VALUES[i]);
        }
        new SeedFolder(resources, CommandLineFuzzTest.class, "isUnderstoodOrRefused")
                .put("taps", "taps\na.wav\n--band\n60:1000")
                .put("sitting", "sitting\nadd\n31\na.wav\n--stage\nstrung\n--temperature\n20.5\n--note\n<b>")
                .put("compare", "compare\n1\n2\n--spread\n0.3:5:1")
                .put("numbers", "sitting\nshow\n99999999999999999999")
                .put("report", "report\n--sitting\n1\n--for\nclient\n--out\n../../a.pdf")
                .put("nothing", "")
                .put("quotes", "note\n\"a b\"\n'c\n--=\n-\n--");
    }
}
