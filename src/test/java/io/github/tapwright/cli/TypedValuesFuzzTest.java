package io.github.tapwright.cli;

import com.code_intelligence.jazzer.junit.FuzzTest;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.fuzz.Bounds;
import io.github.tapwright.fuzz.TypedText;
import io.github.tapwright.instrument.Entry;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.note.NoteName;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.function.Executable;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Any text wherever the maker types a value: read, or refused in our own words. */
class TypedValuesFuzzTest {

    private static final Bounds BOUNDS =
            Bounds.refusingWith(List.of(TypeConversionException.class, RefusedEntryException.class));

    private static final List<ITypeConverter<?>> CONVERTERS = List.of(
            new BandConverter(),
            new HoleConverter(),
            new SpreadConverter(),
            new ToneConverter(),
            new VolumeConverter(),
            new WhatIfConverter(),
            new WindowConverter(),
            new KeyConverters.Kind(),
            new KeyConverters.Construction(),
            new KeyConverters.StageOfWork(),
            new KeyConverters.StringsDid(),
            new KeyConverters.Grouping(),
            new KeyConverters.Strung(),
            new KeyConverters.ForWhom(),
            new SaidConverters.Text(),
            new SaidConverters.Figure(),
            new SaidConverters.Count(),
            new SaidConverters.Day());

    @FuzzTest
    void isReadOrRefused(byte[] bytes) {
        String text = TypedText.of(bytes);
        CONVERTERS.forEach(converter -> hold(text, () -> converter.convert(text)));
        hold(text, () -> new ShopNumber(text));
        hold(text, () -> Entry.line("the operator", Optional.of(text)));
        hold(text, () -> Entry.note("the note", Optional.of(text)));
        hold(text, () -> Units.figure("temperature", text));
        hold(text, () -> NoteName.read(text));
    }

    private static void hold(String text, Executable reading) {
        BOUNDS.hold(2 * text.length(), reading);
    }
}
