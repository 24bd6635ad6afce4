package io.github.tapwright.mode.body;

import org.hipparchus.complex.Complex;

/** One moving part by itself: its force for a displacement is Z(s) = m·s² + R·s + k. */
record Piston(double mass, double resistance, double stiffness, double area) {

    Complex dynamicStiffness(Complex s) {
        return s.multiply(mass).add(resistance).multiply(s).add(stiffness);
    }

    /** dZ/ds, which the residues need. */
    Complex dynamicStiffnessSlope(Complex s) {
        return s.multiply(2 * mass).add(resistance);
    }

    /** Volume moved for a pressure on it, A²/Z. */
    Complex compliance(Complex s) {
        return dynamicStiffness(s).reciprocal().multiply(area * area);
    }
}
