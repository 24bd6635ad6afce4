package io.github.tapwright.exchange;

import io.github.tapwright.mode.TapResult;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The JSON of tap analyses made without an archive. */
public final class TapsJson {

    private TapsJson() {}

    /**
     * A file and what was found in it alone.
     *
     * @param file the recording
     * @param result what was found
     */
    public record Single(TapFile file, TapResult result) {}

    /**
     * Files analysed one by one.
     *
     * @param analysed at least one
     * @return an object if there is one file, an array if there are several
     */
    public static String each(List<Single> analysed) {
        List<Map<String, @Nullable Object>> documents =
                analysed.stream().map(TapsJson::document).toList();
        return JsonText.of(documents.size() == 1 ? documents.get(0) : documents);
    }

    /**
     * Files analysed as one set.
     *
     * @param files the recordings, in the order in which the analysis counted them
     * @param result what was found in all of them
     * @return one object, each strike naming its file
     */
    public static String together(List<TapFile> files, TapResult result) {
        Map<String, @Nullable Object> document = new LinkedHashMap<>();
        document.put("files", files.stream().map(TapFile::name).toList());
        document.put("recordings", JsonText.array(TapFile.FIELDS, files));
        addResult(document, files, result);
        return JsonText.of(document);
    }

    private static Map<String, @Nullable Object> document(Single single) {
        Map<String, @Nullable Object> document = JsonText.object(TapFile.FIELDS, single.file());
        addResult(document, List.of(single.file()), single.result());
        return document;
    }

    private static void addResult(Map<String, @Nullable Object> document, List<TapFile> files, TapResult result) {
        List<String> names = files.stream().map(TapFile::name).toList();
        List<ResonanceRow> resonances =
                result.resonances().stream().map(ResonanceRow::of).toList();
        document.put("strikes", JsonText.array(StrikeRow.FIELDS, StrikeRow.of(names, result.strikes())));
        document.put("resonances", JsonText.array(ResonanceRow.FIELDS, resonances));
        document.put("level_reference", ResonanceRow.LEVEL_REFERENCE);
        document.put("response_curve", result.curve().map(CurveColumns::of).orElse(null));
        document.put("warnings", warnings(files, result));
        document.put("method_version", result.methodVersion());
        document.put("settings", JsonText.object(StrikeRow.SETTINGS, result.settings()));
    }

    private static List<String> warnings(List<TapFile> files, TapResult result) {
        Stream<String> notices =
                files.stream().flatMap(f -> f.facts().notices().stream().map(n -> f.name() + ": " + n));
        return Stream.concat(notices, result.warnings().stream()).toList();
    }
}
