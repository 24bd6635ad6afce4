#!/bin/sh
# Disturbs the program at every single write into its archive. See README.md beside this file.
#
#   kill-at-every-write.sh [HOW [JOBS [EVERY]]]
#
# HOW    KILL, TORN, FULL, FAIL, or several with commas; KILL if left out
# JOBS   CREATE, ADD, RECORD, SLIPS, MIGRATE, BACK_UP, RESTORE, or several with commas; all if left out
# EVERY  1 tries every write, 10 every tenth; 1 if left out
set -eu
cd "$(dirname "$0")/../.."
exec mvn -B test -Dtest=EveryWriteTest \
    -Dtapwright.writes.how="${1:-KILL}" \
    -Dtapwright.writes.jobs="${2:-CREATE,ADD,RECORD,SLIPS,MIGRATE,BACK_UP,RESTORE}" \
    -Dtapwright.writes.every="${3:-1}"
