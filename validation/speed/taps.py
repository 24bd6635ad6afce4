"""Resonances of body taps with SciPy alone: the same question that `tapwright taps` answers, asked the same way.

Strikes are found by their rise in level; all strikes of a recording share their poles, which are guessed by ESPRIT on
stacked Hankel matrices of demodulated sub-bands, one model for each number of poles; each is refined by nonlinear least
squares with the amplitudes projected out, and the Bayesian information criterion chooses.

Usage: taps.py FILE.wav…    prints file, seconds of analysis, then frequency and Q of every resonance, tab separated.
"""

import sys
import time

import numpy as np
from scipy import linalg, optimize, signal
from scipy.io import wavfile

LOWEST_HZ, HIGHEST_HZ = 60.0, 1000.0
STEP_HZ, HALF_WIDTH_HZ = 60.0, 50.0
MOST_POLES = 7
LONGEST_SECONDS = 1.0
SKIP_SECONDS = 0.02


def strikes(x, rate):
    """Onsets: where the level of 5 ms frames rises by 15 dB over the 50 ms before it, at least 0.4 s apart."""
    frame = int(0.005 * rate)
    level = 10 * np.log10(np.mean(x[: len(x) // frame * frame].reshape(-1, frame) ** 2, axis=1) + 1e-14)
    before = np.array([level[max(0, i - 10):max(1, i)].mean() for i in range(len(level))])
    found = []
    for i in np.flatnonzero((level - before > 15) & (level > level.max() - 35)):
        start = i * frame
        if not found or start - found[-1] > 0.4 * rate:
            found.append(start)
    return found


def spoilt(x, start, stop, rate):
    """Clipped, struck twice, or too short to tell."""
    cut = x[start:stop]
    if np.max(np.abs(cut)) > 0.999 or len(cut) < 0.5 * rate:
        return True
    frame = int(0.005 * rate)
    level = 10 * np.log10(np.mean(cut[: len(cut) // frame * frame].reshape(-1, frame) ** 2, axis=1) + 1e-14)
    late = level[6:80]
    return np.max(late[4:] - np.minimum.accumulate(late)[:-4]) > 12


def bands(x, rate, starts, stops):
    """Demodulated and thinned out decays of every sub-band."""
    thin = int(rate / (3 * HALF_WIDTH_HZ))
    lowpass = signal.firwin(8 * thin + 1, HALF_WIDTH_HZ * 1.1, fs=rate)
    n = np.arange(len(x))
    for centre in np.arange(LOWEST_HZ + STEP_HZ / 2, HIGHEST_HZ, STEP_HZ):
        y = signal.oaconvolve(x * np.exp(-2j * np.pi * centre / rate * n), lowpass, mode="same")
        first = int(SKIP_SECONDS * rate)
        yield centre, rate / thin, [y[a + first:b:thin] for a, b in zip(starts, stops)]


def esprit(decays, order):
    """Poles shared by all decays, by the shift of the signal subspace."""
    rows = min(len(d) for d in decays) // 2
    hankel = np.hstack([linalg.hankel(d[:rows], d[rows - 1:]) for d in decays])
    u = linalg.svd(hankel, full_matrices=False)[0][:, :order]
    return np.linalg.eigvals(np.linalg.lstsq(u[:-1], u[1:], rcond=None)[0])


def project(parameters, decays):
    """Bases, their orthonormal columns, amplitudes and what is left, strike by strike."""
    s = -np.exp(np.clip(parameters[0::2], -12, 2)) + 1j * parameters[1::2]  # a search may stray; no decay does
    for d in decays:
        n = np.arange(len(d))
        basis = np.exp(np.outer(n, s))
        q, r = np.linalg.qr(basis)
        inner = q.conj().T @ d
        yield n, s, basis, q, np.linalg.lstsq(r, inner, rcond=None)[0], d - q @ inner


def split(columns):
    return np.concatenate([columns.real, columns.imag])


def residual(parameters, decays):
    """What the poles leave, with each strike's amplitudes projected out."""
    return split(np.concatenate([left for *_, left in project(parameters, decays)]))


def jacobian(parameters, decays):
    """Its derivatives in Kaufman's approximation."""
    rows = []
    for n, s, basis, q, amplitudes, _ in project(parameters, decays):
        moved = -(n[:, None] * basis) * amplitudes
        moved -= q @ (q.conj().T @ moved)
        both = np.empty((len(n), 2 * len(s)), complex)
        both[:, 0::2], both[:, 1::2] = moved * s.real, moved * 1j
        rows.append(both)
    return split(np.concatenate(rows))


def fit(decays):
    """The best model over the number of poles, sought until two more poles in a row did not pay."""
    count = sum(len(d) for d in decays)
    best, best_bic, worse = np.array([]), np.inf, 0
    for order in range(1, MOST_POLES + 1):
        s = np.log(esprit(decays, order))
        start = np.empty(2 * order)
        start[0::2], start[1::2] = np.log(np.maximum(-s.real, 1e-4)), s.imag
        done = optimize.least_squares(residual, start, jac=jacobian, args=(decays,), method="lm", xtol=1e-6, max_nfev=60)
        bic = 2 * count * np.log(2 * done.cost / (2 * count)) + (2 + 2 * len(decays)) * order * np.log(2 * count)
        if bic < best_bic:
            best, best_bic, worse = -np.exp(done.x[0::2]) + 1j * done.x[1::2], bic, 0
        else:
            worse += 1
        if worse == 2:
            break
    return best


def resonances(x, rate):
    """Frequency and Q of what lies in the middle of each band and is a decay of some weight."""
    x = x - x.mean()
    starts = strikes(x, rate)
    stops = [min(b, a + int(LONGEST_SECONDS * rate)) for a, b in zip(starts, starts[1:] + [len(x)])]
    good = [(a, b) for a, b in zip(starts, stops) if not spoilt(x, a, b, rate)]
    found = []
    for centre, band_rate, decays in bands(x, rate, *zip(*good)):
        scale = np.sqrt(np.mean(np.abs(np.concatenate(decays)) ** 2))
        for s in fit([d / scale for d in decays]):
            hertz = centre + s.imag * band_rate / (2 * np.pi)
            per_second = -s.real * band_rate
            q = np.pi * hertz / max(per_second, 1e-9)
            if abs(hertz - centre) <= STEP_HZ / 2 and 5 < q < 300:
                found.append((hertz, q))
    return sorted(found)


def main():
    for name in sys.argv[1:]:
        rate, samples = wavfile.read(name)
        x = samples.astype(float) / np.iinfo(samples.dtype).max
        began = time.perf_counter()
        found = resonances(x, rate)
        seconds = time.perf_counter() - began
        print(name, f"{seconds:.4f}", *(f"{f:.4f},{q:.3f}" for f, q in found), sep="\t")


if __name__ == "__main__":
    main()
