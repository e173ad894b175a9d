#!/usr/bin/env bash
# Turns a small board (or any PC) with Debian or Raspberry Pi OS Lite into a RackSide beside the rack, and back.
#
#   sudo ./install.sh [PACKAGE.deb]              install and set up; again and again does no harm
#   sudo ./install.sh --upgrade PACKAGE.deb      backs up first; goes back by itself where the new version does not start
#   sudo ./install.sh --uninstall [--and-data]   gives the console back; the logbook stays unless you say --and-data
#
#   --font SIZE         height of the console's letters: 16 20 22 24 28 32; 32 if not said (docs/kiosk.md: which for which panel)
#   --blank MINUTES     after so long a still screen goes dark: 0 (never) to 60; 15 if not said
#   --time-zone ZONE    such as Europe/London; the board's own if not said
#   --no-start          set up only; it starts with the next boot
#
# Without a name it takes the newest rackside_*.deb that lies beside it, or the RackSide that is installed already, where
# this file is called rackside-kiosk.
set -euo pipefail
umask 022
export LC_ALL=C DEBIAN_FRONTEND=noninteractive

readonly data=/var/lib/rackside
readonly backups=/var/backups/rackside
readonly kept=/var/cache/rackside/installed.deb
readonly settings=/etc/rackside/kiosk.conf
readonly console=/etc/default/console-setup
readonly program=/usr/lib/rackside/rackside
# How long a new version must stay up before it is believed, in seconds.
readonly trial=${RACKSIDE_TRIAL:-12}

here=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")" && pwd)
job=install package='' font=32 blank=15 zone='' start=yes and_data=no

say() { printf '%s\n' "$*"; }
fail() { printf 'install.sh: %s\n' "$*" >&2; exit 1; }
usage() { printf 'install.sh: %s\n' "$*" >&2; exit 64; }
running() { [ -d /run/systemd/system ]; }

read_command_line() {
  while [ $# -gt 0 ]; do
    case $1 in
      --upgrade | --uninstall) job=${1#--} ;;
      --and-data) and_data=yes ;;
      --no-start) start=no ;;
      --font | --blank | --time-zone)
        [ $# -gt 1 ] || usage "$1 needs a value"
        case $1 in --font) font=$2 ;; --blank) blank=$2 ;; *) zone=$2 ;; esac
        shift
        ;;
      -h | --help) sed -n '2,/^set /{s/^# \{0,1\}//;/^set /d;p}' "${BASH_SOURCE[0]}"; exit 0 ;;
      -*) usage "there is no option $1; see --help" ;;
      *) [ -z "$package" ] || usage "\"$1\" is one package too many"; package=$1 ;;
    esac
    shift
  done
}

check_command_line() {
  case $font in 16 | 20 | 22 | 24 | 28 | 32) ;; *) usage "--font: \"$font\" is no size there is; take 16, 20, 22, 24, 28 or 32" ;; esac
  [[ $blank =~ ^([0-9]|[1-5][0-9]|60)$ ]] || usage "--blank: \"$blank\" is not 0 to 60 minutes"
  [ -z "$zone" ] || [[ $zone =~ ^[A-Za-z0-9_+/-]+$ ]] || usage "--time-zone: \"$zone\" is no time zone; write one such as Europe/London"
  [ -z "$package" ] || [ -f "$package" ] || fail "$package is not there"
  [ "$job" != upgrade ] || [ -n "$package" ] || usage "--upgrade needs the new package: --upgrade PACKAGE.deb"
}

check_machine() {
  [ "$(id -u)" -eq 0 ] || fail "this changes the system, so it must run as root: sudo $0"
  if ! command -v dpkg >/dev/null || ! command -v systemctl >/dev/null; then
    fail "this needs Debian or Raspberry Pi OS, with systemd"
  fi
  case $(dpkg --print-architecture) in
    amd64 | arm64) ;;
    *) fail "this system is $(dpkg --print-architecture); RackSide is made for arm64 (a 64-bit Raspberry Pi OS) and amd64" ;;
  esac
}

installed() { [ "$(dpkg-query -W -f '${db:Status-Abbrev}' rackside 2>/dev/null)" = 'ii ' ]; }
version() { dpkg-deb -f "$1" Version; }

find_package() {
  if [ -z "$package" ]; then
    package=$(find "$here" -maxdepth 1 -name "rackside_*_$(dpkg --print-architecture).deb" | sort -V | tail -n 1)
  fi
  [ -n "$package" ] || installed || fail "no rackside_*_$(dpkg --print-architecture).deb lies beside this file; name one"
  [ -z "$package" ] || check_package
}

