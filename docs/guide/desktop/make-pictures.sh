#!/usr/bin/env bash
# Makes the pictures of docs/guide/desktop.md anew: builds the program, fills an archive from the demo recordings, and
# photographs every screen in a window under Xvfb. Needs xvfb (Debian) besides JDK and Maven.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
here=docs/guide/desktop
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

mvn -q -B test-compile
mvn -q -B dependency:build-classpath -Dmdep.outputFile="$work/classpath"
classpath=target/test-classes:target/classes:$(cat "$work/classpath")
java -Djava.awt.headless=true -Dtapwright.home=. -cp "$classpath" io.github.tapwright.cli.Tapwright demo "$work/demo" >/dev/null
xvfb-run -a -s "-screen 0 1280x720x24" \
    java -Dprism.order=sw -cp "$classpath" io.github.tapwright.desktop.DeskPictures "$work/demo/archive" "$work/pictures" 1280 720
for screen in shelf correct-sitting sitting response notes compare timeline reports; do
    cp "$work/pictures/$screen-1280x720-light.png" "$here/$screen.png"
done
cp "$work/pictures/response-1280x720-dark.png" "$here/response-dark.png"
