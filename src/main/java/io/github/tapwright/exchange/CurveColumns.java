package io.github.tapwright.exchange;

import io.github.tapwright.tap.ResponseCurve;
import io.github.tapwright.tap.ResponseCurve.Point;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/** A response curve as one list for each of its columns, which scripts plot most easily. */
final class CurveColumns {

    private CurveColumns() {}

    static Map<String, Object> of(ResponseCurve curve) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("resolution_hz", curve.resolutionHz());
        object.put("strikes_used", curve.strikeCount());
        object.put("level_reference", "highest point of the mean curve");
        object.put("frequency_hz", column(curve, Point::frequencyHz));
        object.put("level_db", column(curve, Point::levelDb));
        object.put("lower_db", column(curve, Point::lowerDb));
        object.put("upper_db", column(curve, Point::upperDb));
        return object;
    }

    /** Rounded to 0.0001: far below any uncertainty, and half the size of the file. */
    private static List<Double> column(ResponseCurve curve, ToDoubleFunction<Point> of) {
        return curve.points().stream()
                .map(p -> Math.rint(of.applyAsDouble(p) * 1e4) / 1e4)
                .toList();
    }
}
