#!/usr/bin/env bash
# Draws what a terminal program shows, as a PNG picture (or, where the name ends in .txt, as plain text).
#
#   docs/draw-screens.sh COLUMNSxROWS PICTURE [KEY ...] -- COMMAND [ARGUMENT ...]
#   docs/draw-screens.sh 80x24 lift.png Enter Enter Enter -- ./publish/rackside --data demo/data
#
# The program runs in a tmux of its own. Keys are named as tmux names them (Enter, Escape, KP5, Up, 3, Wait). After the
# start and after each key the script waits until the screen has stood still, for ten seconds at most; the key "Wait"
# only does that, and a running clock never stands still. For PNG: apt-get install tmux aha chromium fonts-dejavu-core
set -euo pipefail

usage() { sed -n '2,9s/^# \{0,1\}//p' "$0" >&2; exit 64; }

[ $# -ge 4 ] || usage
size=$1 picture=$2
shift 2
[[ $size =~ ^[0-9]+x[0-9]+$ ]] || usage
columns=${size%x*} rows=${size#*x}
keys=()
while [ $# -gt 0 ] && [ "$1" != -- ]; do
  keys+=("$1")
  shift
done
[ $# -ge 2 ] || usage
shift

tools=(tmux)
[[ $picture == *.txt ]] || tools+=(aha chromium)
for tool in "${tools[@]}"; do
  command -v "$tool" >/dev/null || { echo "draw-screens: please install $tool first" >&2; exit 69; }
done

work=$(mktemp -d)
echo 'set -g status off' >"$work/tmux.conf"
screen=(tmux -S "$work/socket" -f "$work/tmux.conf")
trap '"${screen[@]}" kill-server 2>/dev/null || true; rm -rf "$work"' EXIT

settle() {
  local before="" now
  for _ in $(seq 40); do
    sleep 0.25
    now=$("${screen[@]}" capture-pane -e -p -t drawn)
    [ "$now" != "$before" ] || [ -z "${now//[[:space:]]/}" ] || return 0
    before=$now
  done
}

printf -v command '%q ' "$@"
"${screen[@]}" new-session -d -s drawn -x "$columns" -y "$rows" "$command; sleep 60"
settle
for key in "${keys[@]}"; do
  [ "$key" = Wait ] || "${screen[@]}" send-keys -t drawn "$key"
  settle
done

if [[ $picture == *.txt ]]; then
  "${screen[@]}" capture-pane -p -t drawn | sed 's/ *$//' >"$picture"
  exit 0
fi

# -N keeps blanks with a background at the end of a line; --black gives reversed text the colours of a dark terminal.
{
  printf '<!doctype html><meta charset="utf-8"><body style="margin:0;background:#000">'
  printf '<pre style="margin:8px;font:16px/20px DejaVu Sans Mono,monospace;color:#ddd">'
  "${screen[@]}" capture-pane -e -N -p -t drawn | sed 's/\(\x1b\[0[;0-9]*m\)\x1b\[39m\x1b\[49m/\1/g' | aha --no-header --black
  printf '</pre>'
} >"$work/page.html"
chromium --headless --no-sandbox --disable-gpu --hide-scrollbars --user-data-dir="$work/profile" \
  --window-size="$((columns * 10 + 16)),$((rows * 20 + 16))" --screenshot="$work/page.png" "file://$work/page.html" \
  >"$work/browser.log" 2>&1 || { cat "$work/browser.log" >&2; exit 1; }
mv "$work/page.png" "$picture"
