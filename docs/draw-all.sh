#!/usr/bin/env bash
# Draws the pictures in docs/pictures anew, every screen from the real program in its invented gym.
#
#   docs/draw-all.sh PROGRAM [NAME ...]     PROGRAM is a published rackside; with NAMEs, only those pictures
#
# For PNG: apt-get install tmux aha chromium fonts-dejavu-core
set -euo pipefail

[ $# -ge 1 ] || { sed -n '2,7s/^# \{0,1\}//p' "$0" >&2; exit 64; }
program=$(realpath "$1")
shift
wanted=" $* "
pictures=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)/pictures
mkdir -p "$pictures"

work=$(mktemp -d)
tmux=(tmux -S "$work/socket" -f /dev/null)
trap '"${tmux[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT
columns=80 rows=24

# Keeps the terminals' server alive between one program and the next.
"${tmux[@]}" new-session -d -s kept "sleep 9999"

# open SIZE CLOCK [ARGUMENT ...]: starts the program in a terminal of that size.
open() {
  columns=${1%x*} rows=${1#*x}
  local clock=$2
  shift 2
  "${tmux[@]}" kill-session -t drawn 2>/dev/null || true
  printf -v command '%q ' env "RACKSIDE_CLOCK=$clock" "RACKSIDE_SPEED=${speed:-1}" TZ=UTC LANG=C.UTF-8 ${more:-} "$program" "$@"
  "${tmux[@]}" new-session -d -s drawn -x "$columns" -y "$rows" "$command; sleep 99"
  "${tmux[@]}" set-option -g status off
  "${tmux[@]}" resize-window -t drawn -x "$columns" -y "$rows"
}

see() {
  for _ in $(seq 300); do
    "${tmux[@]}" capture-pane -p -t drawn | grep -qF -- "$1" && return 0
    sleep 0.1
  done
  echo "draw-all: waited for \"$1\"; the screen shows:" >&2
  "${tmux[@]}" capture-pane -p -t drawn >&2
  exit 1
}

# press KEY ... : presses keys one after the other, apart by more than a bounce.
press() {
  for key in "$@"; do
    "${tmux[@]}" send-keys -t drawn "$key"
    sleep 0.4
  done
}

# lift TEXT: ENTER, and again where a set was told sooner than it can be lifted, until the page shows the text.
lift() {
  for _ in $(seq 60); do
    "${tmux[@]}" capture-pane -p -t drawn | grep -qF -- "$1" && return 0
    press Enter
  done
  see "$1"
}

# shot NAME: the screen as a picture.
shot() {
  [ "$wanted" = "  " ] || [[ $wanted == *" $1 "* ]] || return 0
  sleep 0.3
  {
    printf '<!doctype html><meta charset="utf-8"><body style="margin:0;background:#000">'
    printf '<pre style="margin:8px;font:16px/20px DejaVu Sans Mono,monospace;color:#ddd">'
    "${tmux[@]}" capture-pane -e -N -p -t drawn | sed 's/\(\x1b\[0[;0-9]*m\)\x1b\[39m\x1b\[49m/\1/g' | aha --no-header --black
    printf '</pre>'
  } >"$work/page.html"
  chromium --headless --no-sandbox --disable-gpu --hide-scrollbars --user-data-dir="$work/profile" \
    --window-size="$((columns * 10 + 16)),$((rows * 20 + 16))" --screenshot="$pictures/$1.png" "file://$work/page.html" \
    >"$work/browser.log" 2>&1 || { cat "$work/browser.log" >&2; exit 1; }
  echo "$1"
}

wednesday=2026-11-25T18:00

open 80x24 2026-11-24T12:00 --data "$work/new"
see "page 1 of 9"; shot set-up-welcome
press Enter; see "page 2 of 9"; shot set-up-name
press Enter Enter Enter; see "page 5 of 9"; shot set-up-plates
press Enter; see "page 6 of 9"; shot set-up-other-kit
press Enter Enter; see "page 8 of 9"; shot set-up-safety
press Enter; see "page 9 of 9"; shot set-up-done
press Enter; see "REST DAY"; shot rest-day
press 3; see "WEEK"; shot rest-day-week

open 80x24 $wednesday --demo
see "ENTER begin"; shot today
press PgUp; see "LOOK BACK"; press 1 2; see "reps x load"; press 1; see "load, kg"; shot look-back-lift
press / /; see "ENTER begin"
press "*"; see "less time"; shot more
press 1; see "minutes"; shot less-time
press / "*" 3; see "CALENDAR"; shot calendar
press / "*"; see "less time"; press 4; see "AWAY"; shot away
press / "*"; see "less time"; press 8; see "SETTINGS"; shot settings
press 6; see "accept"; shot settings-keys
press / / Enter; see "all of them"; shot checks
press +; see "warm-up 1"; shot ramp
lift " REST "; shot rest
press 0; see "HELD"; shot held
press 0 "*"; see "fault"; shot cue-card
press Enter /; see "MENU"; shot menu
press 1; see "TODAY'S PLAN"; shot todays-plan
press Enter / 2; see "OTHER EXERCISE"; shot other-exercise
press / / 5; see "CUT SHORT"; shot cut-short
press / / 6; see "BODY WEIGHT"; shot body-weight
press / / 8; see "LEAVE"; shot leave
press / / 9; see "THE KEYS"; shot help
press Enter "!"; see "STOP SIGNS"; shot stop-signs
press Enter / "*"; see "note on the last set"; shot menu-more
press 1; see "felt hard"; shot note
press / / "*" 3; see "LOOK BACK"; shot look-back
press Enter / "*" 4; see "LOOK AHEAD"; shot look-ahead
press Enter Enter; see " LIFT "; shot lift
press "*" 8 5; shot other-weight
press Enter; see "ENTER again"; shot doubt
press /

speed=20
open 80x24 $wednesday --demo
see "ENTER begin"; press Enter +; lift " REST "
see "GET READY"; shot get-ready
see " LIFT "; shot rest-over
press / 1; see "TODAY'S PLAN"; press 6; see "LIFT"; shot pair
lift "CHANGE OVER"; shot change-over
press / 1; see "TODAY'S PLAN"; press 3; press / 5 3; see "done, leave"; shot week
speed=1

open 80x24 $wednesday --demo
see "ENTER begin"; press "?"; see "THE KEYS"; shot help-outside
press Enter "*" 5; see "CHECK-IN"; shot check-in
press / "*" 6; see "weekly means"; shot body
press 3; see "read on"; shot body-facts
press Enter Enter "*" 7; see "KIT"; shot kit
press 2; see "How many pairs"; shot kit-plates
open 80x24 $wednesday --kiosk --demo
see "WHO TRAINS?"; shot picker
press / ; see "back"; shot picker-more
open 80x24 $wednesday --demo --with Bram
see "TWO ON ONE BAR"; press Enter; see "all of them"; press +; lift "warm-up 2"; shot shared-lift
lift " REST "; shot shared-rest

# A first Monday, cut short after a set; then Wednesday is a skills day.
speed=20
open 80x24 2026-11-23T18:00 --data "$work/skills"
see "page 1 of 9"; press Enter Enter Enter Enter Enter Enter Enter Enter Enter
see "ENTER begin"; press Enter; see "all of them"; press +; lift "working set 2"; press / 5 3; see "done, leave"; press Enter Enter
sleep 1
speed=1
open 80x24 $wednesday --data "$work/skills"
see "SKILLS DAY"; shot skills-today
press Enter; see "all of them"; press +; see "CHECKLIST"; shot checklist
press Enter; sleep 5.5; press Enter; see "READY"; shot hold-ready
press Enter; see "GET SET"; shot hold-get-set
see "down: write"; sleep 12; shot hold
press Enter; see " REST "; press / 1; see "TODAY'S PLAN"; shot skills-plan

open 50x15 $wednesday --demo
see "ENTER begin"; shot small-today
press Enter +; lift " REST "; shot small-rest
press Enter; see " LIFT "; shot small-lift
open 120x40 $wednesday --demo
see "ENTER begin"; press Enter +; lift " REST "; shot large-rest
press Enter; see " LIFT "; shot large-lift
open 50x15 $wednesday --demo --big
see "ENTER begin"; press Enter +; lift " REST "; shot big-rest
press Enter; see " LIFT "; shot big-lift
open 80x24 $wednesday --demo --look contrast
see "ENTER begin"; press Enter +; lift " REST "; press Enter; see " LIFT "; shot contrast-lift
open 80x24 $wednesday --demo --ascii
see "ENTER begin"; press Enter +; lift " REST "; shot ascii-rest
press Enter; see " LIFT "; shot ascii-lift
