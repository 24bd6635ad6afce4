#!/usr/bin/env bash
# Follows README.md's two commands to the letter on a Debian that has never seen this project, Java or Maven: a system of
# its own in a temporary folder, made by debootstrap, with nothing in it but what README asks for. Needs root, the
# package debootstrap, the network and 4 GB of room; takes half an hour, most of it tests and downloads.
#
#   run.sh [--suite bookworm] [--mirror URL] [--keep]
#
# Where the network asks for certificates of its own (/usr/local/share/ca-certificates), the new system trusts them too.
set -euo pipefail
home=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
suite=bookworm
mirror=http://deb.debian.org/debian
keep=no
while [ $# -gt 0 ]; do
    case $1 in
        --suite) suite=$2; shift 2 ;;
        --mirror) mirror=$2; shift 2 ;;
        --keep) keep=yes; shift ;;
        *) echo "run.sh: unknown option $1" >&2; exit 2 ;;
    esac
done
[ "$(id -u)" -eq 0 ] || { echo "run.sh: run me as root, debootstrap needs it" >&2; exit 2; }
command -v debootstrap >/dev/null || { echo "run.sh: install debootstrap first (apt install debootstrap)" >&2; exit 2; }

root=$(mktemp -d "${TMPDIR:-/tmp}/fresh-machine.XXXXXX")
chmod 755 "$root" # the maker of the new system shall find its way in
clean_up() {
    umount "$root/proc" 2>/dev/null || true
    [ "$keep" = yes ] && { echo "kept: $root"; return; }
    rm -rf --one-file-system "$root"
}
trap clean_up EXIT

within() { chroot "$root" /usr/bin/env -i HOME="${HOME_WITHIN:-/root}" LANG=C.UTF-8 PATH=/usr/sbin:/usr/bin:/sbin:/bin DEBIAN_FRONTEND=noninteractive "$@"; }

quietly() { "$@" >"$root/last.log" 2>&1 || { tail -n 30 "$root/last.log" >&2; echo "run.sh: failed: $*" >&2; exit 1; }; }

echo "A new Debian ($suite) in $root"
debootstrap --variant=minbase "$suite" "$root" "$mirror" >/dev/null
mount -t proc proc "$root/proc"
cp -L /etc/resolv.conf /etc/hosts "$root/etc/"
quietly within apt-get -q install -y --no-install-recommends ca-certificates
mkdir -p "$root/usr/local/share/ca-certificates"
cp /usr/local/share/ca-certificates/*.crt "$root/usr/local/share/ca-certificates/" 2>/dev/null || true
quietly within update-ca-certificates

echo "What README asks for: a JDK and Maven"
quietly within apt-get -q install -y --no-install-recommends openjdk-17-jdk maven
quietly within useradd --create-home maker
git clone -q --no-hardlinks "$home" "$root/home/maker/tapwright"
within chown -R maker: /home/maker/tapwright

# The first block of commands in README, line by line.
mapfile -t commands < <(awk '/^```/ { if (inside) exit; inside = 1; next } inside' "$home/README.md")
[ "${#commands[@]}" -eq 2 ] || { echo "run.sh: README's first block holds ${#commands[@]} commands, not two" >&2; exit 1; }
status=0
for command in "${commands[@]}"; do
    began=$(date +%s)
    code=0
    HOME_WITHIN=/home/maker within su maker -c "cd /home/maker/tapwright && $command" >"$root/command.log" 2>&1 || code=$?
    printf '%-20s exit %d, %d s\n' "$command" "$code" "$(($(date +%s) - began))"
    grep -E 'Tests run: [0-9]+, Failures: [0-9]+, Errors: [0-9]+, Skipped: [0-9]+$' "$root/command.log" | tail -n 1 || true
    [ "$code" -eq 0 ] || { grep -E '^\[ERROR\]   ' "$root/command.log" || tail -n 40 "$root/command.log"; status=1; }
done
exit "$status"
