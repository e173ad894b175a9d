"""
What the screen costs beside other programs; run by screen.sh, which builds and fills what it needs. It measures what the
standards of docs/screen.md say of keys (S5), sets on disk (S6), the start (S7), the clock (S8), a page that stands (S10) and
one that ticks (S11), memory (S12) and other window sizes (S17).
"""
import os
import re
import shutil
import signal
import statistics
import subprocess
import sys
import time

from terminal import Terminal, to_the_rest

rounds, work, minutes = int(sys.argv[1]), sys.argv[2], float(sys.argv[3])
rackside = work + "/rackside"
READY = b"stop signs"  # the last row of today's page
CLOCK = {"RACKSIDE_CLOCK": "2026-11-27T18:00"}  # a strength day, with the last set two days before
UP, DOWN = b"\x1b[A", b"\x1b[B"


def of(years):
    return [rackside, "--data", f"{work}/{years}"]


# All stand at once, a logbook is open once, and a session begun stays open.
for copy, source in {"0-jit": "0", "rest": "10", "hour": "10", "clock": "10"}.items():
    shutil.copytree(f"{work}/{source}", f"{work}/{copy}")

# What runs, what must stand on the screen, two keys that each change it, and variables.
programs = {
    "hello, .NET": ([work + "/hello-out/hello"], (), None, {}),
    "hello, Terminal.Gui": ([work + "/gui-out/gui"], (), (DOWN, UP), {}),
    "rackside, empty log": (of(0), (READY,), (b"-", b"+"), CLOCK),
    "rackside, a year": (of(1), (READY,), (b"-", b"+"), CLOCK),
    "rackside, ten years": (of(10), (READY,), (b"-", b"+"), CLOCK),
    "rackside, compiled at run time": ([work + "/jit/rackside", "--data", f"{work}/0-jit"], (READY,), None, CLOCK),
}
if shutil.which("htop"):
    programs["htop"] = (["htop"], (), (DOWN, UP), {})
if shutil.which("tig"):
    programs["tig"] = (["tig", "-C", work + "/repository"], (), (b"j", b"k"), {})


def started(name):
    command, words, _, variables = programs[name]
    return Terminal(command, work, **variables)


def shares(values, share):
    ordered = sorted(values)
    return ordered[min(len(ordered) - 1, int(len(ordered) * share))]


def told(values, form):
    if not values:
        return "-"
    return f"{form(statistics.median(values))} ({form(shares(values, 0.1))} to {form(shares(values, 0.9))})"


def ratio(values, base):
    return f"{statistics.median(values) / statistics.median(base):.2f}" if values and base else "-"


def measure_starts_and_keys():
    """Takes turns: in every round each program starts, answers 16 keys and leaves; the first round is left out."""
    found = {name: {"start": [], "key": []} for name in programs}
    for number in range(rounds + 1):
        for name, (_, words, keys, _) in programs.items():
            screen = started(name)
            start = screen.until(*words)
            if number > 0:
                found[name]["start"].append(start)
                screen.drain(0.8)
                if keys:
                    found[name]["key"] += [a for i in range(16) if (a := screen.answer(keys[i % 2])) is not None]
            screen.stop()
    return found


def measure_standing(found):
    """All at once for 30 seconds, so that whatever else the machine does is the same for all."""
    screens = {name: started(name) for name in programs if name != "hello, .NET"}
    for name, screen in screens.items():
        screen.until(*programs[name][1])
    settled = time.perf_counter() + 5
    while time.perf_counter() < settled:
        for screen in screens.values():
            screen.drain(0.02)
    busy, size, end = {name: s.busy() for name, s in screens.items()}, dict.fromkeys(screens, 0), time.perf_counter() + 30
    while time.perf_counter() < end:
        for name, screen in screens.items():
            size[name] += screen.drain(0.02)
    for name, screen in screens.items():
        found[name] |= {"cpu": (screen.busy() - busy[name]) / 30 * 100, "bytes": size[name] / 30, "memory": screen.memory()[0]}
        screen.stop()


def measure_rest():
    """Windows of other sizes over a page that stands, then a rest that ticks for 30 seconds."""
    screen = Terminal(of("rest"), work, **CLOCK)
    screen.until(READY)
    screen.drain(4)
    resized = [screen.resize(*window) for window in ((50, 15), (120, 40), (30, 8), (200, 60), (80, 24)) * 4]
    to_the_rest(screen)
    screen.drain(4)
    busy, size = screen.busy(), screen.drain(30)
    cpu = (screen.busy() - busy) / 30 * 100
    screen.stop()
    return cpu, size / 30, resized


def measure_hour():
    """An hour of session in a minute, ENTER every two minutes of it; how long each takes until the screen says written."""
    screen = Terminal(of("hour"), work, **CLOCK, RACKSIDE_SPEED="60")
    screen.until(READY)
    to_the_rest(screen)
    screen.drain(4)
    early, written = screen.memory()[0], []
    for _ in range(30):
        took = screen.answer(b"\r", b"written")
        written += [took] if took is not None else []
        screen.drain(1.8)
    screen.drain(4)
    late = screen.memory()[0]
    screen.stop()
    return early, late, written


class Cells:
    """The least of a terminal: where the cursor goes and what is printed there."""

    PARTS = re.compile(rb"\x1b\[(\d+);(\d+)H|\x1b\[[0-?]*[ -/]*[@-~]|\x1b\][^\x07\x1b]*(?:\x07|\x1b\\\\)|\x1b[@-_=>]|([ -~])")

    def __init__(self):
        self.row, self.column, self.at = 0, 0, {}

    def take(self, data):
        for part in self.PARTS.finditer(data):
            if part[1]:
                self.row, self.column = int(part[1]), int(part[2])
            elif part[3]:
                self.at[self.row, self.column] = part[3].decode()
                self.column += 1

    def line(self, row):
        return "".join(self.at.get((row, column), " ") for column in range(1, 31))


