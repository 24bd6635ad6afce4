package io.github.tapwright.archive;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.CalibrationId;
import io.github.tapwright.sitting.CalibrationStore;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Findings;
import io.github.tapwright.sitting.InstrumentStore;
import io.github.tapwright.sitting.NewAnalysis;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Procedure;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.WrittenDown;
import io.github.tapwright.sitting.live.Capture;
import io.github.tapwright.sitting.live.CaptureId;
import io.github.tapwright.sitting.live.CaptureNotes;
import io.github.tapwright.sitting.live.LiveFormat;
import io.github.tapwright.sitting.live.SoundBlock;
import io.github.tapwright.tap.TapSettings;
import java.nio.file.Path;

/** Each way in which the program writes into an archive, or beside it, done once and small. */
enum WriteJob {
    /** Makes an archive where none was, with an instrument and a sitting. */
    CREATE {
        @Override
        void prepare(Path place) {
            layOut(place);
        }

        @Override
        void run(Path place, Said said) {
            add(place, said);
        }
    },
    /** Adds a sitting of two recordings, an analysis with something in every field, and a name. */
    ADD {
        @Override
        void run(Path place, Said said) {
            add(place, said);
        }
    },
    /** Records live, stops, and keeps the recording as a sitting. */
    RECORD {
        @Override
        void run(Path place, Said said) {
            try (Workshop workshop = Workshop.in(archive(place))) {
                CaptureId id = record(workshop);
                said.kept(workshop.keepCapture()
                        .keep(id, n -> n, Progress.SILENT)
                        .sitting()
                        .id());
            }
        }
    },
    /** Puts slips right: renumbers a guitar, moves a sitting to it or from it; sets it aside, withdraws a calibration, takes both back. */
    SLIPS {
        @Override
        void prepare(Path place) {
            super.prepare(place);
            try (Workshop workshop = Workshop.in(archive(place))) {
                workshop.calibrate(sound(place, "tone.wav"));
            }
        }

        @Override
        void run(Path place, Said said) {
            try (Workshop workshop = Workshop.in(archive(place))) {
                putRight(workshop.archive);
                said.kept(new SittingId(1));
            }
        }
    },
    /** Brings an archive of the first version up to date. */
    MIGRATE {
        @Override
        void prepare(Path place) {
            Archive.open(archive(place), Workshop.CLOCK, Migration.known().subList(0, 1))
                    .close();
        }

        @Override
        void run(Path place, Said said) {
            Archive.open(archive(place), Workshop.CLOCK).close();
        }
    },
    /** Writes a backup. */
    BACK_UP {
        @Override
        void run(Path place, Said said) {
            try (Workshop workshop = Workshop.in(archive(place))) {
                workshop.archive.backUp(place.resolve("copy.zip"), Progress.SILENT);
            }
            said.done("copy.zip");
        }
    },
    /** Makes an archive of a backup. */
    RESTORE {
        @Override
        void prepare(Path place) {
            super.prepare(place);
            try (Workshop workshop = Workshop.in(archive(place))) {
                workshop.archive.backUp(place.resolve("backup.zip"), Progress.SILENT);
            }
        }

        @Override
        void run(Path place, Said said) {
            new Restore(Workshop.CLOCK).restore(place.resolve("backup.zip"), place.resolve("again"), Progress.SILENT);
            said.done("again");
        }
    };

    /** What a program tells the one who waits for it, and what must therefore be true from then on. */
    interface Said {

        void kept(SittingId id);

        /** A file or folder beside the archive is complete. */
        void done(String name);
    }

    static Path archive(Path place) {
        return place.resolve("archive");
    }

    /** What is there before; one sitting if nothing else is said. */
    void prepare(Path place) {
        layOut(place);
        try (Workshop workshop = Workshop.in(archive(place))) {
            workshop.add(sound(place, "before.wav"));
        }
    }

    private static void layOut(Path place) {
        TestWav.writeRoom(sound(place, "before.wav"), 1);
        TestWav.writeRoom(sound(place, "first.wav"), 2);
        TestWav.writeRoom(sound(place, "second.wav"), 3);
    }

    abstract void run(Path place, Said said);

    private static void add(Path place, Said said) {
        try (Workshop workshop = Workshop.in(archive(place))) {
            SittingId id = workshop.add(sound(place, "first.wav"), sound(place, "second.wav"))
                    .id();
            said.kept(id);
            NewAnalysis large = new NewAnalysis(Workshop.CLOCK.instant(), new Findings.OfTaps(AddSittingMain.RESULT));
            workshop.archive.sittings().addAnalysis(id, large);
        }
    }

    /** There and back again, wherever it was left before. */
    private static void putRight(Archive archive) {
        InstrumentStore shelf = archive.instruments();
        ShopNumber mistyped = new ShopNumber("85");
        ShopNumber meant = new ShopNumber("58");
        if (shelf.find(mistyped).isEmpty() && shelf.find(meant).isEmpty()) {
            shelf.add(Instrument.of(mistyped, InstrumentKind.CLASSICAL));
        }
        boolean right = shelf.find(meant).isPresent();
        ShopNumber from = right ? meant : mistyped;
        ShopNumber to = right ? mistyped : meant;
        shelf.replace(from, shelf.find(from).orElseThrow().renumbered(to));
        SittingId id = new SittingId(1);
        SittingStore sittings = archive.sittings();
        Sitting sitting = sittings.find(id).orElseThrow();
        ShopNumber whose = sitting.instrument().equals(Workshop.NUMBER) ? to : Workshop.NUMBER;
        sittings.correct(id, new WrittenDown(whose, sitting.takenAt(), sitting.conditions()));
        sittings.setAside(id, new OutOfUse("kept by mistake", Workshop.CLOCK.instant()));
        sittings.takeBack(id, Workshop.CLOCK.instant());
        CalibrationStore calibrations = archive.calibrations();
        CalibrationId calibration = calibrations.all().get(0).id();
        calibrations.withdraw(calibration, new OutOfUse("wrong level", Workshop.CLOCK.instant()));
        calibrations.takeBack(calibration, Workshop.CLOCK.instant());
    }

    private static CaptureId record(Workshop workshop) {
        LiveFormat format = new LiveFormat(48_000, 1, 16);
        CaptureNotes notes = new CaptureNotes(
                new ShopNumber(Workshop.NUMBER.text()),
                new Procedure.BodyTaps(TapSettings.STANDARD),
                Conditions.UNKNOWN,
                "a microphone",
                format,
                Workshop.CLOCK.instant());
        try (Capture capture = workshop.archive.captures().begin(notes)) {
            for (byte block = 0; block < 3; block++) {
                byte[] sound = new byte[48_000];
                sound[0] = block;
                capture.append(new SoundBlock(format, sound));
            }
            return capture.id();
        }
    }

    /** The maker's own files lie beside the place, so that writing them counts as nothing. */
    private static Path sound(Path place, String name) {
        return Durable.parent(place).resolve(name);
    }
}
