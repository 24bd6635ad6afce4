"""What Q means for one resonator, measured on its own response instead of taken from the textbook's relations:
python3 relations.py > relations.csv"""
import numpy as np
from scipy.optimize import brentq

CASES = [(100, 20), (200, 30), (200, 40), (82.407, 427), (98, 3)]


def measured(f, q):
    w0 = 2 * np.pi * f
    oscillator = np.array([[0, 1], [-w0**2, -w0 / q]])  # x'' + (w0/Q) x' + w0^2 x = 0
    s = max(np.linalg.eigvals(oscillator), key=lambda pole: pole.imag)

    def power(hz):  # of the velocity for a steady force
        jw = 2j * np.pi * hz
        return abs(jw / (jw**2 + jw * w0 / q + w0**2)) ** 2

    def above_half(hz):
        return power(hz) - power(f) / 2

    width = brentq(above_half, f, 3 * f) - brentq(above_half, f / 3, f)

    def envelope(t):  # of the ringing, 1 at the start
        return abs(np.exp(s * t))

    time_constant = brentq(lambda t: envelope(t) - np.exp(-1), 0, 100 * q / f)
    decay_time = brentq(lambda t: envelope(t) - 1e-3, 0, 100 * q / f)
    one_period = 2 * np.pi / s.imag
    return [width, -s.real, s.imag / (2 * np.pi), time_constant, decay_time,
            -20 * np.log10(envelope(0.01)) / 0.01, -np.log(envelope(one_period))]


print("case,frequency_hz,q,half_power_width_hz,decay_rate_per_s,damped_frequency_hz,time_constant_s,"
      "decay_time_s,decay_db_per_s,log_decrement,source")
for f, q in CASES:
    print(f"{f} Hz Q {q}", f, q, *(f"{x:.9g}" for x in measured(f, q)), '"derived, relations.py"', sep=",")
