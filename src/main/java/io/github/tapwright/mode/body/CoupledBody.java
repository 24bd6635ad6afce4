package io.github.tapwright.mode.body;

import io.github.tapwright.mode.HoleState;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.hipparchus.complex.Complex;

/**
 * Top, back and air plug on one spring of air.
 *
 * <p>Each piston j alone answers a force with x = F/Z_j(s). Together they share the pressure p = −μ·Σ a_j·x_j,
 * which gives every answer in closed form: for a force on the top Σ a_j·x_j = (a_t/Z_t)·F / (1 + μ·Σ a_j²/Z_j),
 * and the zeros of the last bracket are the poles. Displacements count outward. Source:
 * [ChristensenVistisen1980], the closed form derived, exact for the stated model.
 *
 * @param air in and around the body
 * @param volumeCubicMetres V of the cavity, greater than 0
 * @param hole the soundhole
 * @param top the top
 * @param back the back, empty if it is held still
 * @param holeState open, or covered so that no air moves in the hole; not unknown
 */
public record CoupledBody(
        Air air, double volumeCubicMetres, Soundhole hole, Plate top, Optional<Plate> back, HoleState holeState) {

    /** Refuses a cavity without volume and a hole of which nothing is known. */
    public CoupledBody {
        Positive.require(volumeCubicMetres, "volume of the cavity");
        if (holeState == HoleState.UNKNOWN) {
            throw new IllegalArgumentException("the model must know whether the hole is open or covered");
        }
    }

    /**
     * The same body with the hole open or covered.
     *
     * @param state wanted
     * @return changed body
     */
    public CoupledBody with(HoleState state) {
        return new CoupledBody(air, volumeCubicMetres, hole, top, back, state);
    }

    /**
     * Frequency of the air plug between rigid walls, c/2π·sqrt(S/(V·L′)).
     *
     * @return f_h, Hz
     */
    public double helmholtzFrequencyHz() {
        double area = hole.areaSquareMetres();
        double stiffness = airStiffness() * area * area;
        return Math.sqrt(stiffness / hole.airMassKilograms(air)) / (2 * Math.PI);
    }

    /**
     * Frequency a plate would have if the cavity's air were its only spring, sqrt(μA²/m)/2π.
     *
     * @param plate top or back
     * @return f_a, Hz
     */
    public double airSpringFrequencyHz(Plate plate) {
        return plate.areaSquareMetres() * Math.sqrt(airStiffness() / plate.massKilograms()) / (2 * Math.PI);
    }

    /**
     * All resonances, lowest first: one for each piston that can move.
     *
     * @return poles of the upper half plane
     */
    public List<Pole> poles() {
        return new PoleSearch(pistons(), airStiffness()).poles();
    }

    /**
     * Velocity of the top at the bridge for a force there of 1 N.
     *
     * @param frequencyHz of the force, greater than 0
     * @return driving-point mobility, m/(s·N)
     */
    public Complex topMobility(double frequencyHz) {
        Complex s = imaginary(frequencyHz);
        Complex z = pistons().get(0).dynamicStiffness(s);
        Complex flow = volumeForUnitForce(s);
        Complex air = flow.multiply(airStiffness() * top.areaSquareMetres());
        return s.multiply(air.negate().add(1).divide(z));
    }

    /**
     * Sound pressure far away for a force on the top of 1 N, all pistons radiating as one small source into
     * free space: ρ·s²·Σ a_j·x_j/(4πr). The travelling time is left out.
     *
     * @param frequencyHz of the force, greater than 0
     * @param distanceMetres r, greater than 0
     * @return Pa/N
     */
    public Complex pressurePerNewton(double frequencyHz, double distanceMetres) {
        Complex s = imaginary(frequencyHz);
        return volumeForUnitForce(s).multiply(s.multiply(s)).multiply(radiation(distanceMetres));
    }

    /**
     * The plateau of the pressure far above the resonances, ρ·A/(4πr·m): also what follows the force itself at
     * once, before anything rings.
     *
     * @param distanceMetres r, greater than 0
     * @return Pa/N
     */
    public double plateauPressurePerNewton(double distanceMetres) {
        return radiation(distanceMetres) * top.areaSquareMetres() / top.massKilograms();
    }

    /**
     * How loudly one resonance answers: after a blow of 1 N·s at time 0 its share of the pressure is
     * 2·Re(residue·exp(s·t)).
     *
     * @param pole one of {@link #poles()}
     * @param distanceMetres r, greater than 0
     * @return residue of the pressure per newton at the pole, Pa/(N·s)
     */
    public Complex pressureResidue(Pole pole, double distanceMetres) {
        Complex s = pole.s();
        Complex slope = Complex.ZERO;
        for (Piston piston : pistons()) {
            Complex z = piston.dynamicStiffness(s);
            Complex share = piston.dynamicStiffnessSlope(s).multiply(piston.area() * piston.area());
            slope = slope.subtract(share.divide(z.multiply(z)));
        }
        Complex top = pistons().get(0).dynamicStiffness(s).reciprocal().multiply(this.top.areaSquareMetres());
        return top.divide(slope.multiply(airStiffness()))
                .multiply(s.multiply(s))
                .multiply(radiation(distanceMetres));
    }

    /**
     * Volume each piston moves at a frequency, relative to the top's, losses left out: top, back if it moves,
     * hole if open. Negative means against the top.
     *
     * @param frequencyHz a resonance of the body
     * @return one number a piston, the first being 1
     */
    public List<Double> volumeRatios(double frequencyHz) {
        Complex s = imaginary(frequencyHz);
        double top = pistons().get(0).compliance(s).getReal();
        return pistons().stream().map(p -> p.compliance(s).getReal() / top).toList();
    }

    private Complex volumeForUnitForce(Complex s) {
        Complex bracket = Complex.ONE;
        for (Piston piston : pistons()) {
            bracket = bracket.add(piston.compliance(s).multiply(airStiffness()));
        }
        Complex alone = pistons().get(0).dynamicStiffness(s).reciprocal().multiply(top.areaSquareMetres());
        return alone.divide(bracket);
    }

    private List<Piston> pistons() {
        List<Piston> pistons = new ArrayList<>();
        pistons.add(top.piston());
        back.map(Plate::piston).ifPresent(pistons::add);
        if (holeState == HoleState.OPEN) {
            double mass = hole.airMassKilograms(air);
            double resistance = mass * 2 * Math.PI * helmholtzFrequencyHz() / hole.q();
            pistons.add(new Piston(mass, resistance, 0, hole.areaSquareMetres()));
        }
        return pistons;
    }

    private double airStiffness() {
        return air.stiffnessPascalsPerCubicMetre(volumeCubicMetres);
    }

    private double radiation(double distanceMetres) {
        return air.densityKilogramsPerCubicMetre() / (4 * Math.PI * distanceMetres);
    }

    private static Complex imaginary(double frequencyHz) {
        return new Complex(0, 2 * Math.PI * frequencyHz);
    }
}
