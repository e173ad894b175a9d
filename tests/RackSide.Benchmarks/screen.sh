#!/usr/bin/env bash
# What the screen costs, through a pty, side by side with other programs in one run: start, key to screen, a page that stands,
# a clock that ticks, memory after an hour of session. Prints a table for docs/performance.md.
# Usage: screen.sh [ROUNDS [RACKSIDE]]   (7 rounds by default; RACKSIDE is a published program, or it is published here)
#
# Needs the .NET SDK, clang, zlib's headers and python3. htop and tig take part where they are installed. The programs
# take turns within each round, which spreads whatever else the machine does over all of them; so the ratios say more
# than the milliseconds. A throw-away home is used.
set -euo pipefail

rounds=${1:-7}
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

python3 - "$rounds" "$work" "$root" <<'PYTHON'
import fcntl, os, pty, re, select, shutil, signal, statistics, struct, sys, termios, time

rounds, work, root = int(sys.argv[1]), sys.argv[2], sys.argv[3]
escapes = re.compile(rb"\x1b(?:\[[0-?]*[ -/]*[@-~]|\][^\x07\x1b]*(?:\x07|\x1b\\)|[@-_=>])")
words = re.compile(rb"[A-Za-z]{4,}")
tick = os.sysconf("SC_CLK_TCK")
variables = {"TERM": "xterm-256color", "LANG": "C.UTF-8", "HOME": work, "TZ": "UTC", "RACKSIDE_CLOCK": "2026-11-25T18:00",
             "XDG_DATA_HOME": work + "/data", "XDG_CONFIG_HOME": work + "/config", "XDG_STATE_HOME": work + "/state"}


class Screen:
    def __init__(self, command, extra=None):
        self.began = time.perf_counter()
        self.seen = b""
        self.child, self.terminal = pty.fork()
        if self.child == 0:
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
            os.chdir(root)
            os.execvpe(command[0], command, {**os.environ, **variables, **(extra or {})})

    def read(self, seconds):
        """Whatever comes within a time; None where nothing does."""
        if not select.select([self.terminal], [], [], max(0, seconds))[0]:
            return None
        try:
            data = os.read(self.terminal, 65536)
        except OSError:
            return None
        self.seen += data
        return data

    def until(self, found, limit=30):
        while time.perf_counter() - self.began < limit:
            if found(escapes.sub(b" ", self.seen)):
                return (time.perf_counter() - self.began) * 1000
            self.read(0.5)
        sys.exit(f"no answer within {limit} s; it wrote: {self.seen[-400:]!r}")

    def drain(self, seconds):
        """Bytes that come within a time."""
        end, size = time.perf_counter() + seconds, 0
        while time.perf_counter() < end:
            size += len(self.read(end - time.perf_counter()) or b"")
        return size

    def press(self, keys):
        os.write(self.terminal, keys)

    def answer(self, keys):
        """Milliseconds from a key to the first byte of its answer; None where none comes in a second."""
        self.drain(0.12)
        at = time.perf_counter()
        self.press(keys)
        return (time.perf_counter() - at) * 1000 if self.read(1) else None

    def busy(self):
        with open(f"/proc/{self.child}/stat") as stat:
            fields = stat.read().rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / tick

    def memory(self):
        with open(f"/proc/{self.child}/status") as status:
            return int(re.search(r"VmRSS:\s+(\d+)", status.read()).group(1)) / 1024

    def stop(self):
        for ask in (signal.SIGTERM, signal.SIGKILL):
            try:
                os.kill(self.child, ask)
            except ProcessLookupError:
                pass
            end = time.perf_counter() + 3
            while time.perf_counter() < end:
                if os.waitpid(self.child, os.WNOHANG)[0]:
                    os.close(self.terminal)
                    return
                self.read(0.02)


down, up = b"\x1b[B", b"\x1b[A"
programs = {"hello, .NET": ([work + "/hello-out/hello"], None),
            "hello, Terminal.Gui": ([work + "/gui-out/gui"], (down, up)),
            "rackside": ([work + "/rackside", "--demo"], (b"-", b"+"))}
