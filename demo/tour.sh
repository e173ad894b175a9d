#!/usr/bin/env bash
# Walks through the demo in a tmux of its own and prints each screen: today, the first sets, a rest, the way out.
#
#   demo/tour.sh                     builds and walks
#   demo/tour.sh ./publish/rackside  walks with another build
#
# Time runs twenty times faster here. Needs tmux and the .NET 10 SDK.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
command -v tmux >/dev/null || { echo "tour: please install tmux first" >&2; exit 69; }

if [ $# -eq 0 ]; then
  dotnet build -c Release --nologo -v quiet src/RackSide >&2
  set -- dotnet src/RackSide/bin/Release/net10.0/rackside.dll
fi

work=$(mktemp -d)
printf '%s\n' 'set -g status off' 'set -g remain-on-exit on' >"$work/tmux.conf"
terminal=(tmux -S "$work/socket" -f "$work/tmux.conf")
trap '"${terminal[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT

screen() { "${terminal[@]}" capture-pane -p -t tour "$@"; }
press() { "${terminal[@]}" send-keys -t tour "$@"; }

# see TEXT: waits until the terminal shows it, ten seconds at most.
see() {
  for _ in $(seq 100); do
    if grep -qF -- "$1" <<<"$(screen)"; then return 0; fi
    sleep 0.1
  done
  screen >&2
  echo "tour: the terminal does not show \"$1\"" >&2
  exit 70
}

# ended: waits until the program has; a terminal taken away sooner would leave its folder behind.
ended() {
  for _ in $(seq 100); do
    [ "$("${terminal[@]}" display-message -p -t tour '#{pane_dead}')" != 1 ] || return 0
    sleep 0.1
  done
}

show() { printf '\n== %s\n\n' "$1"; screen | sed 's/ *$//'; }

# done_as_shown NEXT: ENTER, and ENTER again where the set was over sooner than a set takes.
done_as_shown() {
  press Enter
  for _ in $(seq 100); do
    case $(screen) in
      *"$1"*) return 0 ;;
      *"ENTER again"*) press Enter ;;
    esac
    sleep 0.1
  done
  see "$1"
}

printf -v command '%q ' "$@" --demo --silent
"${terminal[@]}" new-session -d -s tour -x 80 -y 24 -e RACKSIDE_SPEED=20 "$command"

see 'ENTER begin'
show 'Today: what is asked, and why'

press Enter
see 'all of them are'
show 'Before the first set'

press +
see 'warm-up 1 of'
show 'The first warm-up set: the empty bar'
ramps=$(screen | sed -nE 's/.*warm-up 1 of ([0-9]+).*/\1/p' | head -n 1)
for ((set = 2; set <= ramps; set++)); do done_as_shown "warm-up $set of"; done
show 'The last warm-up set'

done_as_shown ' REST '
show 'A rest'
press Enter
see 'working set 1 of'
show 'The first working set'

done_as_shown 'set 1 written'
show 'It is written, and the rest runs'

press /
see 'leave'
show 'The menu'
press 8
see 'All is written'
press Enter
see 'next:'
ended
printf '\n== Left: the week in plain lines, and the temporary folder is gone\n\n'
screen -S - | sed 's/ *$//; /^Pane is dead/d; /^$/d'
