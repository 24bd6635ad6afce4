/**
 * The archive on disk: a plain folder with a SQLite database and the originals of all recordings.
 *
 * <pre>
 * tapwright.db              instruments, sittings, calibrations, results (WAL, foreign keys, synchronous = FULL)
 * originals/ab/ab12….wav    recordings bit for bit, named by SHA-256, never changed
 * originals/incoming/       copies on their way in; what a crash leaves here is listed by a check
 * captures/                 recordings in progress, and those that wait to be kept
 * backups/                  copies of the database made before each migration
 * </pre>
 *
 * <p>The results of each procedure (taps, notes, plucks) lie in tables of their own. Start at {@link io.github.tapwright.archive.Archive}. Originals are on disk before the one transaction
 * that refers to them begins, so a crash at any moment leaves whole sittings and at worst an original nobody
 * refers to. Every row goes through {@link io.github.tapwright.archive.Insert}, which keeps the sum of its table, so that the check sees
 * a changed cell. Several programs may have an archive open at once. Trouble comes as an
 * {@link io.github.tapwright.archive.ArchiveException} with a remedy. Nothing outside this package uses
 * {@code java.sql}.
 */
@NullMarked
package io.github.tapwright.archive;

import org.jspecify.annotations.NullMarked;
