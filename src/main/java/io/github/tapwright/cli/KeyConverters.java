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
    static final class Construction implements ITypeConverter<ConstructionKind> {
        @Override
        public ConstructionKind convert(String text) {
            return read(text, ConstructionKind.values());
        }
    }

    /** Reads how far an instrument had come. */
    static final class StageOfWork implements ITypeConverter<Stage> {
        @Override
        public Stage convert(String text) {
            return read(text, Stage.values());
        }
    }

    /** Reads what the strings did. */
    static final class StringsDid implements ITypeConverter<StringState> {
        @Override
        public StringState convert(String text) {
            return read(text, StringState.values());
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
