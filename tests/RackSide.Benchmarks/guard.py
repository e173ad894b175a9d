"""
Whether the native program starts as quickly as it did, as a multiple of a .NET console program beside it: guard.py NATIVE HELLO.

The two take turns, the best of nine turns of each counts, and where the ratio is over the limit all is tried again, three
times in all: what else the machine does can only make a start slower, and seldom all nine of three tries.
"""
import sys
import tempfile

from terminal import Terminal

# Seen: 1.3 to 1.7, also with ten others at work beside it. A doubling is caught, noise is not.
LIMIT = 2.5


def best(native, hello, turns=9):
    """The quickest start of each, in milliseconds: until the first page stands, and until the first word."""
    took = {native: [], hello: []}
    for _ in range(turns):
        for program, words in ((native, (b"stop signs",)), (hello, ())):
            with tempfile.TemporaryDirectory() as home:
                screen = Terminal([program], home)
                took[program].append(screen.until(*words))
                screen.stop()
    return min(took[native]), min(took[hello])


for attempt in range(3):
    ours, theirs = best(sys.argv[1], sys.argv[2])
    print(f"native start {ours:.0f} ms, a .NET hello {theirs:.0f} ms: {ours / theirs:.2f} of it, at most {LIMIT}")
    if ours / theirs <= LIMIT:
        sys.exit(0)
sys.exit("the native program starts much slower than it did; tests/RackSide.Benchmarks/screen.sh tells more")
