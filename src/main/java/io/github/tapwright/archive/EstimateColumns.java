package io.github.tapwright.archive;

import io.github.tapwright.statistics.Estimate;
import java.sql.SQLException;
import java.util.Optional;

/** The three columns of a value with its uncertainty: pitch_hz, pitch_u_hz, pitch_dof. */
final class EstimateColumns {

    private EstimateColumns() {}

    static Insert put(Insert row, String quantity, String unit, Estimate estimate) {
        return put(row, quantity, unit, Optional.of(estimate));
    }

    /** What is empty becomes three times NULL. */
    static Insert put(Insert row, String quantity, String unit, Optional<Estimate> estimate) {
        return row.put(quantity + unit, estimate.map(Estimate::value))
                .put(quantity + "_u" + unit, estimate.map(Estimate::standardUncertainty))
                .put(quantity + "_dof", estimate.map(Estimate::degreesOfFreedom));
    }

    static Estimate read(Row row, String quantity, String unit) throws SQLException {
        return new Estimate(
                row.number(quantity + unit), row.number(quantity + "_u" + unit), row.number(quantity + "_dof"));
    }

    static Optional<Estimate> optional(Row row, String quantity, String unit) throws SQLException {
        return row.optionalNumber(quantity + unit).isPresent()
                ? Optional.of(read(row, quantity, unit))
                : Optional.empty();
    }
}
