#!/usr/bin/env bash
# What ten years of log cost at the start: the native program's commands, from their start to their end, on logbooks of 0, 1
# and 10 years, as ratios to the empty one; by the clock, and in processor time, which the load of other work hardly touches.
# Usage: opening.sh PROGRAM [rounds]     (a published rackside; 21 rounds by default; needs the .NET SDK and python3)
set -euo pipefail

program=$(realpath "$1")
rounds=${2:-21}
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

for years in 0 1 10; do
  dotnet run -c Release --no-build --project "$here" -- fill "$work/$years" "$years" "$(date -u +%F)"
done

python3 - "$program" "$rounds" "$work" <<'PYTHON'
import os, resource, statistics, subprocess, sys, time

program, rounds, work = sys.argv[1], int(sys.argv[2]), sys.argv[3]
years = ["0", "1", "10"]
commands = {"today": ["today"], "summary": ["summary"], "history": ["history", "squat"]}
environment = {**os.environ, "HOME": work, "XDG_CONFIG_HOME": work + "/config", "XDG_STATE_HOME": work + "/state", "TERM": "dumb"}
took = {(c, y): [] for c in commands for y in years}
worked = {(c, y): [] for c in commands for y in years}


def processor():
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return (used.ru_utime + used.ru_stime) * 1000


for _ in range(rounds + 1):
    for command, words in commands.items():
        for y in years:
            began, before = time.perf_counter(), processor()
            done = subprocess.run([program, *words, "--data", f"{work}/{y}"], env=environment, capture_output=True)
            took[command, y].append((time.perf_counter() - began) * 1000)
            worked[command, y].append(processor() - before)
            if done.returncode != 0 and y != "0":
                sys.exit(f"{command} on {y} years: {done.stderr.decode()}")

print(f"{'':<10}{'years':>6}{'median':>11}{'best':>11}{'ratio':>8}{'of best':>9}{'processor':>13}{'ratio':>8}   {rounds} rounds, the first left out")
for command in commands:
    base, best = statistics.median(took[command, "0"][1:]), min(took[command, "0"][1:])
    least = min(worked[command, "0"][1:])
    for y in years:
        all = took[command, y][1:]
        print(f"{command:<10}{y:>6}{statistics.median(all):>8.1f} ms{min(all):>8.1f} ms{statistics.median(all) / base:>8.2f}{min(all) / best:>9.2f}{min(worked[command, y][1:]):>10.1f} ms{min(worked[command, y][1:]) / least:>8.2f}")
PYTHON
