package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Moment;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.WrittenDown;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationTest {

    private static final int NEWEST =
            Migration.known().stream().mapToInt(Migration::version).max().orElseThrow();

    @TempDir
    Path folder;

    @Test
    void migratesAnOlderArchiveAfterBackingItUp() throws IOException {
        fill();

        try (Archive archive =
                Archive.open(archive(), Workshop.CLOCK, withAnother("ALTER TABLE sitting ADD room TEXT"))) {
            assertThat(archive.sittings().list(Optional.empty())).hasSize(1);
            assertThat(archive.verify(Progress.SILENT).clean()).isTrue();
        }

        Path backup = onlyFile(archive().resolve("backups"));
        assertThat(backup.getFileName().toString())
                .startsWith("before-leaving-version-" + NEWEST + "-20260314-092653-");
        Path old = Files.createDirectory(folder.resolve("old"));
        Files.copy(backup, old.resolve("tapwright.db"));
        try (Archive archive = Archive.open(old, Workshop.CLOCK)) {
            assertThat(archive.sittings().list(Optional.empty())).hasSize(1);
        }
    }

    @Test
    void opensAnArchiveOfItsOwnVersionWithoutABackup() {
        fill();
        fill();
        assertThat(archive().resolve("backups")).isEmptyDirectory();
    }

    @Test
    void anEditOfAnInstrumentLeavesTheRowItReplaced() throws SQLException {
        fill();
        try (Workshop workshop = Workshop.in(archive())) {
            Instrument before = workshop.archive.instruments().all().get(0);
            workshop.archive
                    .instruments()
                    .replace(
                            before.shopNumber(),
                            new Instrument(
                                    before.shopNumber(),
                                    before.kind(),
                                    before.body(),
                                    before.construction(),
                                    Optional.of("a new name"),
                                    before.notes()));
        }
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + archive().resolve("tapwright.db"));
                Statement statement = connection.createStatement();
                ResultSet kept = statement.executeQuery("SELECT kind, replaced_at FROM instrument_before")) {
            assertThat(kept.next()).isTrue();
            assertThat(kept.getString("replaced_at")).matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{9}Z");
            assertThat(kept.next()).isFalse();
        }
    }

    @Test
    void anArchiveOfTheFirstVersionGetsItsHistory() {
        Path old = folder.resolve("first");
        List<Migration> first = Migration.known().subList(0, 1);
        Archive.open(old, Workshop.CLOCK, first).close();
        try (Archive archive = Archive.open(old, Workshop.CLOCK)) {
            assertThat(archive.verify(Progress.SILENT).clean()).isTrue();
        }
        assertThat(old.resolve("backups")).isDirectoryContaining("glob:**before-leaving-version-1-*");
    }

    @Test
    void anArchiveOfTheSecondVersionGetsRoomForCalibrationsAndItsSittingsAreOfTaps() throws SQLException {
        Path old = folder.resolve("second");
        Workshop.in(old, Migration.known().subList(0, 2)).close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + old.resolve("tapwright.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("INSERT INTO sitting (instrument_id, taken_at, time_known, added_at)"
                    + " VALUES (1, '2026-03-14T09:26:53.000000000Z', 1, '2026-03-14T09:26:53.000000000Z')");
        }
        try (Archive archive = Archive.open(old, Workshop.CLOCK)) {
            assertThat(archive.sittings().list(Optional.empty()))
                    .singleElement()
                    .extracting(SittingSummary::procedure)
                    .isEqualTo(Procedure.BodyTaps.KEY);
            assertThat(archive.calibrations().all()).isEmpty();
        }
        assertThat(old.resolve("backups")).isDirectoryContaining("glob:**before-leaving-version-2-*");
    }

    @Test
    void anArchiveOfTheFifthVersionKeepsWhatAnEditReplacesOfMassAndRestToo() throws SQLException {
        Path old = folder.resolve("fifth");
        Workshop.in(old, Migration.known().subList(0, 5)).close();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + old.resolve("tapwright.db"));
                Statement statement = connection.createStatement()) {
            statement.executeUpdate("INSERT INTO sitting (instrument_id, taken_at, time_known, added_at)"
                    + " VALUES (1, '2026-03-14T09:26:53.000000000Z', 1, '2026-03-14T09:26:53.000000000Z')");
        }
        SittingId id = new SittingId(1);
        Conditions loaded = conditions(Optional.of(30.0), Optional.of(new AddedMass(20, Optional.of("bridge"))));
        Conditions bare = conditions(Optional.empty(), Optional.empty());
        try (Archive archive = Archive.open(old, Workshop.CLOCK)) {
            Moment taken = Moment.at(Instant.parse("2026-03-14T09:26:53Z"));
            archive.sittings().correct(id, new WrittenDown(Workshop.NUMBER, taken, loaded));
            archive.sittings().correct(id, new WrittenDown(Workshop.NUMBER, taken, bare));
            assertThat(archive.sittings().corrected(id))
                    .containsExactly(
                            new WrittenDown(Workshop.NUMBER, taken, Conditions.UNKNOWN),
                            new WrittenDown(Workshop.NUMBER, taken, loaded));
        }
    }

    @Test
    void anArchiveOfTheEleventhVersionKeepsItsSittingsAndCanSetThemAside() throws SQLException {
        fill();
        try (Connection connection =
                        DriverManager.getConnection("jdbc:sqlite:" + archive().resolve("tapwright.db"));
                Statement statement = connection.createStatement()) {
            for (String sql : List.of(
                    "DROP TABLE sitting_set_aside",
                    "DROP TABLE calibration_withdrawn",
                    "DELETE FROM table_sum WHERE name IN ('sitting_set_aside', 'calibration_withdrawn')",
                    "PRAGMA user_version = 11")) {
                statement.execute(sql);
            }
        }
        SittingId id = new SittingId(1);
        OutOfUse why = new OutOfUse("a neighbour's guitar", Instant.parse("2026-03-14T09:26:53Z"));
        try (Archive archive = Archive.open(archive(), Workshop.CLOCK)) {
            assertThat(archive.sittings().find(id).orElseThrow().setAside()).isEmpty();
            archive.sittings().setAside(id, why);
            assertThat(archive.verify(Progress.SILENT).clean()).isTrue();
        }
        try (Archive archive = Archive.open(archive(), Workshop.CLOCK)) {
            assertThat(archive.sittings().find(id).orElseThrow().setAside()).contains(why);
        }
        assertThat(archive().resolve("backups")).isDirectoryContaining("glob:**before-leaving-version-11-*");
    }

    private static Conditions conditions(Optional<Double> restedHours, Optional<AddedMass> mass) {
        Conditions c = Conditions.UNKNOWN;
        Air air = new Air(Optional.empty(), Optional.empty(), restedHours);
        return new Conditions(
                c.stage(), air, c.strings(), c.hole(), c.placing(), c.microphone(), mass, c.operator(), c.note());
    }

    @Test
    void aMigrationThatFailsLeavesTheOldVersion() {
        fill();

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(
                        archive(),
                        Workshop.CLOCK,
                        withAnother("ALTER TABLE sitting ADD room TEXT; INSERT INTO no_such_table VALUES (1)")));

        try (Workshop workshop = Workshop.in(archive())) {
            assertThat(workshop.archive.sittings().list(Optional.empty())).hasSize(1);
        }
    }

    @Test
    void refusesAnArchiveOfANewerProgramAndLeavesItAlone() {
        fill();
        Archive.open(archive(), Workshop.CLOCK, withAnother("ALTER TABLE sitting ADD room TEXT"))
                .close();

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(archive(), Workshop.CLOCK))
                .withMessageContaining("has version " + (NEWEST + 1) + ", this program knows up to " + NEWEST
                        + "; use the newer program");
    }

    @Test
    void refusesFoldersThatAreNoArchive() throws IOException {
        Path photos = Files.createDirectory(folder.resolve("photos"));
        Path photo = Files.writeString(photos.resolve("holiday.jpg"), "x");

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(photos, Workshop.CLOCK))
                .withMessageContaining("is not an archive and not empty");
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(photo, Workshop.CLOCK))
                .withMessageContaining("is a file");
        assertThat(photos).isDirectoryContaining(p -> p.equals(photo));
    }

    @Test
    void refusesAnArchiveWithoutItsDatabase() throws IOException {
        fill();
        Files.delete(archive().resolve("tapwright.db"));

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(archive(), Workshop.CLOCK))
                .withMessageContaining("restore the latest backup");
    }

    @Test
    void refusesDatabasesOfOtherProgramsAndDamagedOnes() throws IOException {
        Path foreign = Files.createDirectory(folder.resolve("foreign"));
        try (Database database = Database.open(foreign.resolve("tapwright.db"))) {
            database.withoutTransaction("CREATE TABLE recipe (name TEXT)");
        }
        Path broken = Files.createDirectory(folder.resolve("broken"));
        Files.writeString(broken.resolve("tapwright.db"), "This is no database, however long one looks at it.");

        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(foreign, Workshop.CLOCK))
                .withMessageContaining("was not made by this program");
        assertThatExceptionOfType(ArchiveException.class)
                .isThrownBy(() -> Archive.open(broken, Workshop.CLOCK))
                .withMessageContaining("damaged or is no database");
    }

    private void fill() {
        try (Workshop workshop = Workshop.in(archive())) {
            workshop.add(TestWav.write(folder.resolve("taps.wav"), 1));
        }
    }

    private Path archive() {
        return folder.resolve("archive");
    }

    private static List<Migration> withAnother(String sql) {
        List<Migration> migrations = new ArrayList<>(Migration.known());
        migrations.add(Migration.of(migrations.size() + 1, sql));
        return migrations;
    }

    private static Path onlyFile(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> all = files.toList();
            assertThat(all).hasSize(1);
            return all.get(0);
        }
    }
}
