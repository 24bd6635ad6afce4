package io.github.tapwright.archive;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.sql.ResultSet;
import java.sql.SQLException;

/**
 * What rows add up to, in whatever order: of each row the first 62 bits of the SHA-256 of its columns, in two halves
 * that are added modulo 2^31 each. A single changed bit changes the sum but for one chance in 2^62.
 *
 * @param rowCount how many rows
 * @param high sum of the upper halves, 0 to 2^31 - 1
 * @param low sum of the lower halves, 0 to 2^31 - 1
 */
record TableSum(long rowCount, long high, long low) {

    static final TableSum NOTHING = new TableSum(0, 0, 0);

    private static final long MASK = 0x7fff_ffffL;

    /** All rows that are left in an answer. */
    static TableSum of(ResultSet rows) throws SQLException {
        TableSum sum = NOTHING;
        while (rows.next()) {
            sum = sum.plus(row(rows));
        }
        return sum;
    }

    TableSum plus(TableSum other) {
        return new TableSum(rowCount + other.rowCount, high + other.high & MASK, low + other.low & MASK);
    }

    TableSum minus(TableSum other) {
        return new TableSum(rowCount - other.rowCount, high - other.high & MASK, low - other.low & MASK);
    }

    private static TableSum row(ResultSet row) throws SQLException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            int columns = row.getMetaData().getColumnCount();
            out.writeInt(columns);
            for (int c = 1; c <= columns; c++) {
                cell(out, row, c);
            }
        } catch (IOException e) {
            throw new IllegalStateException("memory is always there to write to", e);
        }
        ByteBuffer digest = ByteBuffer.wrap(Sha256.of(bytes.toByteArray()));
        return new TableSum(1, digest.getInt() & MASK, digest.getInt() & MASK);
    }

    /** Whole numbers are written alike, whether they lie in a column of whole numbers or of others. */
    private static void cell(DataOutputStream out, ResultSet row, int column) throws SQLException, IOException {
        Object value = row.getObject(column);
        if (value == null) {
            out.writeByte(0);
        } else if (value instanceof byte[] blob) {
            out.writeByte(1);
            out.writeInt(blob.length);
            out.write(blob);
        } else if (value instanceof Number number && number.doubleValue() == number.longValue()) {
            out.writeByte(2);
            out.writeLong(number.longValue());
        } else if (value instanceof Number number) {
            out.writeByte(3);
            out.writeDouble(number.doubleValue());
        } else {
            byte[] text = value.toString().getBytes(StandardCharsets.UTF_8);
            out.writeByte(4);
            out.writeInt(text.length);
            out.write(text);
        }
    }
}
