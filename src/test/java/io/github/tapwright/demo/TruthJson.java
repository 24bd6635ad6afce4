package io.github.tapwright.demo;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.github.tapwright.demo.BodySound.NamedMode;
import io.github.tapwright.note.run.Fret;
import io.github.tapwright.synthesis.StringNote;
import io.github.tapwright.synthesis.SyntheticTaps;
import io.github.tapwright.synthesis.TrueStrike;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** What is behind each recording, as truth.json. */
final class TruthJson {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private TruthJson() {}

    static ObjectNode sitting(DemoSitting sitting, BodySound sound, SyntheticTaps taps) {
        ObjectNode node = JSON.objectNode();
        node.put("file", sitting.file());
        var resonances = node.putArray("resonances");
        sound.modes().forEach(m -> resonances.add(resonance(m)));
        var strikes = node.putArray("strikes");
        taps.strikes().forEach(s -> strikes.add(strike(s)));
        return node;
    }

    private static ObjectNode resonance(NamedMode named) {
        return JSON.objectNode()
                .put("name", named.name())
                .put("frequency_hz", rounded(named.mode().frequencyHz()))
                .put("q", rounded(named.mode().q()))
                .put("decay_time_s", rounded(named.mode().decayTimeSeconds()));
    }

    static ObjectNode run(DemoRun run) {
        ObjectNode node = JSON.objectNode();
        node.put("file", run.file());
        var notes = node.putArray("notes");
        for (int i = 0; i < run.run().places().size(); i++) {
            Fret place = run.run().places().get(i);
            StringNote note = run.run().note(place);
            notes.add(JSON.objectNode()
                    .put("string", place.string())
                    .put("fret", place.fret())
                    .put("onset_s", rounded(run.run().onsetSeconds(i)))
                    .put("frequency_hz", rounded(note.pitchHz()))
                    .put("inharmonicity", rounded(note.stretch()))
                    .put("early_decay_time_s", rounded(note.damping().earlySeconds()))
                    .put("late_decay_time_s", rounded(note.damping().lateSeconds()))
                    .put("dead", run.run().dead().containsKey(place)));
        }
        return node;
    }

    private static ObjectNode strike(TrueStrike strike) {
        ObjectNode node = JSON.objectNode();
        node.put("onset_s", rounded(strike.onsetSeconds()));
        node.put("good", strike.good());
        strike.fault().ifPresent(f -> {
            node.put("planted", f.name().toLowerCase(Locale.ROOT).replace('_', ' '));
            node.put("expected_rejection", f.reason().key());
        });
        strike.secondOnsetSeconds().ifPresent(s -> node.put("second_onset_s", rounded(s)));
        return node;
    }

    /** Seven digits say more than any measurement here and leave no rounding of the last bit in the file. */
    private static BigDecimal rounded(double value) {
        return new BigDecimal(value, new MathContext(7));
    }
}
