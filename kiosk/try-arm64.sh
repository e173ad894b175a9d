#!/usr/bin/env bash
# Tries the arm64 program on a PC under qemu's user emulation: that it starts, finds itself in order, writes and reads a
# logbook, and holds a session in a terminal. Wherever both can speak, it must say byte for byte what the PC's program says.
#
#   kiosk/try-arm64.sh ARM64_PROGRAM AMD64_PROGRAM
#
# Needs qemu-user-static, tmux, and a folder with an arm64 Debian's libc6 and libssl3, named by QEMU_LD_PREFIX; such as
#   debootstrap --foreign --arch=arm64 --variant=minbase --include=libssl3 bookworm FOLDER
#   dpkg-deb -x FOLDER/var/cache/apt/archives/libssl3_*.deb FOLDER
# The emulator's speed says nothing about a board's.
set -euo pipefail
umask 022
export LC_ALL=C.UTF-8 QEMU_LD_PREFIX=${QEMU_LD_PREFIX:?an arm64 system to link with; the head of this file says how to get one}

arm=$(readlink -f "${1:?the arm64 program}") pc=$(readlink -f "${2:?the PC program}")
work=$(mktemp -d)
socket=rackside-arm64-$$
trap 'tmux -L "$socket" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT
failed=0

on_arm() { qemu-aarch64-static "$arm" "$@"; }
ok() { printf 'ok     %s\n' "$1"; }
wrong() { printf 'WRONG  %s\n' "$1"; failed=1; }
check() { local what=$1; shift; if "$@" >>"$work/log" 2>&1; then ok "$what"; else wrong "$what"; fi; }

alike() { # alike WHAT ARGUMENT...: both programs print the same
  local what=$1
  shift
  "$pc" "$@" >"$work/pc" 2>&1 || true
  on_arm "$@" >"$work/arm" 2>&1 || true
  if [ -s "$work/pc" ] && cmp -s "$work/pc" "$work/arm"; then ok "$what, $(wc -c <"$work/arm") bytes alike"; else wrong "$what"; diff "$work/pc" "$work/arm" | head -n 5; fi
}

# shellcheck disable=SC2317 # check calls it
shows() { # shows TEXT
  local try
  for ((try = 0; try < 200; try++)); do
    tmux -L "$socket" capture-pane -p | grep -qF -- "$1" && return 0
    sleep 0.1
  done
  tmux -L "$socket" capture-pane -p
  return 1
}

press() { local key; for key in "$@"; do tmux -L "$socket" send-keys "$key"; sleep 0.8; done; }

export RACKSIDE_CLOCK=2026-11-23T18:00
alike '--version' --version
alike '--help' --help
check 'check, in an empty folder' on_arm check --data "$work/empty"
alike 'check of the same folder' check --data "$work/empty"
alike 'the plates of a bar' plates 62.5
alike 'twelve weeks written to a logbook and read back: the week' --demo summary --json
alike 'the same: every squat' --demo history squat --json
alike 'the same: today' --demo today --json

tmux -L "$socket" -f /dev/null new-session -d -x 50 -y 15 \
  "QEMU_LD_PREFIX=$QEMU_LD_PREFIX RACKSIDE_CLOCK=$RACKSIDE_CLOCK qemu-aarch64-static $arm --kiosk --data $work/gym; echo left with \$?; exec sleep 60"
check 'a screen of 50x15 is up' shows 'page 1 of 9'
press Enter Enter Enter Enter Enter Enter Enter Enter Enter
check 'the set-up is answered' shows 'STRENGTH DAY'
press Enter +
check 'a session begins' shows 'SQUAT'
sleep 8
press 5 Enter
check 'a set is asked about or rested after' shows 'left'
press / 8
sleep 1
press Enter
check 'the session is left open' shows 'WHO TRAINS?'
press /
check 'the list behind the names' shows 'shut down'
press 3
press 1
check 'shut down by the menu: exit code 20' shows 'left with 20'
"$pc" today --data "$work/gym" --json >"$work/pc" 2>/dev/null || true
check 'the PC reads what the board wrote' grep -q '"lifter"' "$work/pc"
check 'and finds it in order, a day later' env RACKSIDE_CLOCK=2026-11-24T18:00 "$pc" check --data "$work/gym"
[ $failed -eq 0 ] && echo 'all as it should be'
exit $failed
