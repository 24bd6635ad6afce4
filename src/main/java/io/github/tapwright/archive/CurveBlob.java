package io.github.tapwright.archive;

import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.ResponseCurve.Point;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * A response curve as bytes, every digit kept.
 *
 * <p>Deflated (RFC 1950), then big-endian: version 1, number of points and strikes as 32-bit integers, the
 * resolution in Hz as a 64-bit float; then for each point frequency in Hz, level, lower and upper edge in dB as
 * 64-bit floats.
 */
final class CurveBlob {

    private static final int VERSION = 1;

    /** Half a million points, many times what any tap gives; what unpacks to more was put there to exhaust memory. */
    private static final int MOST_BYTES = 16 << 20;

    private CurveBlob() {}

    static byte[] of(ResponseCurve curve) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(bytes))) {
            out.writeInt(VERSION);
            out.writeInt(curve.points().size());
            out.writeInt(curve.strikeCount());
            out.writeDouble(curve.resolutionHz());
            for (Point point : curve.points()) {
                out.writeDouble(point.frequencyHz());
                out.writeDouble(point.levelDb());
                out.writeDouble(point.lowerDb());
                out.writeDouble(point.upperDb());
            }
        }
        return bytes.toByteArray();
    }

    static ResponseCurve parse(byte[] bytes) {
        try (InputStream inflated = new InflaterInputStream(new ByteArrayInputStream(bytes))) {
            // one by one through the inflater is ten times slower
            ByteBuffer in = ByteBuffer.wrap(inflated.readNBytes(MOST_BYTES));
            if (inflated.read() >= 0) {
                throw new IOException("a response curve is longer than any this program writes");
            }
            int version = in.getInt();
            if (version != VERSION) {
                throw new IOException("a response curve of version " + version + " is not known");
            }
            int pointCount = in.getInt();
            int strikeCount = in.getInt();
            double resolutionHz = in.getDouble();
            List<Point> points = new ArrayList<>();
            for (int i = 0; i < pointCount; i++) {
                points.add(new Point(in.getDouble(), in.getDouble(), in.getDouble(), in.getDouble()));
            }
            return new ResponseCurve(points, resolutionHz, strikeCount);
        } catch (BufferUnderflowException | IllegalArgumentException | IOException e) {
            throw damaged(e);
        }
    }

    /** The bytes are in memory already, so whatever cannot be read was written so or has changed since. */
    private static ArchiveException damaged(Exception cause) {
        return new ArchiveException(
                "a response curve in the archive is damaged; run verify, and restore a backup into a new folder",
                cause);
    }
}
