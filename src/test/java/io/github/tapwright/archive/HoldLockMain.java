package io.github.tapwright.archive;

import java.io.IOException;
import java.nio.file.Path;

/** A program of its own that holds the lock of a database until its input ends. */
public final class HoldLockMain {

    private HoldLockMain() {}

    /**
     * Holds the lock.
     *
     * @param args the database's file
     * @throws IOException if its input cannot be read
     */
    public static void main(String[] args) throws IOException {
        try (Database database = Database.open(Path.of(args[0]))) {
            database.withoutTransaction("BEGIN IMMEDIATE");
            System.out.println("held");
            System.out.flush();
            System.in.transferTo(System.out);
            database.withoutTransaction("ROLLBACK");
        }
    }
}
