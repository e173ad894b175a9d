"""
Whether the program's first page stands as quickly as it did, native and as `dotnet run -c Release` starts it, as a multiple of
a .NET console program beside it: guard.py HELLO NATIVE BUILT.

They take turns, the best of nine turns of each counts, and where a ratio is over its limit all is tried again, three times
in all: what else the machine does can only make a start slower, and seldom all nine of three tries.
"""
import sys
import tempfile

from terminal import Terminal

hello, native, built = sys.argv[1:4]

# Seen: native 0.7 to 1.3; built 6.6 to 10, and 14 to 17 where the compiler that makes code ahead could not be fetched, which is no mistake.
LIMITS = {native: 2.5, built: 18}


def best(turns=9):
    """The quickest start of each, in milliseconds: until the first page stands, and until the first word."""
    took = {program: [] for program in (hello, *LIMITS)}
    for _ in range(turns):
        for program in took:
            with tempfile.TemporaryDirectory() as home:
                screen = Terminal([program], home)
                took[program].append(screen.until(*((b"stop signs",) if program in LIMITS else ())))
                screen.stop()
    return {program: min(times) for program, times in took.items()}


for attempt in range(3):
    took = best()
    ratios = {program: took[program] / took[hello] for program in LIMITS}
    for program, ratio in ratios.items():
        print(f"{program}: {took[program]:.0f} ms, a .NET hello {took[hello]:.0f} ms: {ratio:.2f} of it, at most {LIMITS[program]}")
    if all(ratio <= LIMITS[program] for program, ratio in ratios.items()):
        sys.exit(0)
sys.exit("the program starts much slower than it did; tests/RackSide.Benchmarks/screen.sh tells more")
