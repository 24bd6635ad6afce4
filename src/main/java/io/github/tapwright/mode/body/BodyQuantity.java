package io.github.tapwright.mode.body;

/** What the model can say about a body, each from what it needs. */
public enum BodyQuantity {
    /** f_h. */
    HELMHOLTZ("helmholtz", "Hz", "air in the hole, rigid walls", Need.COVERED),
    /** f_p0 of the top. */
    TOP_ALONE("top_alone", "Hz", "top without air", Need.COVERED),
    /** f_a of the top. */
    TOP_ON_AIR("top_on_air", "Hz", "top on the box's air alone", Need.COVERED),
    /** f_p0 of the back. */
    BACK_ALONE("back_alone", "Hz", "back without air", Need.COVERED_WITH_BACK),
    /** f_a of the back. */
    BACK_ON_AIR("back_on_air", "Hz", "back on the box's air alone", Need.COVERED_WITH_BACK),
    /** m_p by products. */
    TOP_MASS("top_mass", "kg", "moving mass of the top", Need.LOADED),
    /** m_p by sums. */
    TOP_MASS_BY_SUM("top_mass_by_sum", "kg", "the same by sums, a check", Need.LOADED_OPEN_AND_COVERED),
    /** k_p. */
    TOP_STIFFNESS("top_stiffness", "N/m", "stiffness of the top", Need.LOADED_AND_COVERED),
    /** A. */
    TOP_AREA("top_area", "m²", "area of the top as a piston", Need.ALL),
    /** A/m_p. */
    RADIATED_SENSITIVITY("radiated_sensitivity", "m²/kg", "area for its mass", Need.ALL),
    /** P0 at 1 m. */
    PLATEAU("plateau_at_1_m", "Pa/N", "sound at 1 m for a force of 1 N", Need.ALL),
    /** f_h from measures. */
    HELMHOLTZ_COMPUTED("helmholtz_computed", "Hz", "air in the hole, from its measures", Need.MEASURES);

    /** What has to be measured first. */
    enum Need {
        COVERED("one more sitting with the hole covered gives it", TAP_MORE),
        COVERED_WITH_BACK("the main back, found with the hole open and covered, gives it", TAP_MORE),
        LOADED("one more sitting with a mass of 10 to 25 g on the bridge gives it", TAP_MORE),
        LOADED_AND_COVERED(
                "a sitting with the hole covered and one with a mass on the bridge together give it", TAP_MORE),
        LOADED_OPEN_AND_COVERED(
                "a sitting with the hole covered and one with a mass on the bridge and the hole open together give it",
                TAP_MORE),
        ALL(
                "a sitting with the hole covered, one with a mass on the bridge and the volume of the box together give it",
                TAP_MORE + ", and measure the volume of the box more exactly"),
        MEASURES(
                "the box's volume, the hole's radius and the top's thickness give it",
                "measure the box, its hole and its top more exactly");

        final String words;

        /** What makes the readings surer where they leave too much open. */
        final String remedy;

        Need(String words, String remedy) {
            this.words = words;
            this.remedy = remedy;
        }
    }

    static final String TAP_MORE = "tap each state more often without moving the instrument in between";

    private final String key;
    private final String unit;
    private final String words;
    final Need need;

    BodyQuantity(String key, String unit, String words, Need need) {
        this.key = key;
        this.unit = unit;
        this.words = words;
        this.need = need;
    }

    /**
     * The stable name kept in files.
     *
     * @return snake case
     */
    public String key() {
        return key;
    }

    /**
     * The unit of its figures.
     *
     * @return SI
     */
    public String unit() {
        return unit;
    }

    /**
     * What it is, as people read it.
     *
     * @return words
     */
    public String words() {
        return words;
    }
}