def measure_clock():
    """
    Milliseconds that the seconds of a rest come from where they belong, by the first of them: on a page of 30x8 the clock
    is text. Half way the program is stopped for five seconds, as by a suspend. Also the most that the clock moves at once.
    """
    screen, cells = Terminal(of("clock"), work, size=(30, 8), **CLOCK), Cells()
    screen.until(b"ENTER")
    to_the_rest(screen)
    for _ in range(max(0, round((minutes * 60 - 90) / 15))):
        screen.press(b"+")
        screen.drain(0.4)
    cells.take(screen.seen)
    seen, began, stopped = [], time.perf_counter(), False
    while time.perf_counter() < began + minutes * 60:
        if not stopped and time.perf_counter() > began + minutes * 30:
            screen.send(signal.SIGSTOP)
            time.sleep(5.5)
            screen.send(signal.SIGCONT)
            stopped = True
            seen.append(None)
        data = screen.read(0.5)
        if data is None:
            continue
        at = time.perf_counter()
        cells.take(data)
        clock = re.match(r"\s*(\d+):(\d\d)", cells.line(3))
        left = int(clock[1]) * 60 + int(clock[2]) if clock else None
        if left is not None and (not seen or seen[-1] is None or seen[-1][1] != left):
            seen.append((at, left))
    screen.stop()
    pauses = [i for i, s in enumerate(seen) if s is None]
    # The first second after the stop comes late, because the program slept; those after it must be right again.
    ticks = [s for i, s in enumerate(seen) if s is not None and i - 1 not in pauses][2:]
    errors = [abs((at + left) - (ticks[0][0] + ticks[0][1])) * 1000 for at, left in ticks]
    skips = max(a[1] - b[1] for a, b in zip(seen, seen[1:]) if a is not None and b is not None)
    return errors, skips, len(ticks)


def measure_commands():
    """Whole runs of commands on ten years, from their start to their end, and an empty run beside them."""
    commands = {"--version": ["--version"], "today": ["today"], "summary": ["summary"], "history squat": ["history", "squat"],
                "plates 142.5": ["plates", "142.5"], "forecast": ["forecast"], "export FILE": ["export", work + "/out.json"]}
    took = {name: [] for name in commands}
    for number in range(rounds + 1):
        for name, words in commands.items():
            began = time.perf_counter()
            done = subprocess.run([rackside, *words, *([] if name == "--version" else ["--data", f"{work}/10"])], capture_output=True, check=False,
                                  env={**os.environ, **CLOCK, "TZ": "UTC", "HOME": work})
            if done.returncode != 0:
                sys.exit(f"{name}: {done.stderr.decode()}")
            if number > 0:
                took[name].append((time.perf_counter() - began) * 1000)
            if os.path.exists(work + "/out.json"):
                os.remove(work + "/out.json")
    return took


load = f"load {os.getloadavg()[0]:.1f} at the begin"
found = measure_starts_and_keys()
measure_standing(found)
hello, gui = found["hello, .NET"], found["hello, Terminal.Gui"]
print(f"{rounds} rounds after one left out; median (tenth to ninth tenth); 80x24; {load}, {os.getloadavg()[0]:.1f} now\n")
print("| program | start ms | of hello, .NET | key to screen ms | of hello, Terminal.Gui | 99th | of the same | 30 s standing: CPU % | B/s | memory MB |")
print("|---|---|---|---|---|---|---|---|---|---|")
for name, took in found.items():
    key, late = took["key"], [shares(took["key"], 0.99)] if took["key"] else []
    print(f"| {name} | {told(took['start'], '{:.0f}'.format)} | {ratio(took['start'], hello['start'])} "
          f"| {told(key, '{:.1f}'.format)} | {ratio(key, gui['key'])} | {f'{late[0]:.1f}' if late else '-'} | {ratio(late, [shares(gui['key'], 0.99)])} "
          + (f"| {took['cpu']:.3f} | {took['bytes']:.0f} | {took['memory']:.0f} |" if "cpu" in took else "| - | - | - |"))
print(f"\nstart with ten years of that with an empty log: {ratio(found['rackside, ten years']['start'], found['rackside, empty log']['start'])}; "
      f"native file {os.path.getsize(rackside) / 1e6:.1f} MB")

cpu, size, resized = measure_rest()
print(f"\na rest that ticks, 30 s: {size:.0f} B a second, {cpu:.2f} % CPU; another window size, until the last byte: {told(resized, '{:.0f}'.format)} ms, longest {max(resized):.0f}")
early, late, written = measure_hour()
print(f"memory in the first rest {early:.0f} MB, after an hour of session {late:.0f} MB; key to \"written\": {told(written, '{:.1f}'.format)} ms of {len(written)}, longest {max(written):.1f}")
errors, skips, ticks = measure_clock()
print(f"clock over {minutes:g} min with a stop of 5.5 s: {ticks} seconds, {told(errors, '{:.0f}'.format)} ms off, the most {max(errors):.0f} ms; moved by at most {skips} at once")
print("\n| command on ten years | ms from start to end |\n|---|---|")
for name, took in measure_commands().items():
    print(f"| {name} | {told(took, '{:.0f}'.format)} |")
