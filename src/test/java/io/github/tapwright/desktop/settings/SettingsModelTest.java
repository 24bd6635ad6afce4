package io.github.tapwright.desktop.settings;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.chart.Light;
import io.github.tapwright.climate.ShopWindow;
import io.github.tapwright.comparison.SetUpSpread;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.work.Notices;
import io.github.tapwright.note.run.Tuning;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsModelTest {

    private static final SettingsModel.TypedSpread STUDIED = SettingsModel.TypedSpread.NOTHING;

    @TempDir
    Path folder;

    private SettingsModel open() {
        return new SettingsModel(new SettingsFile(folder), new Notices(failure -> {}));
    }

    @Test
    void changesAreThereTheNextTime() {
        SettingsModel settings = open();
        assertThat(settings.now().get()).isEqualTo(DeskSettings.FIRST);
        settings.change(settings.now().get().inOtherLight().in(Units.FAHRENHEIT));
        assertThat(settings.light().get()).isEqualTo(Light.NIGHT);

        assertThat(open().now().get())
                .isEqualTo(new DeskSettings(
                        Light.NIGHT,
                        Units.FAHRENHEIT,
                        440,
                        Tuning.CLASSICAL_NOTES,
                        19,
                        ShopWindow.USUAL,
                        Optional.empty()));
    }

    @Test
    void tuningAndWindowAreTakenAsTypedOrRefusedWithAReason() {
        SettingsModel settings = open();
        settings.take(new SettingsModel.Typed("442", "D2 A2 D3 G3 B3 E4", "20", "38", "46,5", STUDIED));
        assertThat(settings.a4Hz().get()).isEqualTo(442);
        assertThat(open().window()).isEqualTo(new ShopWindow(38, 46.5));
        assertThat(open().now().get().tuning()).isEqualTo(Tuning.named("D2,A2,D3,G3,B3,E4", 442, 20));

        String[][] wrong = {
            {"44", "E2,A2", "19", "38", "46"},
            {"490", "E2,A2", "19", "38", "46"},
            {"442", "E2,A2", "19", "46", "38"},
            {"442", "E2,A2", "19", "", "46"},
            {"loud", "E2,A2", "19", "38", "46"},
            {"442", "E2,H2", "19", "38", "46"},
            {"442", "", "19", "38", "46"},
            {"442", "E2,A2", "19.5", "38", "46"},
            {"442", "E2,A2", "99", "38", "46"}
        };
        DeskSettings before = settings.now().get();
        for (String[] typed : wrong) {
            settings.take(new SettingsModel.Typed(typed[0], typed[1], typed[2], typed[3], typed[4], STUDIED));
            assertThat(settings.now().get())
                    .isEqualTo(before)
                    .isEqualTo(open().now().get());
        }
    }

    private static SettingsModel.Typed typed(SettingsModel.TypedSpread spread) {
        return new SettingsModel.Typed("415", "E2,A2,D3,G3,B3,E4", "19", "35", "45", spread);
    }

    @Test
    void theMakersOwnSpreadIsTakenAsTypedAndReadsTheSameTheNextTime() {
        SettingsModel.TypedSpread own = new SettingsModel.TypedSpread("0.07", "3.3", "0.7");
        open().take(typed(own));

        assertThat(open().spread().map(SetUpSpread::words)).contains("0.07 % of frequency, 3.3 % of Q and 0.7 dB");
        assertThat(SettingsModel.TypedSpread.of(open().spread())).isEqualTo(own);

        open().take(typed(STUDIED));
        assertThat(open().spread()).isEmpty();
    }

    @Test
    void aSpreadThatIsNotWholeOrHidesEverythingIsRefusedWithARemedy() {
        Notices notices = new Notices(failure -> {});
        SettingsModel settings = new SettingsModel(new SettingsFile(folder), notices);
        String[][] wrong = {
            {"0.3", "", "1", "the spread of Q is missing; type a number, or leave all three empty"},
            {"11", "5", "1", "between 0 and 10 %"},
            {"0.3", "5", "loud", "type a number such as"}
        };
        for (String[] w : wrong) {
            settings.take(typed(new SettingsModel.TypedSpread(w[0], w[1], w[2])));
            assertThat(settings.now().get()).isEqualTo(DeskSettings.FIRST);
            assertThat(notices.latest().get())
                    .hasValueSatisfying(n -> assertThat(n.words()).contains(w[3]));
        }
    }

    @Test
    void lightAndUnitsLeaveAloneWhatIsBeingTyped() {
        SettingsModel settings = open();
        List<SettingsModel.Typed> shown = new ArrayList<>();
        settings.typed().addListener((o, before, after) -> shown.add(after));
        settings.change(settings.now().get().inOtherLight());
        settings.change(settings.now().get().in(Units.FAHRENHEIT));
        assertThat(shown).isEmpty();

        SettingsModel.Typed next = typed(new SettingsModel.TypedSpread("0.1", "2", "0.5"));
        settings.take(next);
        assertThat(shown).containsExactly(next);
    }

    @Test
    void whatWasTakenCanBeTakenBack() {
        Notices notices = new Notices(failure -> {});
        SettingsModel settings = new SettingsModel(new SettingsFile(folder), notices);
        settings.take(typed(new SettingsModel.TypedSpread("0.1", "2", "0.5")));
        notices.undo();

        assertThat(settings.now().get()).isEqualTo(DeskSettings.FIRST);
    }

    @Test
    void aFileNobodyUnderstandsCountsAsNone() throws IOException {
        for (String text :
                new String[] {"light=DUSK", "a4Hz=3", "driestPercent=60", "a4Hz=loud", "spreadQShare=0.1", "\\u00zz", ""
                }) {
            Files.writeString(folder.resolve("desk.properties"), text);
            assertThat(open().now().get()).isEqualTo(DeskSettings.FIRST);
        }
    }

    @Test
    void aFolderThatIsGoneIsToldAndTheSettingsHoldAllTheSame() {
        Notices notices = new Notices(failure -> {});
        SettingsModel settings = new SettingsModel(new SettingsFile(folder.resolve("gone")), notices);
        settings.change(DeskSettings.FIRST.inOtherLight());
        assertThat(settings.light().get()).isEqualTo(Light.NIGHT);
        assertThat(notices.latest().get())
                .hasValueSatisfying(n -> assertThat(n.words()).startsWith("keeping the settings"));
    }
}
