#!/usr/bin/env bash
# What the screen costs, through a pty, side by side with other programs in one run: start, key to screen, a page that stands,
# a clock that ticks and whether it is right, memory after an hour of session, whole runs of commands, and what an accepted set
# costs beside a bare fsync. Prints tables for docs/performance.md. About ten minutes.
# Usage: screen.sh [ROUNDS [RACKSIDE [MINUTES]]]
#   ROUNDS     rounds of starts and keys, 7 if not said
#   RACKSIDE   a published program; it is published here if not said
#   MINUTES    how long the clock is watched, 2 if not said; standard S8 speaks of 10
#
# Needs the .NET SDK, clang, zlib's headers and python3. htop and tig take part where they are installed. The programs
# take turns within each round, which spreads whatever else the machine does over all of them; so the ratios say more
# than the milliseconds. A throw-away home is used.
set -euo pipefail

rounds=${1:-7} minutes=${3:-2}
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

quietly() { "$@" >"$work/build.log" 2>&1 || { cat "$work/build.log" >&2; exit 1; }; }

echo "building ..." >&2
gui=$(sed -n 's/.*Include="Terminal.Gui" Version="\([^"]*\)".*/\1/p' "$root/src/Directory.Packages.props")
quietly dotnet new console --output "$work/hello" --name hello
echo 'System.Console.WriteLine("Hello there"); System.Console.ReadLine();' >"$work/hello/Program.cs"
quietly dotnet build "$work/hello" --configuration Release --output "$work/hello-out"
quietly dotnet new console --output "$work/gui" --name gui
quietly dotnet add "$work/gui" package Terminal.Gui --version "$gui"
cat >"$work/gui/Program.cs" <<'CS'
using System.Collections.ObjectModel;
using Terminal.Gui.App;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

using var app = Application.Create();
app.Init();
var list = new ListView { Width = Dim.Fill(), Height = Dim.Fill() };
list.SetSource(new ObservableCollection<string>(["Hello there", "one", "two"]));
list.SelectedItem = 0;
using var window = new Window { Title = "Hello" };
window.Add(list);
app.Run(window);
CS
quietly dotnet build "$work/gui" --configuration Release --output "$work/gui-out"
if [ $# -ge 2 ]; then
  cp "$2" "$work/rackside"
else
  quietly dotnet publish "$root/src/RackSide" --configuration Release --output "$work/publish"
  cp "$work/publish/rackside" "$work/rackside"
fi

quietly dotnet build "$root/src/RackSide" --configuration Release --output "$work/jit"
quietly dotnet build "$root/tests/RackSide.Benchmarks" --configuration Release
benchmarks=(dotnet run --no-build --configuration Release --project "$root/tests/RackSide.Benchmarks" --)

echo "filling logbooks ..." >&2
for years in 0 1 10; do
  quietly "${benchmarks[@]}" fill "$work/$years" "$years" 2026-11-26
done
git init --quiet "$work/repository"
git -C "$work/repository" -c user.name=nobody -c user.email=nobody@example.org commit --quiet --allow-empty --message "something to show"
git -C "$work/repository" -c user.name=nobody -c user.email=nobody@example.org commit --quiet --allow-empty --message "and more"

echo "measuring ..." >&2
PYTHONDONTWRITEBYTECODE=1 python3 "$root/tests/RackSide.Benchmarks/screen.py" "$rounds" "$work" "$minutes"
echo
"${benchmarks[@]}" accepted-set
