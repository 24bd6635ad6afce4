-- What the workshop says of itself on its reports. Rows are only ever added; the latest one holds. The lines of the
-- address are separated by line feeds; the picture is an original like any recording.

CREATE TABLE shop (
    id                INTEGER PRIMARY KEY AUTOINCREMENT,
    kept_at           TEXT NOT NULL,
    name              TEXT,
    address           TEXT,
    picture_sha256    TEXT REFERENCES original (sha256),
    picture_file_name TEXT
) STRICT;
