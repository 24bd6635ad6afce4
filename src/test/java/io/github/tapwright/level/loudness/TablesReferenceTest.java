package io.github.tapwright.level.loudness;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.github.tapwright.validation.PublishedTable;
import org.junit.jupiter.api.Test;

/** The tables in the code are those in validation/iso532-1, digit for digit. Source: [ISO532-1] by [MoSQITo]. */
class TablesReferenceTest {

    @Test
    void filters() {
        JsonNode bands = Published.at("TableA2_filter_difference", "bands");
        double[] gains = Published.array(Published.at("TableA2_filter_gain"));
        assertThat(bands).hasSize(FilterTable.BANDS);
        for (int band = 0; band < FilterTable.BANDS; band++) {
            assertThat(FilterTable.gain(band)).isEqualTo(gains[band]);
            for (int section = 0; section < 3; section++) {
                double[] printed = Published.array(bands.get(band).get(section));
                assertThat(printed).startsWith(0, 0, 0, 0);
                assertThat(FilterTable.difference(band, section, 1)).isEqualTo(printed[4]);
                assertThat(FilterTable.difference(band, section, 2)).isEqualTo(printed[5]);
            }
        }
    }

    @Test
    void vectors() {
        assertThat(LoudnessTables.LOW_BAND_RANGE_DB).isEqualTo(vector("TableA3_RAP_dB"));
        assertThat(LoudnessTables.EAR_TRANSMISSION_DB).isEqualTo(vector("TableA4_A0_dB"));
        assertThat(LoudnessTables.DIFFUSE_FIELD_DB).isEqualTo(vector("TableA5_DDF_dB"));
        assertThat(LoudnessTables.THRESHOLD_DB).isEqualTo(vector("TableA6_LTQ_dB"));
        assertThat(LoudnessTables.BANDWIDTH_CORRECTION_DB).isEqualTo(vector("TableA7_DCB_dB"));
        assertThat(LoudnessTables.BAND_END_BARK).isEqualTo(vector("TableA8_ZUP_Bark"));
        assertThat(LoudnessTables.SLOPE_RANGE).isEqualTo(vector("TableA9_RNS_sone_per_Bark"));
    }

    @Test
    void matrices() {
        assertThat(LoudnessTables.LOW_BAND_CORRECTION_DB).isDeepEqualTo(matrix("TableA3_DLL_dB"));
        assertThat(LoudnessTables.SLOPE).isDeepEqualTo(matrix("TableA9_USL"));
    }

    /** What the command validate reads is what stands here. */
    @Test
    void theTableOfAnnexBSaysTheSame() {
        assertThat(PublishedTable.rows("iso532-1/annex-b.csv")).hasSize(36).allSatisfy(row -> {
            JsonNode signal = Published.at("annexB", row.text("signal"));
            String quantity = row.text("quantity");
            JsonNode value = quantity.startsWith("level_")
                    ? signal.required("levels_dB").get(Integer.parseInt(quantity.substring("level_".length())))
                    : signal.required(quantity);
            assertThat(row.number("value")).isEqualTo(value.asDouble());
        });
    }

    private static double[] vector(String key) {
        return Published.array(Published.at(key));
    }

    private static double[][] matrix(String key) {
        JsonNode rows = Published.at(key);
        double[][] matrix = new double[rows.size()][];
        for (int r = 0; r < matrix.length; r++) {
            matrix[r] = Published.array(rows.get(r));
        }
        return matrix;
    }
}