if shutil.which("htop"):
    programs["htop"] = (["htop"], (down, up))
if shutil.which("tig"):
    programs["tig"] = (["tig"], (b"j", b"k"))


def whole(name, shown):
    return words.search(shown) and (name != "rackside" or b"begin" in shown)


def to_the_rest(screen):
    """Begins the session of the demo and warms up, a second ENTER for every set that was too quick, until it rests."""
    screen.press(b"\r")
    screen.drain(0.5)
    screen.press(b"+")
    for _ in range(40):
        screen.drain(0.5)
        if b"THEN" in escapes.sub(b"", screen.seen):
            return
        screen.press(b"\r")
    sys.exit("the rest was not reached")


found = {name: {what: [] for what in ("start", "key", "idle cpu", "idle bytes", "memory")} for name in programs}
for number in range(rounds + 1):
    for name, (command, keys) in programs.items():
        screen, took = Screen(command), found[name]
        start = screen.until(lambda shown: whole(name, shown))
        screen.drain(1.5)
        if number > 0:
            took["start"].append(start)
            took["memory"].append(screen.memory())
            if keys:
                took["key"] += [a for i in range(12) if (a := screen.answer(keys[i % 2])) is not None]
                screen.drain(3)
                busy, size = screen.busy(), screen.drain(5)
                took["idle cpu"].append((screen.busy() - busy) / 5 * 100)
                took["idle bytes"].append(size / 5)
        screen.stop()

ticks = {"cpu": [], "bytes": []}
for number in range(max(1, rounds // 2)):
    screen = Screen(*[programs["rackside"][0]])
    screen.until(lambda shown: whole("rackside", shown))
    to_the_rest(screen)
    screen.drain(2)
    busy, size = screen.busy(), screen.drain(20)
    ticks["cpu"].append((screen.busy() - busy) / 20 * 100)
    ticks["bytes"].append(size / 20)
    screen.stop()

# An hour of session in a minute: ENTER every two minutes of it.
screen = Screen(programs["rackside"][0], {"RACKSIDE_SPEED": "60"})
screen.until(lambda shown: whole("rackside", shown))
to_the_rest(screen)
early = screen.memory()
for _ in range(30):
    screen.press(b"\r")
    screen.drain(2)
late = screen.memory()
screen.stop()


def told(values, form):
    if not values:
        return "-"
    ordered = sorted(values)
    spread = f"{form(ordered[len(ordered) // 10])} to {form(ordered[-1 - len(ordered) // 10])}"
    return f"{form(statistics.median(values))} ({spread})"


base = found["hello, Terminal.Gui"]
print(f"{rounds} rounds, the first left out; median (tenth to ninth tenth); 80x24; load {os.getloadavg()[0]:.1f} at the end\n")
print("| program | start ms | ratio | key to screen ms | ratio | page that stands, CPU % | B/s | memory MB |")
print("|---|---|---|---|---|---|---|---|")
for name, took in found.items():
    ratio = lambda what: f"{statistics.median(took[what]) / statistics.median(base[what]):.2f}" if took[what] else "-"
    print(f"| {name} | {told(took['start'], '{:.0f}'.format)} | {ratio('start')} | {told(took['key'], '{:.1f}'.format)} | {ratio('key')} "
          f"| {told(took['idle cpu'], '{:.2f}'.format)} | {told(took['idle bytes'], '{:.0f}'.format)} | {told(took['memory'], '{:.0f}'.format)} |")
ordered = sorted(found["rackside"]["key"])
print(f"\nrackside: key to screen, 99th of a hundred {ordered[min(len(ordered) - 1, len(ordered) * 99 // 100)]:.1f} ms of {len(ordered)} keys; "
      f"rest ticking {told(ticks['bytes'], '{:.0f}'.format)} B a second at {told(ticks['cpu'], '{:.2f}'.format)} % CPU; "
      f"memory {early:.0f} MB in the first rest, {late:.0f} MB after an hour of session")
PYTHON
