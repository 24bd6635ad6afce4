package io.github.tapwright.archive;

import java.io.File;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.sql.SQLException;
import java.util.Locale;
import org.sqlite.SQLiteErrorCode;

/** Turns what SQLite and the file system report into what the maker can do about it. */
final class Trouble {

    private static final int PRIMARY_CODE = 0xff;

    /** What the smallest transaction with its log and the log's index may need. */
    private static final int TOO_LITTLE_BYTES = 128 << 10;

    private Trouble() {}

    static ArchiveException with(Path database, SQLException failure) {
        SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(failure.getErrorCode() & PRIMARY_CODE);
        String message = switch (code) {
            case SQLITE_BUSY, SQLITE_LOCKED ->
                "the archive " + database + " is locked by another program; let it finish or close it, then try again";
            case SQLITE_FULL -> diskFull(database);
            case SQLITE_IOERR -> hasNoSpace(database) ? diskFull(database) : failed(database, failure);
            case SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN -> notWritable(database);
            case SQLITE_CORRUPT, SQLITE_NOTADB ->
                "the database " + database
                        + " is damaged or is no database; keep the folder as it is and restore the latest backup"
                        + " into a new folder";
            default -> failed(database, failure);
        };
        return new ArchiveException(message, failure);
    }

    private static String failed(Path database, SQLException failure) {
        return "the database " + database + " failed (" + failure.getMessage()
                + "); run verify, and restore a backup into a new folder if it reports damage";
    }

    /** A full disk shows itself as several kinds of failure, some of which do not say so. */
    private static boolean hasNoSpace(Path file) {
        File disk = Durable.parent(file).toFile();
        return disk.getTotalSpace() > 0 && disk.getUsableSpace() < TOO_LITTLE_BYTES;
    }

    /** Whether it is no damage of the archive but something around it, which will pass. */
    static boolean willPass(ArchiveException trouble) {
        return trouble.getCause() instanceof SQLException failure
                && switch (SQLiteErrorCode.getErrorCode(failure.getErrorCode() & PRIMARY_CODE)) {
                    case SQLITE_BUSY,
                            SQLITE_LOCKED,
                            SQLITE_FULL,
                            SQLITE_READONLY,
                            SQLITE_PERM,
                            SQLITE_CANTOPEN,
                            SQLITE_IOERR,
                            SQLITE_NOMEM -> true;
                    default -> false;
                };
    }

    /** Trouble while a copy is written: what has to do with writing is about the copy, the rest about the database. */
    static ArchiveException withCopy(Path database, Path copy, SQLException failure) {
        SQLiteErrorCode code = SQLiteErrorCode.getErrorCode(failure.getErrorCode() & PRIMARY_CODE);
        boolean writing = switch (code) {
            case SQLITE_FULL, SQLITE_READONLY, SQLITE_PERM, SQLITE_CANTOPEN -> true;
            case SQLITE_IOERR -> hasNoSpace(copy);
            default -> false;
        };
        return with(writing ? copy : database, failure);
    }

    /** Something was read that this program would never have written. */
    static ArchiveException with(Path database, RuntimeException failure) {
        return new ArchiveException(
                "the database " + database + " holds something that cannot be (" + failure.getMessage()
                        + "); run verify, and restore the latest backup into a new folder",
                failure);
    }

    static ArchiveException with(Path file, IOException failure) {
        if (failure instanceof NoSuchFileException) {
            return new ArchiveException("there is no file " + file + "; check its name and folder", failure);
        }
        if (failure instanceof AccessDeniedException) {
            return new ArchiveException(notWritable(file), failure);
        }
        String reason = String.valueOf(failure.getMessage());
        String lower = reason.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space") || lower.contains("quota")) {
            return new ArchiveException(diskFull(file), failure);
        }
        if (lower.contains("read-only file system")) {
            return new ArchiveException(notWritable(file), failure);
        }
        return new ArchiveException(
                "cannot work with " + file + " (" + reason + "); check the disk and its permissions", failure);
    }

    static ArchiveException with(Path file, ReadOnlyFileSystemException failure) {
        return new ArchiveException(notWritable(file), failure);
    }

    private static String diskFull(Path file) {
        return "the disk of " + file + " is full; free some space and try again, nothing was half written";
    }

    private static String notWritable(Path file) {
        return "no permission to write " + file + " or its folder; give yourself write permission, or choose another"
                + " folder";
    }
}
