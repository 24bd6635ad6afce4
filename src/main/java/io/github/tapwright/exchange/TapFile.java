package io.github.tapwright.exchange;

import io.github.tapwright.sitting.SoundFacts;
import java.util.List;

/**
 * A tap recording as the maker named it, and what reading it showed.
 *
 * @param name path or name of the file, as given
 * @param facts what reading it showed
 */
public record TapFile(String name, SoundFacts facts) {

    static final List<Field<TapFile>> FIELDS = List.of(
            Field.of("file", TapFile::name),
            Field.of("sample_rate_hz", f -> f.facts.sampleRateHz()),
            Field.of("channels", f -> f.facts.channelCount()),
            Field.of("channel_used", f -> f.facts.channelUsed() + 1),
            Field.of("duration_s", f -> f.facts.durationSeconds()),
            Field.of("format", f -> f.facts.format()));
}
