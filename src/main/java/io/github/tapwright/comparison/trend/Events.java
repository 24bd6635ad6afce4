package io.github.tapwright.comparison.trend;

import io.github.tapwright.comparison.StageClass;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.SittingOutline;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds what was done to an instrument between its sittings: a new stage, new strings. */
final class Events {

    private final ZoneId zone;
    private final List<Event> found = new ArrayList<>();
    private Optional<Stage> stage = Optional.empty();
    private Optional<String> set = Optional.empty();
    private Optional<LocalDate> fitted = Optional.empty();

    private Events(ZoneId zone) {
        this.zone = zone;
    }

    /** Oldest first. */
    static List<Event> between(List<SittingOutline> inOrderOfTime, ZoneId zone) {
        Events events = new Events(zone);
        Optional<Instant> before = Optional.empty();
        for (SittingOutline sitting : inOrderOfTime) {
            Instant now = sitting.takenAt().instant();
            before.ifPresent(then -> events.look(then, now, sitting.conditions()));
            events.remember(sitting.conditions());
            before = Optional.of(now);
        }
        return List.copyOf(events.found);
    }

    private void look(Instant then, Instant now, Conditions conditions) {
        Optional<Event> newStage = conditions
                .stage()
                .flatMap(s -> stage.filter(old -> changes(old, s)))
                .map(old -> event(now, conditions.stage().map(Stage::words).orElseThrow()));
        newStage.or(() -> newStrings(then, now, conditions)).ifPresent(found::add);
    }

    /** Strung and later are one. */
    private static boolean changes(Stage old, Stage now) {
        return old != now && !(StageClass.of(old) == StageClass.STRUNG && StageClass.of(now) == StageClass.STRUNG);
    }

    private Optional<Event> newStrings(Instant then, Instant now, Conditions conditions) {
        Optional<LocalDate> day = conditions.strings().fittedOn();
        Optional<Instant> onThatDay =
                day.map(d -> d.atStartOfDay(zone).toInstant()).filter(d -> d.isAfter(then) && !d.isAfter(now));
        boolean otherDay = day.isPresent() && fitted.isPresent() && !day.equals(fitted);
        if (onThatDay.isPresent() || otherDay) {
            return Optional.of(event(onThatDay.orElse(now), "strings fitted"));
        }
        return conditions
                .strings()
                .setName()
                .filter(name -> set.isPresent() && !set.get().equals(name))
                .map(name -> event(now, "other strings: " + name));
    }

    private Event event(Instant at, String what) {
        return new Event(at, at.atZone(zone).toLocalDate(), what);
    }

    private void remember(Conditions conditions) {
        stage = conditions.stage().or(() -> stage);
        set = conditions.strings().setName().or(() -> set);
        fitted = conditions.strings().fittedOn().or(() -> fitted);
    }
}
