package io.github.tapwright.demo;

/**
 * How far an instrument had come, and what that does to its plates; all figures are assumptions.
 *
 * <p>Each is meant against the sanded and sealed body before finish. Loss is added to 1/Q.
 */
enum DemoStage {
    IN_THE_WHITE("in the white", 1.0, 1.02, 0, 0, 0.0015),
    BEFORE_FINISH("before finish", 1.0, 1.0, 0, 0, 0.0015),
    FINISHED("finished", 1.05, 1.005, 0.008, 0, 0.0008),
    STRUNG("strung", 1.08, 1.035, 0.012, 0.010, 0.0008),
    LATER("later", 1.08, 1.035, 0.012, 0.010, 0.0008);

    /** As the maker reads it. */
    final String words;
    /** Effective mass of the plates. */
    final double massFactor;
    /** Stiffness of the plates. */
    final double stiffnessFactor;
    /** Added to 1/Q of every plate mode. */
    final double plateLoss;
    /** Added to 1/Q of the air in the hole. */
    final double holeLoss;
    /** Relative fall of plate frequencies for one per cent of relative humidity more. */
    final double humidityPerPercent;

    DemoStage(
            String words,
            double massFactor,
            double stiffnessFactor,
            double plateLoss,
            double holeLoss,
            double humidityPerPercent) {
        this.words = words;
        this.massFactor = massFactor;
        this.stiffnessFactor = stiffnessFactor;
        this.plateLoss = plateLoss;
        this.holeLoss = holeLoss;
        this.humidityPerPercent = humidityPerPercent;
    }

    double frequencyFactor(double relativeHumidityPercent) {
        double humidity = 1 - humidityPerPercent * (relativeHumidityPercent - 45);
        return Math.sqrt(stiffnessFactor / massFactor) * humidity;
    }

    boolean strung() {
        return this == STRUNG || this == LATER;
    }
}
