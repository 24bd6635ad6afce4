package io.github.tapwright.cli;

import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.comparison.group.GroupBy;
import io.github.tapwright.instrument.ConstructionKind;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Keyed;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.report.ReportKind;
import java.util.Arrays;
import java.util.stream.Collectors;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Readers of words with a fixed meaning, by key or as people write them. */
final class KeyConverters {

    private KeyConverters() {}

    /** Reads a kind of instrument. */
    static final class Kind implements ITypeConverter<InstrumentKind> {
        @Override
        public InstrumentKind convert(String text) {
            return read(text, InstrumentKind.values());
        }
    }

    /** Reads how a top is built. */
    static final class Construction implements ITypeConverter<Said<ConstructionKind>> {
        @Override
        public Said<ConstructionKind> convert(String text) {
            return Said.read(text, known -> read(known, ConstructionKind.values()));
        }
    }

    /** Reads how far an instrument had come. */
    static final class StageOfWork implements ITypeConverter<Said<Stage>> {
        @Override
        public Said<Stage> convert(String text) {
            return Said.read(text, known -> read(known, Stage.values()));
        }
    }

    /** Reads what the strings did. */
    static final class StringsDid implements ITypeConverter<Said<StringState>> {
        @Override
        public Said<StringState> convert(String text) {
            return Said.read(text, known -> read(known, StringState.values()));
        }
    }

    /** Reads by what instruments are put into groups. */
    static final class Grouping implements ITypeConverter<GroupBy> {
        @Override
        public GroupBy convert(String text) {
            return read(text, GroupBy.values());
        }
    }

    /** Reads whether instruments had been strung. */
    static final class Strung implements ITypeConverter<StageClass> {
        @Override
        public StageClass convert(String text) {
            return read(text, StageClass.values());
        }
    }

    /** Reads whom a report is for. */
    static final class ForWhom implements ITypeConverter<ReportKind> {
        @Override
        public ReportKind convert(String text) {
            return read(text, ReportKind.values());
        }
    }

    private static <T extends Keyed> T read(String text, T[] all) {
        return Keyed.find(all, text).orElseThrow(() -> {
            String choices = Arrays.stream(all).map(Keyed::key).collect(Collectors.joining(", "));
            return new TypeConversionException("'" + text + "' is none of: " + choices);
        });
    }
}
