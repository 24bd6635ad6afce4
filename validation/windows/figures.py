"""Figures of merit of the windows, straight from their definitions: python3 figures.py > figures.csv"""
import numpy as np
from scipy.optimize import brentq, minimize_scalar
from scipy.signal.windows import general_cosine

N = 1024
COSINES = {
    "RECTANGULAR": [1],
    "HANN": [0.5, 0.5],
    "HAMMING": [0.54, 0.46],
    "BLACKMAN": [0.42, 0.5, 0.08],
    "EXACT_BLACKMAN": [7938 / 18608, 9240 / 18608, 1430 / 18608],
    "BLACKMAN_HARRIS": [0.35875, 0.48829, 0.14128, 0.01168],
    "FLAT_TOP": [1, 1.9383379, 1.3045202, 0.4028270, 0.0350665],
}


def figures(w):
    def level(bins):  # dB re the top
        return 20 * np.log10(abs(w @ np.exp(-2j * np.pi * bins * np.arange(N) / N)) / w.sum())

    def width(drop):  # the main lobe is steep there, whatever ripple it has on top
        edge = next(k for k in np.arange(0.25, 8, 0.05) if level(k) < drop)
        return 2 * brentq(lambda k: level(k) - drop, edge - 0.05, edge)

    def lobe(k):  # the top near a place of the grid
        return -minimize_scalar(lambda x: -level(x), bounds=(k - 0.02, k + 0.02), method="bounded",
                                options={"xatol": 1e-9}).fun

    fine = 20 * np.log10(abs(np.fft.rfft(w, 64 * N)) / w.sum() + 1e-20)
    foot = next(k for k in range(int(32 * width(-20 * np.log10(2))), 64 * N) if fine[k + 1] > fine[k])
    sidelobe = lobe((foot + fine[foot:].argmax()) / 64)
    ripple = max(abs(level(k)) for k in np.linspace(0, 0.5, 1001))
    enbw = N * (w @ w) / w.sum() ** 2
    half, quarter = (w[:-s] @ w[s:] / (w @ w) for s in (N // 2, N // 4))
    return [w.mean(), enbw, ripple, ripple + 10 * np.log10(enbw), sidelobe,
            width(-10 * np.log10(2)), width(-20 * np.log10(2)), half, quarter]


windows = {name: general_cosine(N, a, sym=False) for name, a in COSINES.items()}
windows["TRIANGLE"] = 1 - abs(2 * np.arange(N) / N - 1)
print("window,coherent_gain,noise_bandwidth_bins,scalloping_loss_db,worst_case_loss_db,highest_sidelobe_db,"
      "half_power_width_bins,half_amplitude_width_bins,overlap_correlation_50,overlap_correlation_75,source")
for name, w in windows.items():
    print(name, *(f"{x:.5f}" for x in figures(w)), '"derived, figures.py"', sep=",")
