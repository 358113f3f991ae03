"""The command under test, and what it says of itself: exports, readouts, starts, ranges."""

import json
import re
import subprocess


class Aloft:
    def __init__(self, binary):
        self.binary = binary

    def _run(self, *arguments):
        return subprocess.run(
            [self.binary, *arguments], capture_output=True, text=True, timeout=60, check=False
        )

    def _printed(self, *arguments):
        done = self._run(*arguments)
        assert done.returncode == 0, f"{arguments}: {done.stderr}"
        return done.stdout

    def start_names(self):
        return [line.split()[0] for line in self._printed("starts").splitlines()]

    def start(self, name):
        """A starting point as the saved form has it."""
        return json.loads(self._printed("starts", name))["scenario"]

    def fly(self, start, **settings):
        """Every readout of a starting point with some of its values changed."""
        return json.loads(self._printed("fly", start, *_flags(settings)))

    def export(self, start, **settings):
        """The exact body, joint motion, start and samples of that flight."""
        return json.loads(self._printed("export", start, *_flags(settings)))

    def turntable_export(self, programme, step, **settings):
        """The exact body, its joints over time and the run of a programme on a turntable."""
        flags = ["--export", "--step", str(step), *_flags(settings)]
        return json.loads(self._printed("turntable", str(programme), *flags))

    def _refusal(self, start, key, value):
        done = self._run("fly", start, "--set", f"{key}={value}")
        assert done.returncode == 2, f"{key}={value} was not refused"
        return done.stderr

    def keys(self, start):
        """Every key of a scenario. What can be set beside these, such as the hang time, sets one of them."""
        said = self._refusal(start, "nonsense", "1")
        keys = re.search(r"the keys are (.*)", said)[1].split(", ")
        return [key for key in keys if key in self.start(start)]

    def ranges(self, start):
        """Least and most of every number, as the command states them when it refuses one."""
        found = {}
        for key in self.keys(start):
            if not isinstance(self.start(start)[key], float):
                continue
            said = self._refusal(start, key, "1e99")
            low, high = re.search(r"it goes from (\S+) to (\S+)", said).groups()
            found[key] = (float(low), float(high))
        return found

    def words(self, start, key):
        """The values a key takes that is not a number, as the command states them."""
        said = self._refusal(start, key, "nonsense")
        return re.findall(r"`(\w+)`", said.split("it is one of", 1)[1])


def _flags(settings):
    return [part for key, value in settings.items() for part in ("--set", f"{key}={value}")]
