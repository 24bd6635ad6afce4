"""Compares Tapwright's levels with those of ffmpeg, SciPy and SoX, file by file, and prints Markdown.

Usage: see run.sh. Every difference is Tapwright minus the other. Levels are in dB re full scale, mean square 1.
"""

import argparse
import datetime
import json
import os
import re
import subprocess
from pathlib import Path

import numpy as np
import scipy
from scipy import signal

THIRD_OCTAVE = 10 ** 0.1
BAND_DEPTH_DB = 50  # bands further below the loudest are noise and rounding


def output(*command):
    return subprocess.run(command, check=True, capture_output=True, text=True)


def tapwright(path):
    report = json.loads(output(os.environ["TAPWRIGHT"], "level", "--json", str(path)).stdout)
    return report[0] if isinstance(report, list) else report


def samples(path):
    """All channels by ffmpeg's decoder, shape [channel][sample]."""
    probe = json.loads(output("ffprobe", "-v", "error", "-show_streams", "-of", "json", str(path)).stdout)
    stream = probe["streams"][0]
    raw = subprocess.run(
        ["ffmpeg", "-v", "error", "-i", str(path), "-f", "f64le", "-"], check=True, capture_output=True
    ).stdout
    return int(stream["sample_rate"]), np.frombuffer(raw, "<f8").reshape(-1, int(stream["channels"])).T


def ebur128(path, first):
    """Every 100 ms the values of ffmpeg's meter, after another filter."""
    chain = f"{first},ebur128=metadata=1:peak=true,ametadata=print:file=-"
    text = output("ffmpeg", "-hide_banner", "-nostats", "-i", str(path), "-af", chain, "-f", "null", "-").stdout
    return {
        key: [float(x) for x in re.findall(rf"lavfi\.r128\.{re.escape(key)}=(\S+)", text)]
        for key in ("M", "S", "I", "LRA", "true_peak")
    }


def ffmpeg(path):
    """Its meter looks every 100 ms; ten runs, each 10 ms later, look every 10 ms as Tapwright does.

    For the range 1.5 s of silence follow, as EBU Tech 3342, 5, asks for.
    """
    runs = [ebur128(path, f"adelay=delays={10 * k}:all=1") for k in range(10)]
    followed = ebur128(path, "apad=pad_dur=1.5")
    return {
        "lufs_integrated": runs[0]["I"][-1],
        "lufs_momentary_max": max(max(run["M"][3:]) for run in runs),
        "lufs_short_term_max": max(max(run["S"][29:], default=-np.inf) for run in runs),
        "loudness_range_lu": followed["LRA"][-1],
        "true_peak_dbfs": 20 * np.log10(runs[0]["true_peak"][-1]),
    }


def sox_true_peak(path):
    """Largest value after SoX has raised the rate four times with its best filter."""
    rate = int(output("sox", "--i", "-r", str(path)).stdout)
    report = output("sox", str(path), "-n", "gain", "-6", "rate", "-v", str(4 * rate), "stats").stderr
    return float(re.search(r"Pk lev dB\s+(\S+)", report).group(1)) + 6


def weighting(f, name):
    """Complex response of the A or C weighting, IEC 61672-1, annex E, with the poles unrounded."""
    f1, f4 = 20.598997, 12194.217148
    f2, f3 = 107.652649, 737.862231
    s = 1j * f
    h = (s / (s + f1)) ** 2 * (f4 / (s + f4)) ** 2
    reference = (1000 / abs(1000j + f1)) ** 2 * (f4 / abs(1000j + f4)) ** 2
    if name == "A":
        h = h * s / (s + f2) * s / (s + f3)
        reference *= 1000 / abs(1000j + f2) * 1000 / abs(1000j + f3)
    return h / reference


def spectrum(channel, rate):
    """Of the sound with as much silence after it, so that nothing wraps around."""
    length = scipy.fft.next_fast_len(len(channel) + 4 * rate)
    return scipy.fft.rfft(channel, length), scipy.fft.rfftfreq(length, 1 / rate), length


def mean_square(transform, length, count):
    power = np.abs(transform) ** 2
    return (power[0] + 2 * np.sum(power[1:])) / length / count


def db(power):
    return 10 * np.log10(power)


def scipy_levels(channel, rate):
    transform, f, length = spectrum(channel, rate)
    weighted = scipy.fft.irfft(transform * weighting(f, "A"), length)[: len(channel)]
    levels = {"lceq_db": db(mean_square(transform * weighting(f, "C"), length, len(channel)))}
    levels["laeq_db"] = db(np.mean(weighted**2))
    for key, tau in (("lafmax_db", 0.125), ("lasmax_db", 1.0)):
        kept = np.exp(-1 / (tau * rate))
        levels[key] = db(np.max(signal.lfilter([1 - kept], [1, -kept], weighted**2)))
    return levels


