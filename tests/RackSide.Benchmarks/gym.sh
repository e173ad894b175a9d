#!/usr/bin/env bash
# Measures a gym of several racks: starts a PostgreSQL of its own, without TLS, on loopback; runs `-- gym` against it; stops it.
#   gym.sh LIFTERS COPIES      LIFTERS are taken whole by a fresh rack, COPIES is how many the server is filled up to
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")"
bin=$(find /usr/lib/postgresql -maxdepth 2 -name bin | sort -V | tail -n 1)
work=$(mktemp -d)
port=${PORT:-54399}
as() { if [ "$(id -u)" -eq 0 ]; then runuser -u postgres -- "$@"; else "$@"; fi; }
[ "$(id -u)" -ne 0 ] || chown postgres "$work"
cd "$work"
as "$bin/initdb" -D "$work/data" -U gym -A trust -E UTF8 --locale=C >/dev/null
as "$bin/pg_ctl" -D "$work/data" -w -s -o "-p $port -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c max_wal_size=8GB -c shared_buffers=512MB" -l "$work/log" start
trap 'as "$bin/pg_ctl" -D "$work/data" -m immediate -s stop; rm -rf "$work"' EXIT
cd - >/dev/null
dotnet run -c Release ${NO_BUILD:+--no-build} -- gym "Host=127.0.0.1;Port=$port;Database=postgres;Username=gym;SSL Mode=Disable;Pooling=false;Command Timeout=0" "$1" "$2"
