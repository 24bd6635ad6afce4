package io.github.tapwright.desktop.settings;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.tapwright.chart.Light;
import io.github.tapwright.desktop.part.Units;
import io.github.tapwright.desktop.work.Notices;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsModelTest {

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

        assertThat(open().now().get()).isEqualTo(new DeskSettings(Light.NIGHT, Units.FAHRENHEIT, 440));
    }

    @Test
    void aFileNobodyUnderstandsCountsAsNone() throws IOException {
        for (String text : new String[] {"light=DUSK", "a4Hz=3", "a4Hz=loud", "\\u00zz", ""}) {
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
