#!/usr/bin/env bash
# Walks README.md as a newcomer would: a clean clone, an empty home, its first command, ENTER all the way, every command for a
# shell that it names, the invented gym. Says how long each took, and fails where the README does not hold.
#
#   docs/walk-readme.sh
#
# Needs git, tmux and the .NET 10 SDK. Set NUGET_PACKAGES to spare fetching the packages anew (then that is not timed).
set -euo pipefail

root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
work=$(mktemp -d)
tmux=(tmux -S "$work/socket" -f /dev/null)
trap '"${tmux[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT

fail() {
  "${tmux[@]}" capture-pane -p -t walk >&2 2>/dev/null || true
  printf 'walk-readme: %s\n' "$*" >&2
  exit 1
}

took() { printf '%6.1f s  %s\n' "$(bc <<<"$(date +%s.%N) - $began")" "$1"; began=$(date +%s.%N); }
screen() { "${tmux[@]}" capture-pane -p -t walk; }
press() { "${tmux[@]}" send-keys -t walk "$1"; sleep 0.6; }

see() { # see TEXT [SECONDS]
  for _ in $(seq "$((${2:-15} * 10))"); do
    grep -qF -- "$1" <<<"$(screen)" && return 0
    sleep 0.1
  done
  fail "the screen does not show \"$1\""
}

run() { # run COMMAND: in the terminal of the newcomer
  "${tmux[@]}" kill-session -t walk 2>/dev/null || true
  "${tmux[@]}" new-session -d -s walk -x 80 -y 24 -c "$work/clone" "env HOME=$work/home TZ=UTC ${NUGET_PACKAGES:+NUGET_PACKAGES=$NUGET_PACKAGES} DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 $1; echo ended \$?; sleep 99"
}

mkdir "$work/home"
began=$(date +%s.%N)
git clone -q "$root" "$work/clone"
took "git clone"

first=$(grep -m1 -oE '^dotnet run [^#]*' "$work/clone/README.md" | sed 's/ *$//')
[ -n "$first" ] || fail "README.md names no 'dotnet run' command"
"${tmux[@]}" new-session -d -s kept "sleep 999"
run "$first"
see "page 1 of" 300
took "$first, to the first page"

pages=$(screen | grep -oE 'page 1 of [0-9]+' | grep -oE '[0-9]+$')
for page in $(seq 2 "$pages"); do press Enter; see "page $page of $pages"; done
press Enter
for _ in $(seq 100); do grep -qE 'REST DAY|ENTER begin' <<<"$(screen)" && break; sleep 0.1; done
grep -qE 'REST DAY|ENTER begin' <<<"$(screen)" || fail "ENTER all the way does not lead to a day"
took "ENTER $pages times, to: $(screen | grep -m1 . | sed 's/  */ /g')"

press /
see "ended 0"
for folder in .local/share/rackside .config/rackside; do
  [ "$(stat -c %a "$work/home/$folder")" = 700 ] || fail "$folder is open to others"
done
took "left by /; both folders are for their owner alone"

grep -oE 'Commands for a shell: .*' "$work/clone/README.md" | grep -oE '`[^`]*`' | tr -d '`' | while read -r command; do
  # A file that the README leaves open is the plan that comes along.
  command=${command/FILE/demo\/plan.yaml}
  [[ $command != --* ]] || continue
  (cd "$work/clone" && HOME=$work/home ${NUGET_PACKAGES:+env NUGET_PACKAGES=$NUGET_PACKAGES} $first --no-build -- $command >"$work/said" 2>"$work/wrong" </dev/null) ||
    { cat "$work/said" "$work/wrong" >&2; fail "rackside $command ends with $?"; }
  [ -s "$work/said" ] || fail "rackside $command says nothing"
  took "rackside $command: $(head -n 1 "$work/said" | cut -c 1-70)"
done
began=$(date +%s.%N)

run "$first -- --demo"
see "ENTER begin" 60
took "$first -- --demo"
