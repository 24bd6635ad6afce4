package io.github.tapwright.note;

import io.github.tapwright.statistics.Estimate;
import java.util.List;
import java.util.Optional;

/**
 * What one recording of a plucked note says.
 *
 * @param pitch the pitch, or why there is none
 * @param inharmonicity B of the stretched series, or why it cannot be told
 * @param partials lowest first; empty if no pitch was found
 * @param decay how long the whole note rings
 * @param onsetSeconds when the string was plucked, from the start of the recording, or why that cannot be told
 * @param attackSeconds from a tenth to nine tenths of the largest amplitude, or why that cannot be told
 * @param spectralCentroidHz mean frequency of the partials, weighted by their amplitudes just after the pluck, or
 *     why there is none
 * @param seriesScatterCents how far partials scatter about the stretched series beyond what noise explains, or why that
 *     cannot be told
 * @param disturbance what ended the free decay before the recording ended
 * @param channelUsed which channel was analysed, from 0
 * @param durationSeconds length of the recording
 * @param warnings what the reader must know before trusting the numbers
 * @param settings what was looked for
 * @param methodVersion version of the method that made these numbers
 */
public record NoteResult(
        Finding<Pitch> pitch,
        Finding<Estimate> inharmonicity,
        List<Partial> partials,
        WholeDecay decay,
        Finding<Double> onsetSeconds,
        Finding<Double> attackSeconds,
        Finding<Double> spectralCentroidHz,
        Finding<Double> seriesScatterCents,
        Optional<Disturbance> disturbance,
        int channelUsed,
        double durationSeconds,
        List<String> warnings,
        NoteSettings settings,
        String methodVersion) {

    /**
     * The same, said of a channel of the recording it was cut from.
     *
     * @param channel which channel was listened to, from 0
     * @return changed result
     */
    public NoteResult ofChannel(int channel) {
        return new NoteResult(
                pitch,
                inharmonicity,
                partials,
                decay,
                onsetSeconds,
                attackSeconds,
                spectralCentroidHz,
                seriesScatterCents,
                disturbance,
                channel,
                durationSeconds,
                warnings,
                settings,
                methodVersion);
    }

    /** Keeps copies of the lists. */
    public NoteResult {
        partials = List.copyOf(partials);
        warnings = List.copyOf(warnings);
    }
}