check_package() {
  [ "$(dpkg-deb -f "$package" Package 2>/dev/null)" = rackside ] || fail "$package is no package of RackSide"
  [ "$(dpkg-deb -f "$package" Architecture)" = "$(dpkg --print-architecture)" ] ||
    fail "$package is for $(dpkg-deb -f "$package" Architecture); this system is $(dpkg --print-architecture)"
}

# What the kiosk uses beside the program. Without a network it goes on with what there is and says what is missing.
put_helpers() {
  local helper missing=()
  for helper in kbd console-setup alsa-utils tzdata; do
    dpkg-query -W -f '${db:Status-Abbrev}' "$helper" 2>/dev/null | grep -q '^ii' || missing+=("$helper")
  done
  [ ${#missing[@]} -gt 0 ] || return 0
  say "fetching ${missing[*]} ..."
  { apt-get -qq update && apt-get -qq --yes --no-install-recommends install "${missing[@]}"; } >/dev/null 2>&1 ||
    say "these could not be fetched, so font, NumLock or sound may be missing: ${missing[*]}; run this again with a network"
}

put_package() { # put_package DEB: dpkg alone where it can, which needs no network
  dpkg --force-confold --force-downgrade --install "$1" >/dev/null 2>&1 && return 0
  apt-get -qq update >/dev/null 2>&1 || true
  if apt-get -qq --yes --fix-broken --no-install-recommends install >/dev/null 2>&1 && installed; then
    return 0
  fi
  say "$1 could not be installed: $(dpkg --install "$1" 2>&1 | tail -n 3 | tr '\n' ' ')"
  return 1
}

# A copy of what is installed, to go back to.
keep_package() {
  mkdir -p "$(dirname "$kept")"
  cp -- "$1" "$kept.part"
  mv -- "$kept.part" "$kept"
}

put_user() {
  systemd-sysusers /usr/lib/sysusers.d/rackside.conf
  install -d -o rackside -g rackside -m 0750 "$data"
}

put_settings() {
  mkdir -p "$(dirname "$settings")"
  cat >"$settings" <<CONF
# Settings of the kiosk, read when it starts. Written by install.sh; run it again to change them.
# Minutes after which a still screen goes dark; 0 never.
RACKSIDE_BLANK=$blank
CONF
}

put_font() {
  [ -f "$console" ] || { say "$console is not there, so the font stays as it is"; return 0; }
  [ -e "$console.before-rackside" ] || cp -p -- "$console" "$console.before-rackside"
  set_line CODESET Uni2
  set_line FONTFACE "$([ "$font" = 16 ] && echo Terminus || echo TerminusBold)"
  set_line FONTSIZE "$(font_size)"
  ! command -v setupcon >/dev/null || setupcon --save-only >/dev/null 2>&1 || true
  ! running || setupcon --force >/dev/null 2>&1 || true
}

font_size() { # as console-setup writes it: width x height
  case $font in 16) echo 8x16 ;; 20) echo 10x20 ;; 22) echo 11x22 ;; 24) echo 12x24 ;; 28) echo 14x28 ;; 32) echo 16x32 ;; esac
}

set_line() { # set_line NAME VALUE in the console's settings
  if grep -q "^$1=" "$console"; then
    sed -i "s/^$1=.*/$1=\"$2\"/" "$console"
  else
    printf '%s="%s"\n' "$1" "$2" >>"$console"
  fi
}

put_zone() {
  [ -n "$zone" ] || return 0
  [ -f "/usr/share/zoneinfo/$zone" ] || fail "--time-zone: \"$zone\" is no time zone; timedatectl list-timezones names them"
  ln -sfn "/usr/share/zoneinfo/$zone" /etc/localtime
  printf '%s\n' "$zone" >/etc/timezone
}

enable() {
  ! running || systemctl daemon-reload
  systemctl --quiet enable rackside.service rackside-stick-release.path 2>/dev/null
  # Two units that want one console at boot: one of them loses, and not always the same.
  systemctl --quiet disable getty@tty1.service 2>/dev/null || true
}

start_now() {
  [ $start = yes ] || return 0
  if ! running; then
    say "systemd does not run here, so it starts with the next boot"
    return 0
  fi
  ! command -v udevadm >/dev/null || udevadm control --reload || true
  systemctl start rackside-stick-release.path
  systemctl reset-failed rackside.service 2>/dev/null || true
  systemctl restart rackside.service
}

stop_now() { ! running || systemctl stop rackside.service 2>/dev/null || true; }

