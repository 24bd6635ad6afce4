#!/bin/sh
# How the sound files beside this script were made: 0.3 s of an invented decaying sine,
# x(t) = 0.6 exp(-t / 0.1 s) sin(2 pi 440 Hz t), as DecayingSine computes it in the tests.
# Needs the Debian packages ffmpeg, flac, vorbis-tools and lame.
set -eu
cd "$(dirname "$0")"
work=$(mktemp -d)
trap 'rm -r "$work"' EXIT

sine() { # rate, full scale to round to, codec, file
    ffmpeg -v error -y -f lavfi \
        -i "aevalsrc=round($2*0.6*exp(-t/0.1)*sin(2*PI*440*t))/$2:s=$1:d=0.3" \
        -fflags +bitexact -flags:a +bitexact -c:a "$3" "$4"
}

sine 44100 32768 pcm_s16le "$work/16.wav"
sine 96000 8388608 pcm_s24le "$work/24.wav"

flac -s -f --no-padding -o sine-16.flac "$work/16.wav"
flac -s -f --no-padding -o sine-24-96k.flac "$work/24.wav"
oggenc -Q -q 6 -s 1 -o sine.ogg "$work/16.wav"
lame --quiet -b 256 -m m "$work/16.wav" sine.mp3
ffmpeg -v error -y -i "$work/16.wav" -fflags +bitexact -flags:a +bitexact -c:a aac -aac_pns 0 -aac_tns 0 -b:a 192k sine.m4a
ffmpeg -v error -y -i "$work/16.wav" -fflags +bitexact -flags:a +bitexact -c:a aac -aac_pns 0 -aac_tns 0 -b:a 192k sine.aac
