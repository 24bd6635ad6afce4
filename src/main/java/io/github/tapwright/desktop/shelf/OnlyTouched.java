package io.github.tapwright.desktop.shelf;

import io.github.tapwright.instrument.Body;
import io.github.tapwright.instrument.Construction;
import io.github.tapwright.instrument.Instrument;
import io.github.tapwright.instrument.Layer;
import io.github.tapwright.sitting.Air;
import io.github.tapwright.sitting.Conditions;
import io.github.tapwright.sitting.Microphone;
import io.github.tapwright.sitting.Placing;
import io.github.tapwright.sitting.WrittenDown;

/** Corrections that change only what the maker touched: of what is kept, what was shown in the form and what stands there now. */
enum OnlyTouched {
    /** What was typed; what was corrected elsewhere since the form was filled stays, where nothing was typed over it. */
    TYPED {
        @Override
        <T> T pick(T kept, T shown, T typed) {
            return typed.equals(shown) ? kept : typed;
        }
    },
    /** A correction taken back, so that it is shown and typed the other way round; what was corrected again since stays. */
    TAKEN_BACK {
        @Override
        <T> T pick(T kept, T shown, T typed) {
            return kept.equals(shown) ? typed : kept;
        }
    };

    abstract <T> T pick(T kept, T shown, T typed);

    /** Whether something that was to be taken back stays, because it was corrected again since. */
    static boolean stays(WrittenDown kept, WrittenDown after, WrittenDown before) {
        return !TAKEN_BACK.of(kept, after, before).equals(TYPED.of(kept, after, before));
    }

    /** The same of an instrument. */
    static boolean stays(Instrument kept, Instrument after, Instrument before) {
        return !TAKEN_BACK.of(kept, after, before).equals(TYPED.of(kept, after, before));
    }

    WrittenDown of(WrittenDown kept, WrittenDown shown, WrittenDown typed) {
        return new WrittenDown(
                pick(kept.instrument(), shown.instrument(), typed.instrument()),
                pick(kept.takenAt(), shown.takenAt(), typed.takenAt()),
                of(kept.conditions(), shown.conditions(), typed.conditions()));
    }

    Instrument of(Instrument kept, Instrument shown, Instrument typed) {
        return new Instrument(
                kept.shopNumber(),
                pick(kept.kind(), shown.kind(), typed.kind()),
                of(kept.body(), shown.body(), typed.body()),
                of(kept.construction(), shown.construction(), typed.construction()),
                pick(kept.nickname(), shown.nickname(), typed.nickname()),
                pick(kept.notes(), shown.notes(), typed.notes()));
    }

    private Body of(Body kept, Body shown, Body typed) {
        return new Body(
                pick(kept.scaleLengthMm(), shown.scaleLengthMm(), typed.scaleLengthMm()),
                pick(kept.stringCount(), shown.stringCount(), typed.stringCount()),
                pick(kept.soundholeDiameterMm(), shown.soundholeDiameterMm(), typed.soundholeDiameterMm()),
                pick(kept.notes(), shown.notes(), typed.notes()));
    }

    private Construction of(Construction kept, Construction shown, Construction typed) {
        return new Construction(
                pick(kept.kind(), shown.kind(), typed.kind()),
                of(kept.outerSkin(), shown.outerSkin(), typed.outerSkin()),
                of(kept.core(), shown.core(), typed.core()),
                of(kept.innerSkin(), shown.innerSkin(), typed.innerSkin()),
                pick(kept.bracing(), shown.bracing(), typed.bracing()));
    }

    private Layer of(Layer kept, Layer shown, Layer typed) {
        return new Layer(
                pick(kept.material(), shown.material(), typed.material()),
                pick(kept.thicknessMm(), shown.thicknessMm(), typed.thicknessMm()));
    }

    /** Strings and an added mass are told whole: another set was put on another day, and a mass sits somewhere. */
    private Conditions of(Conditions kept, Conditions shown, Conditions typed) {
        return new Conditions(
                pick(kept.stage(), shown.stage(), typed.stage()),
                of(kept.air(), shown.air(), typed.air()),
                pick(kept.strings(), shown.strings(), typed.strings()),
                pick(kept.hole(), shown.hole(), typed.hole()),
                of(kept.placing(), shown.placing(), typed.placing()),
                of(kept.microphone(), shown.microphone(), typed.microphone()),
                pick(kept.addedMass(), shown.addedMass(), typed.addedMass()),
                pick(kept.operator(), shown.operator(), typed.operator()),
                pick(kept.note(), shown.note(), typed.note()));
    }

    private Air of(Air kept, Air shown, Air typed) {
        return new Air(
                pick(kept.temperatureCelsius(), shown.temperatureCelsius(), typed.temperatureCelsius()),
                pick(kept.relativeHumidityPercent(), shown.relativeHumidityPercent(), typed.relativeHumidityPercent()),
                pick(kept.restedHours(), shown.restedHours(), typed.restedHours()));
    }

    private Placing of(Placing kept, Placing shown, Placing typed) {
        return new Placing(
                pick(kept.support(), shown.support(), typed.support()),
                pick(kept.strikeTool(), shown.strikeTool(), typed.strikeTool()),
                pick(kept.strikePlace(), shown.strikePlace(), typed.strikePlace()));
    }

    private Microphone of(Microphone kept, Microphone shown, Microphone typed) {
        return new Microphone(
                pick(kept.model(), shown.model(), typed.model()),
                pick(kept.distanceMm(), shown.distanceMm(), typed.distanceMm()),
                pick(kept.gain(), shown.gain(), typed.gain()));
    }
}
