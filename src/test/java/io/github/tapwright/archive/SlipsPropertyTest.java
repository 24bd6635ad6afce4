package io.github.tapwright.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.RefusedEntryException;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.sitting.FormerNumber;
import io.github.tapwright.sitting.OutOfUse;
import io.github.tapwright.sitting.Progress;
import io.github.tapwright.sitting.ShelfPlace;
import io.github.tapwright.sitting.Sitting;
import io.github.tapwright.sitting.SittingId;
import io.github.tapwright.sitting.SittingStore;
import io.github.tapwright.sitting.SittingSummary;
import io.github.tapwright.sitting.WrittenDown;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Many slips put right in any order: the archive says what the last correction said, and keeps what each of them replaced. */
class SlipsPropertyTest {

    private static final int SLIPS = 150;

    private final Random random = new Random(20_261_129);
    private final List<ShopNumber> guitars = new ArrayList<>();
    private final Map<ShopNumber, List<ShopNumber>> former = new HashMap<>();
    private final Map<SittingId, ShopNumber> whose = new HashMap<>();
    private final Map<SittingId, Integer> moves = new HashMap<>();
    private final Map<SittingId, OutOfUse> aside = new HashMap<>();

    @TempDir
    Path folder;

    @Test
    void whateverIsPutRightHoldsAndWhatItReplacedIsKept() {
        List<Sitting> first = new ArrayList<>();
        try (Workshop workshop = Workshop.in(folder.resolve("archive"))) {
            guitars.add(Workshop.NUMBER);
            for (String other : List.of("1", "2")) {
                workshop.archive.instruments().add(Instrument.of(new ShopNumber(other), InstrumentKind.CLASSICAL));
                guitars.add(new ShopNumber(other));
            }
            for (int i = 0; i < 3; i++) {
                first.add(workshop.add(TestWav.write(folder.resolve("taps-" + i + ".wav"), i)));
                whose.put(first.get(i).id(), Workshop.NUMBER);
            }
            for (int i = 0; i < SLIPS; i++) {
                slip(workshop.archive, i, any(first).id());
            }
        }
        try (Archive archive = Archive.open(folder.resolve("archive"), Workshop.CLOCK)) {
            assertThat(archive.verify(Progress.SILENT).problems()).isEmpty();
            first.forEach(was -> look(archive.sittings(), was));
            guitars.forEach(g -> assertThat(archive.instruments().formerNumbers(g))
                    .extracting(FormerNumber::shopNumber)
                    .isEqualTo(former.getOrDefault(g, List.of())));
            for (ShelfPlace place : archive.instruments().shelf()) {
                look(place);
            }
        }
    }

    private <T> T any(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private void slip(Archive archive, int number, SittingId id) {
        switch (random.nextInt(4)) {
            case 0 -> renumber(archive, any(guitars), new ShopNumber("N-" + number));
            case 1 -> move(archive, id, any(guitars));
            case 2 -> {
                OutOfUse why = new OutOfUse("reason " + number, Workshop.CLOCK.instant());
                archive.sittings().setAside(id, why);
                aside.put(id, why);
            }
            default -> {
                archive.sittings().takeBack(id, Workshop.CLOCK.instant());
                aside.remove(id);
            }
        }
    }

    private void renumber(Archive archive, ShopNumber from, ShopNumber to) {
        Instrument before = archive.instruments().find(from).orElseThrow();
        ShopNumber other = any(guitars);
        if (!other.equals(from)) {
            assertThatExceptionOfType(RefusedEntryException.class)
                    .isThrownBy(() -> archive.instruments().replace(from, before.renumbered(other)));
        }
        archive.instruments().replace(from, before.renumbered(to));
        guitars.set(guitars.indexOf(from), to);
        List<ShopNumber> had = new ArrayList<>(former.getOrDefault(from, List.of()));
        had.add(from);
        former.put(to, had);
        whose.replaceAll((sitting, of) -> of.equals(from) ? to : of);
    }

    private void move(Archive archive, SittingId id, ShopNumber to) {
        Sitting sitting = archive.sittings().find(id).orElseThrow();
        archive.sittings().correct(id, new WrittenDown(to, sitting.takenAt(), sitting.conditions()));
        whose.put(id, to);
        moves.merge(id, 1, Integer::sum);
    }

    private void look(SittingStore store, Sitting was) {
        SittingId id = was.id();
        Optional<OutOfUse> setAside = Optional.ofNullable(aside.get(id));
        ShopNumber now = Optional.ofNullable(whose.get(id)).orElseThrow();
        assertThat(store.find(id))
                .contains(new Sitting(
                        id,
                        now,
                        was.takenAt(),
                        was.addedAt(),
                        was.conditions(),
                        was.recordings(),
                        was.analyses(),
                        was.givenNames(),
                        setAside));
        assertThat(store.corrected(id)).hasSize(moves.getOrDefault(id, 0));
        assertThat(store.list(Optional.of(now)))
                .filteredOn(s -> s.id().equals(id))
                .singleElement()
                .extracting(SittingSummary::setAside)
                .isEqualTo(setAside);
        assertThat(store.outlines(List.of(id)).get(0).setAside()).isEqualTo(setAside);
    }

    private void look(ShelfPlace place) {
        List<SittingId> of = whose.entrySet().stream()
                .filter(e -> e.getValue().equals(place.instrument().shopNumber()))
                .map(Map.Entry::getKey)
                .toList();
        long out = of.stream().filter(aside::containsKey).count();
        assertThat(place.setAside()).isEqualTo((int) out);
        assertThat(place.sittings()).isEqualTo(of.size() - (int) out);
        assertThat(place.last().map(ShelfPlace.LastSitting::id)).matches(last -> last.isPresent() == (of.size() > out));
    }
}
