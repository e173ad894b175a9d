"""A program on a pseudo-terminal, and what it costs there: used by screen.py and guard.py."""
import fcntl
import os
import pty
import re
import select
import signal
import struct
import sys
import termios
import time

ESCAPES = re.compile(rb"\x1b(?:\[[0-?]*[ -/]*[@-~]|\][^\x07\x1b]*(?:\x07|\x1b\\)|[@-_=>])")
WORDS = re.compile(rb"[A-Za-z]{4,}")


class Terminal:
    """A program that runs on a terminal of its own, with a home of its own."""

    def __init__(self, command, home, size=(80, 24), **variables):
        self.command, self.seen = command, b""
        self.began = time.perf_counter()
        self.child, self.side = pty.fork()
        if self.child == 0:
            fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", size[1], size[0], 0, 0))
            os.chdir(home)
            own = {"TERM": "xterm-256color", "LANG": "C.UTF-8", "HOME": home, "TZ": "UTC", "XDG_DATA_HOME": home + "/data",
                   "XDG_CONFIG_HOME": home + "/config", "XDG_STATE_HOME": home + "/state"}
            os.execvpe(command[0], command, {**os.environ, **own, **variables})

    @property
    def text(self):
        """All that was written so far, without escape sequences."""
        return ESCAPES.sub(b" ", self.seen)

    def read(self, seconds):
        """Whatever comes within a time; None where nothing does."""
        if not select.select([self.side], [], [], max(0, seconds))[0]:
            return None
        try:
            data = os.read(self.side, 65536)
        except OSError:
            return None
        self.seen += data
        return data

    def until(self, *words, limit=30):
        """Milliseconds from the start until all these words, or any word at all, have been written."""
        while time.perf_counter() - self.began < limit:
            shown = self.text
            if all(word in shown for word in words) if words else WORDS.search(shown):
                return (time.perf_counter() - self.began) * 1000
            self.read(0.5)
        sys.exit(f"{' '.join(self.command)}: no answer within {limit} s; it wrote {self.text[-400:]!r}")

    def drain(self, seconds):
        """Bytes that come within a time."""
        end, size = time.perf_counter() + seconds, 0
        while time.perf_counter() < end:
            size += len(self.read(end - time.perf_counter()) or b"")
        return size

    def press(self, keys):
        os.write(self.side, keys)

    def answer(self, keys, word=None, limit=1.0):
        """Milliseconds from a key to the first byte of its answer, or to a word in it; None where none comes in time."""
        self.drain(0.12)
        self.seen, at = b"", time.perf_counter()
        self.press(keys)
        while (gone := time.perf_counter() - at) < limit:
            if self.read(limit - gone) is not None and (word is None or word in self.text):
                return (time.perf_counter() - at) * 1000
        return None

    def resize(self, columns, rows):
        """Milliseconds from another size to the last byte of the page in it."""
        self.drain(0.3)
        at = last = time.perf_counter()
        fcntl.ioctl(self.side, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
        while time.perf_counter() - last < 0.7:
            if self.read(0.1) is not None:
                last = time.perf_counter()
        return (last - at) * 1000

    def busy(self):
        """Seconds of processor time of all its threads, those that ended too; counted in hundredths."""
        with open(f"/proc/{self.child}/stat", encoding="ascii") as stat:
            fields = stat.read().rsplit(")", 1)[1].split()
        return (int(fields[11]) + int(fields[12])) / os.sysconf("SC_CLK_TCK")

    def memory(self):
        """Megabytes in memory, and those of them that nobody else could share."""
        with open(f"/proc/{self.child}/smaps_rollup", encoding="ascii") as rollup:
            found = dict(re.findall(r"(\w+):\s+(\d+) kB", rollup.read()))
        return int(found["Rss"]) / 1024, (int(found["Private_Dirty"]) + int(found["Private_Clean"])) / 1024

    def send(self, what):
        os.kill(self.child, what)

    def stop(self):
        """Asks the program to leave, and makes it where it does not within three seconds."""
        for ask in (signal.SIGTERM, signal.SIGKILL):
            try:
                self.send(ask)
            except ProcessLookupError:
                pass
            end = time.perf_counter() + 3
            while time.perf_counter() < end:
                if os.waitpid(self.child, os.WNOHANG)[0]:
                    os.close(self.side)
                    return
                self.read(0.02)


def to_the_rest(screen, limit=90):
    """Begins the session of the day, ticks the checks, and warms up, ENTER again where a set was too quick, until it rests."""
    screen.press(b"\r")
    screen.drain(0.6)
    screen.press(b"+")
    end = time.perf_counter() + limit
    while time.perf_counter() < end:
        screen.drain(0.6)
        if b"THEN" in screen.text:
            return
        screen.press(b"\r")
    sys.exit(f"the rest was not reached; it wrote {screen.text[-400:]!r}")
