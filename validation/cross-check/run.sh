#!/bin/sh
# Measures notes with Tapwright, ffmpeg, SciPy and SoX and prints a table of the differences (Markdown).
# Usage: run.sh [-s SOURCE] [NOTE.wav…]    WAV files are measured besides the notes made by notes.py.
set -eu

here=$(CDPATH='' cd -P "$(dirname "$0")" && pwd)
source_of_notes=
while getopts s: option; do
    case $option in
        s) source_of_notes=$OPTARG ;;
        *) echo "usage: run.sh [-s SOURCE] [NOTE.wav…]" >&2; exit 2 ;;
    esac
done
shift $((OPTIND - 1))

python=python3
for program in ffmpeg sox; do
    command -v $program >/dev/null || missing=yes
done
$python -c 'import scipy' 2>/dev/null || missing=yes
if [ "${missing:-}" ]; then
    echo "run.sh needs ffmpeg, sox and SciPy: apt install ffmpeg sox python3-scipy" >&2
    exit 1
fi

made=$(mktemp -d)
trap 'rm -rf "$made"' EXIT
$python "$here/notes.py" "$made"
TAPWRIGHT=${TAPWRIGHT:-$here/../../tapwright} $python "$here/compare.py" --source "$source_of_notes" "$made" "$@"
