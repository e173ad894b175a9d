#!/usr/bin/env bash
# The part of try.sh that runs inside the booted system.
set -u
export LC_ALL=C RACKSIDE_TRIAL=4 TERM=linux
cd /srv || exit 1

check() { # check WHAT COMMAND...
  local what=$1
  shift
  if "$@" >>/srv/log 2>&1; then printf 'ok     %s\n' "$what"; else printf 'WRONG  %s\n' "$what"; fi
}

checks_not() { # checks_not WHAT COMMAND...
  local what=$1
  shift
  if "$@" >>/srv/log 2>&1; then printf 'WRONG  %s\n' "$what"; else printf 'ok     %s\n' "$what"; fi
}

active() { systemctl --quiet is-active rackside; }
installed() { [ "$(dpkg-query -W -f '${Version}' rackside)" = "$1" ]; }
shows() { # shows TEXT: waits until the console does
  local try
  for ((try = 0; try < 100; try++)); do
    tmux capture-pane -p -t console | grep -qF -- "$1" && return 0
    sleep 0.1
  done
  tmux capture-pane -p -t console
  return 1
}
press() { local key; for key in "$@"; do tmux send-keys -t console "$key"; sleep 0.5; done; }
restarts() { systemctl show --property=NRestarts --value rackside; }
main_pid() { systemctl show --property=MainPID --value rackside; }

# There is no text console in a container. A terminal of tmux stands in for it: its name is that of the console, and what is
# only for a real one (hanging it up, freeing it) is left out.
stand_in_console() {
  tmux kill-server 2>/dev/null
  tmux -f /dev/null new-session -d -s console -x 80 -y 24 'tty >/run/stand-in; exec sleep infinity'
  sleep 1
  rm -f /dev/tty1
  ln -s "$(cat /run/stand-in)" /dev/tty1
  chmod 666 "$(cat /run/stand-in)"
  mkdir -p /etc/systemd/system/rackside.service.d
  cat >/etc/systemd/system/rackside.service.d/stand-in.conf <<CONF
[Service]
TTYReset=no
TTYVHangup=no
TTYVTDisallocate=no
StandardInput=tty-force
Environment=TERM=tmux-256color
DeviceAllow=char-pts rw
CONF
  systemctl daemon-reload
}

bites_after() { # the watchdog's patience, shortened for the trial
  mkdir -p /run/systemd/system/rackside.service.d
  printf '[Service]\nWatchdogSec=%s\n' "$1" >/run/systemd/system/rackside.service.d/watchdog.conf
  systemctl daemon-reload
  systemctl restart rackside
}

watchdog_bites() {
  local before try
  before=$(main_pid)
  kill -STOP "$before"
  for ((try = 0; try < 150; try++)); do
    [ "$(main_pid)" != "$before" ] && [ "$(main_pid)" != 0 ] && active && return 0
    sleep 0.1
  done
  return 1
}

hangs_up() { # SIGHUP: leaves at once, logbook closed, and is started again
  local before try
  before=$(main_pid)
  kill -HUP "$before"
  for ((try = 0; try < 20; try++)); do
    [ -d "/proc/$before" ] || return 0
    sleep 0.1
  done
  return 1
}

