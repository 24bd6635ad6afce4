-- What every table should add up to, so that a bit turned over on the disk shows. SQLite's own check looks at the shape
-- of the database and not at what stands in its cells. TableSums says how the sums are made; they are changed in the
-- same transaction as the rows. The tables' own definitions are summed under the name sqlite_schema.

CREATE TABLE table_sum (
    name      TEXT PRIMARY KEY,
    row_count INTEGER NOT NULL,
    high      INTEGER NOT NULL,
    low       INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
