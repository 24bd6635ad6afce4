#!/usr/bin/env bash
# Gives every fuzz test strange input for some time each, guided by coverage, and prints what came of it.
# Usage: validation/fuzz/run.sh [SECONDS, 60 if left out] [TEST…, all if left out]
# Ends with 1 if anything was found. Needs Linux on x86-64, macOS or Windows: the fuzzer's driver is native.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

seconds=${1:-60}
shift || true
work=target/fuzz
mkdir -p "$work"
if [ ! -s "$work/classpath" ] || [ pom.xml -nt "$work/classpath" ]; then
    mvn -q -B test-compile dependency:build-classpath -Dmdep.includeScope=test -Dmdep.outputFile="$work/classpath"
fi
classpath=target/test-classes:target/classes:$(cat "$work/classpath")
libraries='javazoom.**:com.jcraft.**:net.sourceforge.jaad.**'

# one line "class method" for each fuzz test
targets() {
    find src/test/java -name '*FuzzTest.java' | sort | while read -r file; do
        class=$(echo "${file#src/test/java/}" | sed 's/\.java$//; s|/|.|g')
        grep -A1 '@FuzzTest' "$file" | sed -n 's/.*void \([A-Za-z]*\)(.*/\1/p' | while read -r method; do
            echo "$class $method"
        done
    done
}

# Only the package under test and the decoders are watched: rewriting all of the program takes longer than trying it.
found=0
echo '| Target | Runs | Runs a second | Inputs kept | Replayed in 128 MB | Findings |'
echo '|---|---|---|---|---|---|'
while read -r class method; do
    name=${class##*.}.$method
    if [ $# -gt 0 ] && [[ " $* " != *" ${class##*.} "* ]]; then continue; fi
    log=$work/$name.log
    nice -n 10 java -Xmx512m -XX:+UseSerialGC -Djava.awt.headless=true -cp "$classpath" \
        com.code_intelligence.jazzer.Jazzer --target_class="$class" --target_method="$method" \
        --instrumentation_includes="${class%.*}.**:$libraries" \
        -max_total_time="$seconds" -timeout=60 -rss_limit_mb=0 -print_final_stats=1 </dev/null >"$log" 2>&1 || true
    runs=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log" | tail -n 1)
    rate=$(sed -n 's/^stat::average_exec_per_sec: *//p' "$log" | tail -n 1)
    kept=$(find ".cifuzz-corpus/$class/$method" -type f 2>/dev/null | wc -l || true)
    findings=$(grep -cE '^== Java Exception|ERROR: libFuzzer' "$log" || true)
    replay=$(nice -n 10 java -Xmx128m -XX:+UseSerialGC -Djava.awt.headless=true -cp "$classpath" \
        io.github.tapwright.fuzz.ReplayCorpus "$class" "$method" ".cifuzz-corpus/$class/$method" \
        "src/test/resources/${class//.//}Inputs/$method" 2>"$work/$name.replay.log" | sed 's/ inputs.*//') || replay=
    echo "| \`$name\` | ${runs:-none} | ${rate:-none} | $kept | ${replay:-failed} | $findings |"
    if [ "$findings" -gt 0 ] || [ -z "$runs" ] || [ -z "$replay" ]; then found=1; fi
done < <(targets)
exit "$found"