def bands(channel, rate, nominal):
    """Per band: level by SciPy's digital Butterworth filter, and from the analogue response over the spectrum."""
    transform, f, length = spectrum(channel, rate)
    found = []
    for hertz in nominal:
        middle = 1000 * THIRD_OCTAVE ** round(np.log(hertz / 1000) / np.log(THIRD_OCTAVE))
        low, high = middle / THIRD_OCTAVE**0.5, middle * THIRD_OCTAVE**0.5
        filtered = signal.sosfilt(signal.butter(4, [low, high], "bandpass", output="sos", fs=rate), channel)
        with np.errstate(divide="ignore"):
            detuning = np.where(f > 0, (f / middle - middle / f) * middle / (high - low), np.inf)
        response = 1 / np.sqrt(1 + detuning**8)
        found.append((db(np.mean(filtered**2)), db(mean_square(transform * response, length, len(channel)))))
    return np.array(found)


def printed_range(channels, rate):
    """Loudness range by the rule EBU Tech 3342, 5, prints, after the K weighting BS.1770 prints for 48 kHz."""
    sound = signal.resample_poly(channels, 48000, rate, axis=1) if rate != 48000 else channels
    shelf = [1.53512485958697, -2.69169618940638, 1.19839281085285, 1, -1.69065929318241, 0.73248077421585]
    high_pass = [1, -2, 1, 1, -1.99004745483398, 0.99007225036621]
    power = np.sum(signal.sosfilt([shelf, high_pass], sound, axis=1) ** 2, axis=0)
    steps = power[: len(power) // 4800 * 4800].reshape(-1, 4800).mean(axis=1)
    steps = np.concatenate([steps, np.zeros(15)])
    windows = np.convolve(steps, np.ones(30) / 30, "valid")
    heard = windows[-0.691 + 10 * np.log10(np.maximum(windows, 1e-20)) >= -70]
    kept = np.sort(heard[heard >= np.mean(heard) / 100])
    low, high = (kept[int((len(kept) - 1) * p + 0.5)] for p in (0.10, 0.95))
    return 10 * np.log10(high / low)


def difference(own, other):
    return "–" if own is None else f"{own - other:+.3f}"


def rows(path):
    own = tapwright(path)
    rate, channels = samples(path)
    first = own["channel_levels"][0] if len(channels) > 1 else own
    other = ffmpeg(path)
    loudness = [difference(own[key], other[key]) for key in other]
    own_range = own["loudness_range_lu"]
    loudness.insert(4, difference(own_range, own_range and printed_range(channels, rate)))
    loudness.append(difference(own["true_peak_dbfs"], sox_true_peak(path)))
    levels = scipy_levels(channels[0], rate)
    weighted = [difference(first[key], levels[key]) for key in ("laeq_db", "lceq_db", "lafmax_db", "lasmax_db")]
    third = first["third_octaves"]
    mine = np.array([band["level_db"] for band in third])
    theirs = bands(channels[0], rate, [band["band_hz"] for band in third])
    loud = mine > np.max(mine) - BAND_DEPTH_DB
    for column in (0, 1):
        distance = np.where(loud, np.abs(mine - theirs[:, column]), 0)
        worst = int(np.argmax(distance))
        weighted.append(f"{distance[worst]:.3f}" + (f" at {third[worst]['band_hz']:.0f} Hz" if column else ""))
    weighted.append(f"{np.count_nonzero(loud)} of {len(third)}")
    return loudness, weighted


def table(head, lines):
    print("| " + " | ".join(head) + " |")
    print("|" + "---|" * len(head))
    for name, cells in lines:
        print("| " + " | ".join([name] + cells) + " |")
    print()


def version(*command):
    return re.search(r"\d+\.\d+(\.\d+)?", output(*command).stdout).group(0)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--source", default="")
    parser.add_argument("made", type=Path)
    parser.add_argument("notes", nargs="*", type=Path)
    arguments = parser.parse_args()
    paths = sorted(arguments.made.glob("*.wav")) + arguments.notes
    found = [(path.stem, *rows(path)) for path in paths]
    print(f"# Tapwright beside ffmpeg, SciPy and SoX, {datetime.date.today()}\n")
    print(
        f"ffmpeg {version('ffmpeg', '-version')}, SciPy {scipy.__version__}, SoX {version('sox', '--version')}."
        " Differences are Tapwright minus the other; made notes by `notes.py`."
        + (f" Other notes: {arguments.source}." if arguments.source else "")
        + "\n"
    )
    print("Loudness, LU, and true peak, dB; – where the note is too short:\n")
    head = ["note", "integrated", "momentary max", "short-term max", "range (ffmpeg)", "range (SciPy)", "peak (ffmpeg)", "peak (SoX)"]
    table(head, [(name, loudness) for name, loudness, _ in found])
    print("First channel against SciPy, dB; bands: the largest distance among those within 50 dB of the loudest:\n")
    head = ["note", "LAeq", "LCeq", "LAFmax", "LASmax", "bands, digital", "bands, analogue", "bands compared"]
    table(head, [(name, weighted) for name, _, weighted in found])


main()
