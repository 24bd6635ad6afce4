package io.github.tapwright.archive;

import io.github.tapwright.level.band.Band;
import io.github.tapwright.level.band.Bandwidth;
import io.github.tapwright.mode.ModeName;
import io.github.tapwright.mode.NamedResonance;
import io.github.tapwright.mode.Resonance;
import io.github.tapwright.sitting.ThirdOctaves;
import io.github.tapwright.statistics.Estimate;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Resonances and third octaves as bytes, every digit kept.
 *
 * <p>Big-endian. Resonances: version 1 and their number as 32-bit integers; then for each the value, standard uncertainty and degrees
 * of freedom of frequency, Q, decay time and level as 64-bit floats, the number of strikes as a 32-bit integer, and the suggested
 * name's key (empty for none), the note and the name's reason as UTF-8 after their length in bytes (32-bit). Third octaves: version 1
 * and their number as 32-bit integers; then for each its number counted from 1 kHz as a 32-bit integer and its level in dB as a 64-bit
 * float.
 */
final class TapDigest {

    private static final int VERSION = 1;
    private static final int MOST = 10_000;
    private static final double TOLERANCE_DB = 1e-9;

    private TapDigest() {}

    static byte[] of(List<NamedResonance> resonances) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(VERSION);
            out.writeInt(resonances.size());
            for (NamedResonance named : resonances) {
                Resonance found = named.resonance();
                write(out, found.frequencyHz());
                write(out, found.q());
                write(out, found.decayTimeSeconds());
                write(out, found.levelDb());
                out.writeInt(found.strikeCount());
                write(out, named.name().map(ModeName::key).orElse(""));
                write(out, found.note());
                write(out, named.reason());
            }
        }
        return bytes.toByteArray();
    }

    static byte[] of(ThirdOctaves octaves) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(VERSION);
            out.writeInt(octaves.levelsDb().size());
            for (Map.Entry<Band, Double> level : octaves.levelsDb().entrySet()) {
                out.writeInt(level.getKey().index());
                out.writeDouble(level.getValue());
            }
        }
        return bytes.toByteArray();
    }

    static List<NamedResonance> resonances(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            int count = count(in);
            List<NamedResonance> resonances = new ArrayList<>(count);
            for (int i = 0; i < count; i++) {
                resonances.add(resonance(in));
            }
            return resonances;
        } catch (BufferUnderflowException | IllegalArgumentException e) {
            throw damaged();
        }
    }

    static ThirdOctaves thirdOctaves(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            int count = count(in);
            Map<Band, Double> levels = new LinkedHashMap<>();
            for (int i = 0; i < count; i++) {
                levels.put(new Band(Bandwidth.THIRD_OCTAVE, in.getInt()), in.getDouble());
            }
            return new ThirdOctaves(levels);
        } catch (BufferUnderflowException | IllegalArgumentException e) {
            throw damaged();
        }
    }

    /**
     * Whether kept third octaves are those that were worked out anew.
     *
     * <p>A level is made with {@link Math#pow} and {@link Math#log10}, whose last bit may differ between versions of Java;
     * that is no damage. Hence a tolerance of 10⁻⁹ dB, a relative 2.3·10⁻¹⁰ of the power: far more than rounding does and
     * far less than any figure shows. Damage that small still changes the sum of the table. All but the levels must be
     * the same to the bit.
     */
    static boolean sameOctaves(byte[] kept, byte[] anew) {
        if (kept.length != anew.length) {
            return false;
        }
        ByteBuffer a = ByteBuffer.wrap(kept);
        ByteBuffer b = ByteBuffer.wrap(anew);
        boolean same = !b.hasRemaining() || a.getLong() == b.getLong(); // version and number
        while (same && b.hasRemaining()) {
            same = a.getInt() == b.getInt() && sameLevel(a.getDouble(), b.getDouble());
        }
        return same;
    }

    private static boolean sameLevel(double keptDb, double anewDb) {
        return Double.compare(keptDb, anewDb) == 0 || Math.abs(keptDb - anewDb) <= TOLERANCE_DB;
    }

    private static int count(ByteBuffer in) {
        int version = in.getInt();
        int count = in.getInt();
        if (version != VERSION || count < 0 || count > MOST) {
            throw damaged();
        }
        return count;
    }

    private static NamedResonance resonance(ByteBuffer in) {
        Estimate frequencyHz = estimate(in);
        Estimate q = estimate(in);
        Estimate decayTimeSeconds = estimate(in);
        Estimate levelDb = estimate(in);
        int strikeCount = in.getInt();
        String key = text(in);
        String note = text(in);
        Optional<ModeName> name = key.isEmpty() ? Optional.empty() : ModeName.find(key);
        if (name.isEmpty() && !key.isEmpty()) {
            throw damaged();
        }
        return new NamedResonance(
                new Resonance(frequencyHz, q, decayTimeSeconds, levelDb, strikeCount, note), name, text(in));
    }

    private static void write(DataOutputStream out, Estimate estimate) throws IOException {
        out.writeDouble(estimate.value());
        out.writeDouble(estimate.standardUncertainty());
        out.writeDouble(estimate.degreesOfFreedom());
    }

    private static Estimate estimate(ByteBuffer in) {
        return new Estimate(in.getDouble(), in.getDouble(), in.getDouble());
    }

    private static void write(DataOutputStream out, String text) throws IOException {
        byte[] utf8 = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(utf8.length);
        out.write(utf8);
    }

    private static String text(ByteBuffer in) {
        int length = in.getInt();
        if (length < 0 || length > in.remaining()) {
            throw damaged();
        }
        byte[] utf8 = new byte[length];
        in.get(utf8);
        return new String(utf8, StandardCharsets.UTF_8);
    }

    private static ArchiveException damaged() {
        return new ArchiveException(
                "the archive's digest of an analysis is damaged; run verify, and restore a backup into a new folder");
    }
}
