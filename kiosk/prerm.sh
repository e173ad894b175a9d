#!/bin/sh
# Before the package goes: the console goes back to the login. Whatever was trained stays.
set -e
if [ "$1" = remove ] && [ -d /run/systemd/system ]; then
  systemctl disable --now rackside.service >/dev/null 2>&1 || true
fi
if [ "$1" = remove ] && [ -d /var/lib/rackside ]; then
  echo "rackside: the logbook stays in /var/lib/rackside"
fi
