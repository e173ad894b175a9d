#!/usr/bin/env bash
# How long until the first words stand on the screen, as a multiple of an empty .NET console program on the same machine.
# Usage: start-up.sh [rounds]      (15 by default; needs the .NET SDK, clang, zlib's headers and python3)
#
# Milliseconds say more about the machine than about the program, so only the ratios are worth keeping. The programs take
# turns within each round, which spreads whatever else the machine does over all of them. A throw-away home is used.
set -euo pipefail

rounds=${1:-15}
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

quietly() { "$@" >"$work/build.log" 2>&1 || { cat "$work/build.log" >&2; exit 1; }; }

echo "building (about a minute) ..." >&2
quietly dotnet new console --output "$work/hello" --name hello
quietly dotnet build "$work/hello" --configuration Release --output "$work/hello-jit"
quietly dotnet build "$root/src/RackSide" --configuration Release --output "$work/rackside-jit"
quietly dotnet publish "$root/src/RackSide" --configuration Release --output "$work/rackside-aot"

python3 - "$rounds" "$work" <<'PYTHON'
import fcntl, os, pty, re, select, signal, statistics, struct, sys, termios, time

rounds, work = int(sys.argv[1]), sys.argv[2]
programs = {
    "hello, JIT": work + "/hello-jit/hello",
    "rackside, native": work + "/rackside-aot/rackside",
    "rackside, JIT": work + "/rackside-jit/rackside",
}
escapes = re.compile(rb"\x1b(?:\[[0-?]*[ -/]*[@-~]|\][^\x07\x1b]*(?:\x07|\x1b\\)|[@-_=>])")
words = re.compile(rb"[A-Za-z]{4,}")


def first_words(path):
    """Milliseconds from the start of a program on an 80x24 terminal until it has written a word."""
    began = time.perf_counter()
    child, terminal = pty.fork()
    if child == 0:
        fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        os.chdir(work)
        os.execve(path, [path], {**os.environ, "TERM": "xterm-256color", "HOME": work,
                                 "XDG_DATA_HOME": work + "/data", "XDG_CONFIG_HOME": work + "/config",
                                 "XDG_STATE_HOME": work + "/state"})
    seen, took = b"", None
    while time.perf_counter() - began < 20:
        if not select.select([terminal], [], [], 0.5)[0]:
            continue
        try:
            seen += os.read(terminal, 65536)
        except OSError:
            break
        if words.search(escapes.sub(b" ", seen)):
            took = (time.perf_counter() - began) * 1000
            break
    stop(child, terminal)
    if took is None:
        sys.exit(f"{path} wrote no word within 20 s; it wrote: {seen[-400:]!r}")
    return took


def stop(child, terminal):
    """Asks the program to leave, and makes it where it does not within two seconds."""
    deadline = time.perf_counter() + 2
    for ask in (signal.SIGTERM, signal.SIGKILL):
        try:
            os.kill(child, ask)
        except ProcessLookupError:
            pass
        while time.perf_counter() < deadline or ask == signal.SIGKILL:
            if os.waitpid(child, os.WNOHANG)[0]:
                os.close(terminal)
                return
            if select.select([terminal], [], [], 0.02)[0]:
                try:
                    os.read(terminal, 65536)
                except OSError:
                    time.sleep(0.02)


times = {name: [] for name in programs}
for _ in range(rounds + 1):
    for name, path in programs.items():
        times[name].append(first_words(path))

base = statistics.median(times["hello, JIT"][1:])
print(f"{'program':<18}{'median':>9}{'best':>9}{'ratio':>8}   first words on the screen, {rounds} rounds, the first left out")
for name, took in times.items():
    median = statistics.median(took[1:])
    print(f"{name:<18}{median:>6.0f} ms{min(took[1:]):>6.0f} ms{median / base:>8.2f}")
PYTHON
