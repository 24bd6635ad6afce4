#!/usr/bin/env bash
# Gives the same work to Tapwright and to general-purpose programs, one after the other on this machine, and prints a
# table (Markdown). Let the machine do nothing else meanwhile; takes five to ten minutes.
# Needs, from Debian: gcc libfftw3-dev libsndfile1-dev ffmpeg sox libsox-fmt-all python3-scipy, besides JDK and Maven.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
home=$(cd "$here/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1 # small matrices: more threads only wait for each other

for program in gcc ffmpeg sox python3 mvn; do
    command -v "$program" >/dev/null || { echo "run.sh needs $program; see the list on top of it" >&2; exit 1; }
done
python3 -c 'import scipy' || { echo "run.sh needs SciPy (apt install python3-scipy)" >&2; exit 1; }

gcc -O2 -o "$work/fftw" "$here/fftw.c" -lfftw3 -lm
gcc -O2 -o "$work/sndfile" "$here/sndfile.c" -lsndfile
if [ -z "${CLASSPATH_BENCH:-}" ]; then
    (cd "$home" && mvn -q -B -Pbench test-compile && mvn -q -B -Pbench dependency:build-classpath -Dmdep.outputFile="$work/classpath")
    CLASSPATH_BENCH=$home/target/test-classes:$home/target/classes:$(sed 's/\x1b\[[0-9;]*m//g' "$work/classpath")
fi
ours() { java -Xmx512m -XX:+UseSerialGC -cp "$CLASSPATH_BENCH" io.github.tapwright.bench.SideBySideJobs "$@"; }

# Sounds: taps of three of the demo's guitars, a minute and ten minutes of pink noise of two channels.
mkdir "$work/taps"
for file in "$home"/recordings-demo/3[146]-*.flac; do
    case $file in *-notes.flac) continue ;; esac
    sox "$file" -b 32 "$work/taps/$(basename "${file%.flac}").wav"
done
sox -R -n -r 48000 -c 2 -b 24 "$work/minute.wav" synth 60 pinknoise vol 0.3
sox -R -n -r 48000 -c 2 -b 24 "$work/programme.wav" synth 600 pinknoise vol 0.3
ffmpeg -v error -i "$work/minute.wav" "$work/minute.flac"
ffmpeg -v error -i "$work/minute.wav" -c:a libvorbis -q:a 5 "$work/minute.ogg"
ffmpeg -v error -i "$work/minute.wav" -c:a libmp3lame -q:a 2 "$work/minute.mp3"
minutes=("$work"/minute.{wav,flac,ogg,mp3})
lengths=(4096 48000 65536 1048576)

{
    ours fft "${lengths[@]}"
    ours decode "${minutes[@]}"
    ours loudness "$work/programme.wav"
} >"$work/ours"
ours taps "$work"/taps/*.wav >"$work/ours-taps"
{
    "$work/fftw" "${lengths[@]}"
    "$work/sndfile" "${minutes[@]}"
    python3 - "$work/programme.wav" <<'EOF'
import statistics, subprocess, sys, time
def once():
    began = time.perf_counter()
    subprocess.run(["ffmpeg", "-v", "error", "-nostats", "-threads", "1", "-i", sys.argv[1], "-af", "ebur128=peak=true", "-f", "null", "-"], check=True)
    return time.perf_counter() - began
print("loudness", statistics.median(once() for _ in range(5)), sep="\t")
EOF
} >"$work/theirs"
python3 "$here/taps.py" "$work"/taps/*.wav >"$work/theirs-taps"
python3 "$here/table.py" "$work" "$home/recordings-demo/truth.json"
