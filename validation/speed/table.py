"""Joins what run.sh measured into a table. Usage: table.py FOLDER TRUTH.json"""

import datetime
import json
import os
import platform
import statistics
import sys

OTHERS = {"fft": "FFTW 3, measured plan", "decode": "libsndfile", "loudness": "ffmpeg ebur128 with true peak"}
NEAR = 0.02


def read(path):
    with open(path, encoding="utf-8") as lines:
        return [line.rstrip("\n").split("\t") for line in lines]


def pretty(seconds):
    return f"{seconds * 1e6:.1f} µs" if seconds < 1e-3 else f"{seconds * 1e3:.1f} ms" if seconds < 1 else f"{seconds:.2f} s"


def accuracy(rows, truth):
    """Of the true resonances: the share that was found, and the middle error of frequency and Q of those, in percent."""
    true_of = {s["file"].removesuffix(".flac"): s["resonances"] for s in truth["sittings"]}
    frequency, q, asked = [], [], 0
    for name, _, *found in rows:
        pairs = [tuple(map(float, pair.split(","))) for pair in found]
        for mode in true_of[os.path.basename(name).removesuffix(".wav")]:
            asked += 1
            near = [p for p in pairs if abs(p[0] / mode["frequency_hz"] - 1) < NEAR]
            if near:
                best = min(near, key=lambda p: abs(p[0] - mode["frequency_hz"]))
                frequency.append(100 * abs(best[0] / mode["frequency_hz"] - 1))
                q.append(100 * abs(best[1] / mode["q"] - 1))
    listed = sum(len(found) for _, _, *found in rows)
    return f"{len(frequency)} of {asked} found ({listed} listed), f {statistics.median(frequency):.4f} %, Q {statistics.median(q):.1f} %"


def main():
    folder, truth_file = sys.argv[1:]
    with open(truth_file, encoding="utf-8") as file:
        truth = json.load(file)
    with open("/proc/cpuinfo", encoding="utf-8") as info:
        cpu = next((line.split(":")[1].strip() for line in info if line.startswith("model name")), platform.processor())
    print(f"{datetime.date.today()}, {cpu}, {os.cpu_count()} cores. Tapwright in a warm machine; middle of nine times.\n")
    print("| work | Tapwright | the other | which | times as long |\n|---|---|---|---|---|")
    theirs = {name: float(seconds) for name, seconds, *_ in read(f"{folder}/theirs")}
    for name, seconds, *_ in read(f"{folder}/ours"):
        other = theirs[name]
        print(f"| {name} | {pretty(float(seconds))} | {pretty(other)} | {OTHERS[name.split()[0]]} | {float(seconds) / other:.2f} |")
    ours_taps, their_taps = read(f"{folder}/ours-taps"), read(f"{folder}/theirs-taps")
    ours, other = (sum(float(row[1]) for row in rows) / len(rows) for rows in (ours_taps, their_taps))
    print(f"| taps, mean of {len(ours_taps)} recordings | {pretty(ours)} | {pretty(other)} | SciPy, taps.py | {ours / other:.2f} |")
    print("\nAgainst the truth of the demo recordings:\n")
    print(f"- Tapwright: {accuracy(ours_taps, truth)}")
    print(f"- SciPy: {accuracy(their_taps, truth)}")


if __name__ == "__main__":
    main()
