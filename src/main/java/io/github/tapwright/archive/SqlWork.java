package io.github.tapwright.archive;

import java.io.IOException;
import java.sql.Connection;
import java.sql.SQLException;

/**
 * Work inside one transaction.
 *
 * @param <T> what the work gives
 */
@FunctionalInterface
interface SqlWork<T> {

    T run(Connection connection) throws SQLException, IOException;
}
