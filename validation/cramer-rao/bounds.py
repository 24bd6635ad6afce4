"""The Cramér-Rao bound of shared poles, from the whole Fisher information of poles and amplitudes together:
python3 bounds.py > bounds.csv"""
import numpy as np

# case: samples a second, samples, noise rms, [(f, Q)], amplitudes c[strike][mode]
CASES = {
    "one long decay": (48_000, 48_000, 1e-3, [(400, 60)], [[0.5]]),
    "close pair": (4000, 2400, 0.01, [(200, 30), (206.5, 30)], [[1, 0.8j], [0.6 - 0.3j, -0.9]]),
    "four modes": (4000, 2400, 0.03, [(101, 21), (186, 30), (197, 34), (243, 27)],
                   [[0.5j, 1, -0.7 + 0.2j, 0.4], [-0.3, 0.9j, 1.1, 0.6 - 0.6j], [0.4 - 0.1j, -1, 0.5j, 0.8]]),
}


def pole(f, q):
    w = 2 * np.pi * f
    return complex(-w / (2 * q), w * np.sqrt(1 - 1 / (4 * q * q)))


def bounds(rate, samples, noise, modes, amplitudes):
    t = np.arange(samples) / rate
    s = np.array([pole(*mode) for mode in modes])
    ringing = np.exp(np.outer(t, s))
    n, strikes = len(s), len(amplitudes)
    slopes = np.zeros((strikes, samples, 2 * n * (1 + strikes)))  # d signal / d (omega, sigma, Re c, Im c)
    for k, c in enumerate(amplitudes):
        by_pole = t[:, None] * np.array(c) * ringing
        own = slice(2 * n * (1 + k), 2 * n * (2 + k))
        slopes[k, :, : 2 * n] = np.hstack([-by_pole.imag, -by_pole.real])
        slopes[k, :, own] = np.hstack([ringing.real, -ringing.imag])
    jacobian = slopes.reshape(strikes * samples, -1)
    size = np.linalg.norm(jacobian, axis=0)
    scaled = jacobian / size
    covariance = noise**2 * np.linalg.inv(scaled.T @ scaled) / np.outer(size, size)
    for m in range(n):
        chosen = np.ix_([m, n + m], [m, n + m])
        yield [spread(of, s[m], covariance[chosen]) for of in (frequency, quality, decay_time)]


def frequency(w, sigma):
    return np.hypot(w, sigma) / (2 * np.pi)


def quality(w, sigma):
    return np.hypot(w, sigma) / (2 * sigma)


def decay_time(w, sigma):
    return np.log(1000) / sigma


def spread(of, s, covariance):
    """Standard deviation of a function of (omega, sigma), its slopes by central differences."""
    w, sigma, step = s.imag, -s.real, 1e-4
    slope = np.array([of(w + step, sigma) - of(w - step, sigma),
                      of(w, sigma + step) - of(w, sigma - step)]) / (2 * step)
    return np.sqrt(slope @ covariance @ slope)


print("case,rate_hz,samples,noise_rms,frequency_hz,q,amplitudes,"
      "frequency_bound_hz,q_bound,decay_time_bound_s,source")
for name, (rate, samples, noise, modes, amplitudes) in CASES.items():
    for m, bound in enumerate(bounds(rate, samples, noise, modes, amplitudes)):
        strikes = " ".join(f"{complex(c[m]).real:g} {complex(c[m]).imag:g}" for c in amplitudes)
        print(name, rate, samples, noise, *modes[m], strikes, *(f"{x:.7g}" for x in bound),
              '"derived, bounds.py"', sep=",")
