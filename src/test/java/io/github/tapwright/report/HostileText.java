package io.github.tapwright.report;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.Entry;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.InstrumentKind;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.instrument.ShopNumber;
import io.github.tapwright.instrument.Stage;
import io.github.tapwright.instrument.StringState;
import io.github.tapwright.instrument.Strings;
import io.github.tapwright.mode.HoleState;
import io.github.tapwright.sitting.AddedMass;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import java.util.Optional;

/** Texts that would do harm as anything but text, put into every field a maker can type into. */
enum HostileText {
    SCRIPT("<script>alert(1)</script>"),
    ATTRIBUTE("\"><img src=x onerror=alert(1)>'"),
    DATA_END("]]></svg></style>--><!--"),
    CONTROLS("\u2028\u00AD\uFEFF"),
    RIGHT_TO_LEFT("\u202Efdp.\u2066\u05E9\u200F"),
    HALF_A_PAIR("\uD800\uDC00\uD83C"),
    TEMPLATE("${7*7} {{x}} %n %s"),
    LONG("M");

    private static final String END = " harmless end";
    private static final int SHOP_NUMBER = 40;

    private final String harm;

    HostileText(String harm) {
        this.harm = harm;
    }

    /** The longest line there may be. */
    String line() {
        return filled(Entry.LONGEST_LINE) + END;
    }

    /** The longest note there may be, with the controls that a line refuses. */
    String note() {
        String controls = "\u0000\u0001\b\u001B\u007F\r\n\t";
        return harm + controls + filled(Entry.LONGEST_NOTE - harm.length() - controls.length()) + END;
    }

    private String filled(int length) {
        return harm.repeat(length).substring(0, length - END.length());
    }

    /** As a file system takes it. */
    String fileName() {
        return this == HALF_A_PAIR ? "half" : (harm + harm).replace('/', '|');
    }

    Instrument instrument() {
        Optional<String> line = Optional.of(line());
        Layer layer = new Layer(line, Optional.of(1.0));
        return new Instrument(
                new ShopNumber(harm.repeat(SHOP_NUMBER).substring(0, SHOP_NUMBER)),
                InstrumentKind.CLASSICAL,
                new Body(Optional.of(650.0), Optional.of(6), Optional.of(85.0), Optional.of(note())),
                new Construction(Optional.empty(), layer, layer, layer, line),
                line,
                Optional.of(note()));
    }

    Conditions conditions() {
        Optional<String> line = Optional.of(line());
        return new Conditions(
                Optional.of(Stage.STRUNG),
                new Air(Optional.of(20.0), Optional.of(45.0)),
                new Strings(Optional.of(StringState.DAMPED), line, Optional.empty()),
                HoleState.OPEN,
                new Placing(line, line, line),
                new Microphone(line, Optional.of(500.0), line),
                Optional.of(new AddedMass(20, line)),
                line,
                Optional.of(note()));
    }
}
