#!/usr/bin/env bash
# Tries the installer on a bare system that really boots: Debian under systemd, in a container made for it and thrown away.
# Installs twice, trains with keys, hangs the program until the watchdog bites, upgrades, upgrades to versions that do not
# start and sees them rolled back, shuts down, uninstalls. Prints what it saw, line by line; ends non-zero where one is wrong.
#
#   sudo kiosk/try.sh GOOD.deb [KEPT_ROOT]
#
# GOOD.deb is for this machine's architecture, made by package.sh. Needs debootstrap, systemd-nspawn (systemd-container) and
# a network the first time; KEPT_ROOT keeps the bare system for the next time. Takes about two minutes then.
set -euo pipefail
umask 022
export LC_ALL=C

here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
if [ $# -lt 1 ] || [ ! -f "$1" ]; then
  sed -n '2,/^set /{s/^# \{0,1\}//;/^set /d;p}' "${BASH_SOURCE[0]}"
  exit 64
fi
[ "$(id -u)" -eq 0 ] || { echo "try.sh: a system can be booted by root only" >&2; exit 1; }
package=$(readlink -f "$1")
bare=${2:-}
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

bare_system() {
  if [ -z "$bare" ] || [ ! -d "$bare" ]; then
    bare=${bare:-$work/bare}
    echo "fetching a bare system ..."
    debootstrap --variant=minbase --include=systemd,systemd-sysv,udev,dbus,kbd,console-setup,tzdata,libssl3,procps,tmux,alsa-utils \
      bookworm "$bare" >"$work/debootstrap.log" || { tail -n 5 "$work/debootstrap.log" >&2; exit 1; }
  fi
  cp -a "$bare" "$work/system"
}

# Versions to upgrade to: one that is as good, one whose program cannot run, and one that runs but never shows a screen.
other() { # other VERSION NAME [SCRIPT]
  local tree=$work/$2
  dpkg-deb --raw-extract "$package" "$tree"
  sed -i "s/^Version: .*/Version: $1/" "$tree/DEBIAN/control"
  if [ $# -gt 2 ]; then
    printf '%s\n' '#!/bin/sh' "$3" >"$tree/usr/lib/rackside/rackside"
    chmod 755 "$tree/usr/lib/rackside/rackside"
  fi
  dpkg-deb --root-owner-group -Zgzip --build "$tree" "$work/system/srv/$2.deb" >/dev/null
}

bare_system
mkdir -p "$work/system/srv"
cp "$package" "$work/system/srv/first.deb"
cp "$here/install.sh" "$here/try-inside.sh" "$work/system/srv/"
other 99.1 good
other 99.2 broken 'exit 1'
# Says its version and finds the logbook in order, but as a screen it writes into the logbook's folder and dies.
# shellcheck disable=SC2016 # for the shell of that program
other 99.3 dying 'case $* in --version) echo 99.3 ;; check) exit 0 ;; *) echo spoilt >"$RACKSIDE_DATA/gym.yaml"; exit 70 ;; esac'

cat >"$work/system/etc/systemd/system/try.service" <<'UNIT'
[Unit]
Description=Tries the installer
After=multi-user.target
[Service]
Type=oneshot
ExecStart=/bin/bash /srv/try-inside.sh
StandardOutput=file:/srv/seen
StandardError=file:/srv/log
TimeoutStartSec=400
[Install]
WantedBy=graphical.target
UNIT
ln -s /etc/systemd/system/try.service "$work/system/etc/systemd/system/graphical.target.wants/try.service" 2>/dev/null || {
  mkdir -p "$work/system/etc/systemd/system/graphical.target.wants"
  ln -s /etc/systemd/system/try.service "$work/system/etc/systemd/system/graphical.target.wants/try.service"
}

# Twice: the program shuts the first one down, and the second one sees what was left.
for boot in 1 2; do
  echo "$boot" >"$work/system/srv/boot"
  timeout 500 script --quiet --return --command "systemd-nspawn --quiet --directory=$work/system --register=no --keep-unit --boot" \
    "$work/console" </dev/null >/dev/null 2>&1 || true
done
cat "$work/system/srv/seen"
if ! grep -q '^all as it should be$' "$work/system/srv/seen" || grep -q '^WRONG' "$work/system/srv/seen"; then
  cat "$work/system/srv/log" >&2
  tail -c 2000 "$work/console" >&2
  exit 1
fi