first_boot() {
  local own
  own=$(dpkg-deb -f first.deb Version)
  stand_in_console
  check 'installs' bash install.sh --font 32 --time-zone Europe/London first.deb
  check 'is up: systemd was told READY by the screen' active
  check 'the screen stands on the console' shows 'SET-UP'
  check 'runs as its own user without rights' test "$(ps -o user= -p "$(main_pid)")" = rackside
  check 'no capability at all' grep -q '^CapEff:[[:space:]]*0*$' "/proc/$(main_pid)/status"
  check 'installs again, with no harm' bash install.sh --font 28 --blank 0 first.deb
  check 'still up' active
  check 'the second font is the one that counts' grep -qx 'FONTSIZE="14x28"' /etc/default/console-setup
  check 'the font of before is kept' test -e /etc/default/console-setup.before-rackside
  check 'time zone' test "$(readlink /etc/localtime)" = /usr/share/zoneinfo/Europe/London
  check 'enabled, and the login is off this console' systemctl --quiet is-enabled rackside
  checks_not 'getty on tty1 is disabled' systemctl --quiet is-enabled getty@tty1
  checks_not 'a foreign package is refused' bash install.sh /srv/none.deb
  check 'exposure 2.0 or less under this systemd' test "$(systemd-analyze security rackside | sed -n 's/.*: \([0-9]\)\.\([0-9]\).*/\1\2/p' | tail -n 1)" -le 20
  shows 'SET-UP'
  press Enter + + '*' Enter Enter Enter Enter Enter Enter Enter Enter
  check 'set up with the pad alone' shows 'STRENGTH DAY'
  press /
  check 'back at the names' shows 'WHO TRAINS?'
  check 'the name turned on the pad' shows 'Ba'
  press C-c C-z
  check 'Ctrl+C and Ctrl+Z do nothing' shows 'WHO TRAINS?'
  check 'nor do they stop it' active
  bites_after 4
  shows 'WHO TRAINS?'
  sleep 6
  check 'fed by the screen, the watchdog keeps still' test "$(restarts)" = 0
  check 'a program that hangs is killed and started again' watchdog_bites
  check 'and shows the names again' shows 'WHO TRAINS?'
  check 'SIGHUP: gone within two seconds' hangs_up
  sleep 4
  check 'and started again with the logbook in order' shows 'WHO TRAINS?'
  rm -f /run/systemd/system/rackside.service.d/watchdog.conf
  systemctl daemon-reload

  check 'upgrades' bash install.sh --upgrade good.deb
  check 'to the new version' installed 99.1
  check 'with a backup' find /var/backups/rackside -path '*/before-99.1-*/gym.yaml'
  checks_not 'a version that cannot run is refused' bash install.sh --upgrade broken.deb
  check 'the good one is back' installed 99.1
  check 'and up' active
  cp /var/lib/rackside/gym.yaml /srv/gym-before
  checks_not 'a version that dies after it has spoilt the data is refused' bash install.sh --upgrade dying.deb
  check 'the good one is back' installed 99.1
  check 'with the data of before' cmp /var/lib/rackside/gym.yaml /srv/gym-before
  check 'what the bad one left can be looked at' grep -q spoilt /var/lib/rackside.failed/gym.yaml
  check 'and up' shows 'WHO TRAINS?'
  printf '%s\n' "$own" >/srv/own
  press / 3
  check 'asks before it shuts down' shows 'SHUT DOWN?'
  touch /srv/asked
  press 1
  sleep 20
  echo 'WRONG  the system did not go down'
}

second_boot() {
  echo 'ok     shut down by a key on the screen'
  stand_in_console
  systemctl reset-failed rackside
  systemctl restart rackside
  check 'after a boot the names are there' shows 'WHO TRAINS?'
  check 'uninstalls' bash install.sh --uninstall
  checks_not 'nothing runs' active
  checks_not 'the program is gone' test -e /usr/lib/rackside/rackside
  checks_not 'the command is gone' test -e /usr/bin/rackside
  check 'the login is back' systemctl --quiet is-enabled getty@tty1
  checks_not 'the font is back' grep -q TerminusBold /etc/default/console-setup
  check 'the logbook stays' test -e /var/lib/rackside/gym.yaml
  check 'uninstalls again, with no harm' bash install.sh --uninstall
  check 'installs over the old logbook' bash install.sh first.deb
  check 'and finds the lifter' shows 'Ba'
  check 'uninstalls with the data' bash install.sh --uninstall --and-data
  checks_not 'the logbook is gone' test -e /var/lib/rackside
  checks_not 'the user is gone' id rackside
  echo 'all as it should be'
}

case $(cat /srv/boot) in
  1) first_boot ;;
  2) second_boot ;;
esac
systemctl --no-block poweroff
