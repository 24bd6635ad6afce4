"""The coupled body by matrices: M x'' + R x' + K x = force on the top, K = springs + mu a a^T.
Writes two-piston.csv, damped-poles.csv, damped-extrema.csv, three-piston.csv, added-mass.csv and helmholtz.csv beside itself."""
import csv
from pathlib import Path

import numpy as np
from scipy.optimize import minimize_scalar

RHO, C = 1.2, 343.0
DISTANCE = 1.0
TWO_PI = 2 * np.pi


class Body:
    def __init__(self, volume, radius, thickness, plates, hole_q=np.inf, covered=False):
        """plates: (area, mass, frequency, q), the top first."""
        self.length = thickness + 1.7 * radius
        self.hole_area = np.pi * radius**2
        self.hole_mass = RHO * self.hole_area * self.length
        self.mu = RHO * C**2 / volume
        self.helmholtz = np.sqrt(self.mu * self.hole_area**2 / self.hole_mass) / TWO_PI
        area, mass, f, q = (list(column) for column in zip(*plates))
        if not covered:
            area, mass, f, q = area + [self.hole_area], mass + [self.hole_mass], f + [0], q + [hole_q]
        self.a, self.m = np.array(area), np.array(mass)
        springs = self.m * (TWO_PI * np.array(f)) ** 2
        losses_at = np.array(f) if covered else np.array(f[:-1] + [self.helmholtz])
        self.k = np.diag(springs) + self.mu * np.outer(self.a, self.a)
        self.r = np.diag(self.m * TWO_PI * losses_at / np.array(q))
        self.top_spring = springs[0]
        self.air_spring_hz = self.a[0] * np.sqrt(self.mu / self.m[0]) / TWO_PI

    def undamped(self):
        """Frequencies, and the volumes moved relative to the top's."""
        squares, shapes = np.linalg.eig(self.k / self.m[:, None])
        order = np.argsort(squares)
        moved = self.a[:, None] * shapes[:, order]
        return np.sqrt(squares[order]) / TWO_PI, (moved / moved[0]).T

    def poles(self):
        """(s, residue of the pressure per newton), lowest first."""
        n = len(self.m)
        state = np.block([[np.zeros((n, n)), np.eye(n)], [-self.k / self.m[:, None], -self.r / self.m[:, None]]])
        s, right = np.linalg.eig(state)
        force = np.zeros(2 * n)
        force[n] = 1 / self.m[0]
        share = np.linalg.solve(right, force)
        residue = RHO / (4 * np.pi * DISTANCE) * s**2 * (self.a @ right[:n]) * share
        return sorted(((p, c) for p, c in zip(s, residue) if p.imag > 0), key=lambda pair: pair[0].imag)

    def displacement(self, hz):
        jw = 2j * np.pi * hz
        return np.linalg.solve(np.diag(jw**2 * self.m) + jw * self.r + self.k, np.eye(len(self.m))[0])

    def mobility(self, hz):
        return abs(TWO_PI * hz * self.displacement(hz)[0])

    def pressure(self, hz):
        return abs(RHO / (4 * np.pi * DISTANCE) * (TWO_PI * hz) ** 2 * (self.a @ self.displacement(hz)))


def extremum(curve, low, high, sign):
    at = minimize_scalar(lambda f: -sign * curve(f), bounds=(low, high), method="bounded", options={"xatol": 1e-9}).x
    return at, curve(at)


def write(name, rows):
    for row in rows:
        row["source"] = "derived, body.py"
    with open(Path(__file__).with_name(name), "w", newline="") as file:
        table = csv.DictWriter(file, rows[0], lineterminator="\n")
        table.writeheader()
        table.writerows({k: f"{v:.9g}" if isinstance(v, float) else v for k, v in row.items()} for row in rows)


def two_piston():
    for name, volume, radius, thickness, area, mass, f in [("A", 0.0140, 0.0425, 0.0025, 0.040, 0.080, 165.0),
                                                           ("B", 0.0164, 0.0508, 0.003, 0.038, 0.090, 155.0),
                                                           ("C", 0.0140, 0.0425, 0.0025, 0.045, 0.050, 170.0)]:
        body = Body(volume, radius, thickness, [(area, mass, f, np.inf)])
        closed = Body(volume, radius, thickness, [(area, mass, f, np.inf)], covered=True)
        (lower, upper), flows = body.undamped()
        yield dict(body=name, volume_m3=volume, hole_radius_m=radius, top_thickness_m=thickness, top_area_m2=area,
                   top_mass_kg=mass, top_frequency_hz=f, effective_length_m=body.length,
                   hole_area_m2=body.hole_area, air_stiffness_pa_per_m3=body.mu, air_mass_kg=body.hole_mass,
                   top_stiffness_n_per_m=body.top_spring, helmholtz_hz=body.helmholtz,
                   air_spring_hz=body.air_spring_hz, closed_hz=closed.undamped()[0][0], lower_hz=lower,
                   upper_hz=upper, lower_flow=flows[0, 1], upper_flow=flows[1, 1])


