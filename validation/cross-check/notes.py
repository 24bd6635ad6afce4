"""Makes plucked notes to compare meters on: partials that die away, each with its own decay, seeded.

Usage: python3 notes.py FOLDER. No string behaves exactly so; the notes only have to have attacks, decays and a
spectrum of the right kind. 24 bit, one or two channels.
"""

import sys
import wave
from pathlib import Path

import numpy as np

# name, frequency Hz, inharmonicity, decay time of the lowest partial s, length s, rate Hz, channels
NOTES = [
    ("made E2, mono, 44.1 kHz", 82.41, 1.1e-4, 12, 12, 44100, 1),
    ("made A2, stereo, 48 kHz", 110.00, 5e-5, 9, 10, 48000, 2),
    ("made G3, mono, 48 kHz", 196.00, 6e-5, 6, 8, 48000, 1),
    ("made E4, stereo, 44.1 kHz", 329.63, 2e-5, 4, 6, 44100, 2),
    ("made A5, mono, 96 kHz", 880.00, 4e-5, 1.5, 4, 96000, 1),
]


def pluck(random, frequency, inharmonicity, decay, seconds, rate):
    t = np.arange(int(seconds * rate)) / rate
    sound = np.zeros_like(t)
    for n in range(1, 60):
        f = n * frequency * np.sqrt(1 + inharmonicity * n * n)
        if f > min(16000, 0.45 * rate):
            break
        amplitude = abs(np.sin(np.pi * n / 5.3)) / n ** 1.5
        rate_of_decay = 6.91 / decay * (1 + 0.02 * n * n) ** 0.5
        sound += amplitude * np.exp(-rate_of_decay * t) * np.sin(2 * np.pi * f * t + random.uniform(0, 2 * np.pi))
    sound *= np.minimum(1, t / 0.002)
    sound /= np.max(np.abs(sound)) / 0.6
    return sound + 1e-5 * random.standard_normal(len(t))


def write(path, channels, rate):
    integers = np.round(np.clip(channels, -1, 1) * (2**23 - 1)).astype("<i4")
    frames = np.ascontiguousarray(integers.T).view(np.uint8).reshape(-1, 4)[:, :3]
    with wave.open(str(path), "wb") as file:
        file.setnchannels(len(channels))
        file.setsampwidth(3)
        file.setframerate(rate)
        file.writeframes(frames.tobytes())


def main(folder):
    for seed, (name, frequency, inharmonicity, decay, seconds, rate, channels) in enumerate(NOTES):
        random = np.random.default_rng(seed)
        sound = [pluck(random, frequency, inharmonicity, decay, seconds, rate) for _ in range(channels)]
        write(Path(folder) / (name + ".wav"), np.array(sound), rate)


main(sys.argv[1])
