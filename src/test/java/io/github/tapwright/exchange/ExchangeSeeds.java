package io.github.tapwright.exchange;

import io.github.tapwright.desktop.settings.SettingsSeeds;
import io.github.tapwright.fuzz.SeedFolder;
import java.io.IOException;
import java.nio.file.Path;

/** Seeds of texts in and out: a workshop's JSON, cells of a table, the desk's settings. */
public final class ExchangeSeeds {

    private static final String WORKSHOP = """
            {"workshop": "Oar Lane", "place": "Tidewick", "invented": "all", "time_zone": "%s",
             "instruments": [{"number": "%s", "kind": "classical", "scale_length_mm": 650, "string_count": 6,
               "construction": {"kind": "solid", "outer_skin": {"material": "spruce", "thickness_mm": 2.4}}}],
             "sittings": [{"instrument": "31", "taken": "%s", "stage": "strung", "temperature_c": 20.5,
               "strings": {"state": "damped", "fitted": "%s"}, "hole": "%s", "added_mass_g": 20, "file": "a.flac"}]}
            """;

    private ExchangeSeeds() {}

    public static void write(Path resources) throws IOException {
        new SeedFolder(resources, WorkshopJsonFuzzTest.class, "isReadOrRefused")
                .put("workshop.json", workshop("Etc/GMT", "31", "2024-02-06T10:00", "2024-02-01", "open"))
                .put("no-zone.json", workshop("Etc/Nowhere", "31", "2024-02-06T10:00", "2024-02-01", "open"))
                .put("no-number.json", workshop("Etc/GMT", "", "2024-02-06T10:00", "2024-02-01", "open"))
                .put("no-moment.json", workshop("Etc/GMT", "31", "yesterday", "2024-02-01", "open"))
                .put("no-day.json", workshop("Etc/GMT", "31", "2024-02-06T10:00", "2024-02-31", "open"))
                .put("no-hole.json", workshop("Etc/GMT", "31", "2024-02-06T10:00", "2024-02-01", "ajar"))
                .put("empty.json", "{}")
                .put("deep.json", "[".repeat(2000));
        new SeedFolder(resources, CsvTextFuzzTest.class, "aCellRunsNothingAndLosesNothing")
                .put("sum", "=1+1")
                .put("command", "=cmd|' /C calc'!A0")
                .put("link", "=HYPERLINK(\"http://example.org\",\"a\")")
                .put("plus", "+1")
                .put("minus", "-1")
                .put("at", "@SUM(A1)")
                .put("tab", "\t=1")
                .put("return", "\r=1")
                .put("line", "\n=1")
                .put("full-width", "\uFF1D1")
                .put("marked", "''=1")
                .put("quotes", "\"a\",\"b\"\r\n\"c")
                .put("half-a-pair", "a\\uD800b\\uFFFE\\u0000");
        SettingsSeeds.write(resources);
    }

    private static String workshop(Object... words) {
        return WORKSHOP.formatted(words);
    }
}