def damped_poles(body):
    for name, (s, residue) in zip(("lower", "upper"), body.poles()):
        yield dict(pole=name, decay_rate_per_s=-s.real, damped_frequency_hz=s.imag / TWO_PI,
                   frequency_hz=abs(s) / TWO_PI, q=-abs(s) / (2 * s.real), decay_time_s=-np.log(1000) / s.real,
                   residue_real_pa_per_ns=residue.real, residue_imaginary_pa_per_ns=residue.imag)


def damped_extrema(body):
    for curve, kind, low, high in [("mobility", "maximum", 100, 120), ("mobility", "minimum", 115, 180),
                                   ("mobility", "maximum", 180, 200), ("pressure", "maximum", 100, 120),
                                   ("pressure", "minimum", 115, 180), ("pressure", "maximum", 180, 200)]:
        at, height = extremum(getattr(body, curve), low, high, 1 if kind == "maximum" else -1)
        yield dict(place=f"{curve} {kind} {low} to {high} Hz", curve=curve, kind=kind, low_hz=low, high_hz=high,
                   frequency_hz=at, height=height)


def three_piston():
    plates = [(0.040, 0.080, 165.0, np.inf), (0.035, 0.150, 200.0, np.inf)]
    body = Body(0.0140, 0.0425, 0.0025, plates)
    closed = list(Body(0.0140, 0.0425, 0.0025, plates, covered=True).undamped()[0])
    quiet = [extremum(body.mobility, *window, -1)[0] for window in ((110, 180), (184, 213))]
    for i, (f, flow) in enumerate(zip(*body.undamped())):
        yield dict(resonance=i + 1, frequency_hz=f, back_flow=flow[1], hole_flow=flow[2],
                   covered_hz=closed[i] if i < 2 else "", antiresonance_hz=quiet[i] if i < 2 else "")


def added_mass():
    """Body A with a mass on the top: stiffness and air stay, so its own frequency falls."""
    upper = Body(0.0140, 0.0425, 0.0025, [(0.040, 0.080, 165.0, np.inf)]).undamped()[0][1]
    for grams in (5, 10, 20):
        mass = 0.080 + grams / 1000
        plate = [(0.040, mass, 165.0 * np.sqrt(0.080 / mass), np.inf)]
        lower_loaded, upper_loaded = Body(0.0140, 0.0425, 0.0025, plate).undamped()[0]
        yield dict(added_g=grams, covered_hz=Body(0.0140, 0.0425, 0.0025, plate, covered=True).undamped()[0][0],
                   lower_hz=lower_loaded, upper_hz=upper_loaded,
                   naive_g=grams / ((upper / upper_loaded) ** 2 - 1))


def helmholtz():
    """End corrections: Rayleigh's thin wall, two wide flanges without and with 2.5 mm of wood."""
    for litres, millimetres in ((12, 42.5), (13, 42.5), (14, 42.5), (15, 42.5), (14, 43.5), (16.4, 50.8), (18, 50.8)):
        a, v = millimetres / 1000, litres / 1000
        row = dict(box=f"{litres} l, {millimetres} mm", volume_m3=v, hole_radius_m=a)
        for name, length in (("thin_wall_hz", np.pi * a / 2), ("flanged_hz", 1.7 * a), ("wood_hz", 0.0025 + 1.7 * a)):
            row[name] = C / TWO_PI * np.sqrt(np.pi * a**2 / (v * length))
        yield row


damped = Body(0.0140, 0.0425, 0.0025, [(0.040, 0.080, 165.0, 30.0)], hole_q=50.0)
write("two-piston.csv", list(two_piston()))
write("damped-poles.csv", list(damped_poles(damped)))
write("damped-extrema.csv", list(damped_extrema(damped)))
write("three-piston.csv", list(three_piston()))
write("added-mass.csv", list(added_mass()))
write("helmholtz.csv", list(helmholtz()))