do_install() {
  find_package
  put_helpers
  if [ -n "$package" ]; then
    put_package "$package" || exit 1
    keep_package "$package"
  fi
  put_user
  put_settings
  put_font
  put_zone
  enable
  if ! start_now || ! stays_up; then
    fail "RackSide is installed but does not start; journalctl -u rackside tells why, and Alt+F2 brings a login"
  fi
  say "RackSide $(dpkg-query -W -f '${Version}' rackside) is set up; its logbook is kept in $data"
}

as_kiosk() { # as_kiosk FOLDER ARGUMENT...: the program as the kiosk's user, on that folder
  local folder=$1
  shift
  setpriv --reuid=rackside --regid=rackside --clear-groups env -i HOME="$folder" RACKSIDE_DATA="$folder" TERM=dumb LANG=C.UTF-8 \
    timeout 60 "$program" "$@"
}

# The new version must say its version and find a copy of the logbook in order. 78 is a wrong clock or a mistake in the
# settings, which are no fault of it.
tries_out() {
  local copy code=0
  as_kiosk /tmp --version >/dev/null 2>&1 || return 1
  copy=$(mktemp -d)
  cp -a "$data/." "$copy/"
  chown rackside:rackside "$copy"
  as_kiosk "$copy" check >/dev/null 2>&1 || code=$?
  rm -rf -- "$copy"
  [ $code -eq 0 ] || [ $code -eq 78 ]
}

stays_up() {
  running && [ $start = yes ] || return 0
  local second
  for ((second = 0; second < trial; second++)); do
    systemctl --quiet is-active rackside.service || return 1
    sleep 1
  done
  [ "$(systemctl show --property=NRestarts --value rackside.service)" = 0 ]
}

back_up() { # back_up NAME: prints where
  local place=$backups/$1
  mkdir -p "$backups"
  chmod 700 "$backups"
  rm -rf -- "$place.part"
  cp -a -- "$data" "$place.part"
  sync -f "$place.part"
  rm -rf -- "$place"
  mv -- "$place.part" "$place"
  find "$backups" -mindepth 1 -maxdepth 1 -name 'before-*' -printf '%T@ %p\n' | sort -n | head -n -3 | cut -d' ' -f2- | xargs -r -d '\n' rm -rf --
  printf '%s\n' "$place"
}

put_back() { # put_back DEB FOLDER
  stop_now
  put_package "$1" || true
  rm -rf -- "$data.failed"
  # Its own partition cannot be renamed; then what is in it is.
  mkdir -p "$data.failed"
  find "$data" -mindepth 1 -maxdepth 1 -exec mv -t "$data.failed" -- {} +
  cp -a -- "$2/." "$data/"
}

do_upgrade() {
  installed || fail "RackSide is not installed yet; run this without --upgrade"
  check_package
  local old new place
  old=$(dpkg-query -W -f '${Version}' rackside) new=$(version "$package")
  [ -f "$kept" ] || fail "the package of $old is not in $kept, so there would be no way back; install that version again with this file first"
  package=$(readlink -f "$package")
  stop_now
  place=$(back_up "before-$new-$(date --utc +%Y%m%dT%H%M%S)")
  say "backed up to $place"
  if put_package "$package" && put_user && tries_out && { ! running || systemctl daemon-reload; } && start_now && stays_up; then
    keep_package "$package"
    say "RackSide is $new now (it was $old)"
    return 0
  fi
  say "RackSide $new does not start; going back to $old"
  put_back "$kept" "$place"
  ! running || systemctl daemon-reload
  start_now || true
  fail "this is $old again, with the logbook as it was; what $new left of it is in $data.failed"
}

do_uninstall() {
  stop_now
  systemctl --quiet disable rackside.service rackside-stick-release.path 2>/dev/null || true
  ! running || systemctl stop rackside-stick-release.path 2>/dev/null || true
  ! installed || dpkg --remove rackside >/dev/null
  systemctl --quiet enable getty@tty1.service 2>/dev/null || true
  if [ -e "$console.before-rackside" ]; then
    mv -f -- "$console.before-rackside" "$console"
    ! running || setupcon --force >/dev/null 2>&1 || true
  fi
  rm -rf -- "$(dirname "$settings")" "$(dirname "$kept")"
  if running; then
    systemctl daemon-reload
    systemctl --no-block start getty@tty1.service || true
  fi
  if [ $and_data = yes ]; then
    rm -rf -- "$data" "$data.failed" "$backups"
    ! id rackside >/dev/null 2>&1 || userdel rackside
    say "RackSide and its logbook are gone"
  else
    say "RackSide is gone; its logbook stays in $data"
  fi
}

read_command_line "$@"
check_command_line
check_machine
"do_$job"
