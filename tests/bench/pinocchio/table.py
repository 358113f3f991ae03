"""Writes the body and postures of an exported flight as a plain table, which both sides of the comparison read.

    aloft export START | python3 table.py > table.txt

    joint NAME PARENT x y z MOVES HINGE   joint in the parent's axes, m; PARENT is a line number, -1
                                          for the pelvis; whether the plan moves it; whether only about z
    part JOINT mass x y z a b c           kg, CM in the segment's axes (m), principal moments (kg m²)
    posture SET (w x y z a b c) * 15      rotations against the parents, rates in own axes (rad/s)

SET `plan` is the plan's own motion, evenly over closing and opening. In `all` every joint is turned
and turning, at random: made up, to count what a posture costs that leaves nothing out.
"""

import json
import sys
from pathlib import Path

import numpy as np

sys.path.append(str(Path(__file__).resolve().parents[2] / "outside"))

from motion import Motion, exponential

POSTURES = 64


def span(export, which):
    """Start of the first joint's motion and end of the last one's, at most touch-down, s."""
    ways = [segment[which] for segment in export["segments"]]
    end = max(way["start_s"] + way["time_s"] for way in ways)
    return min(way["start_s"] for way in ways), min(end, export["touchdown_s"])


def plan_postures(export):
    motion = Motion(export)
    for start, end in (span(export, "closing"), span(export, "opening")):
        for i in range(POSTURES // 2):
            yield motion.at(start + (i + 0.5) / (POSTURES // 2) * (end - start))


def random_postures(joints):
    drawn = np.random.default_rng(1)
    for _ in range(POSTURES):
        yield (
            exponential(drawn.uniform(-1.5, 1.5, (joints, 3))),
            drawn.uniform(-10.0, 10.0, (joints, 3)),
        )


def line(*values):
    print(*(repr(float(v)) if isinstance(v, float) else v for v in values))


def about_z(segment):
    ways = [segment["takeoff"][1:]] + [
        segment[which]["rotation_vector_rad"] for which in ("closing", "opening")
    ]
    return int(not np.any(np.array(ways)[:, :2]))


def moves(segment):
    return int(any(any(segment[which]["rotation_vector_rad"]) for which in ("closing", "opening")))


def main():
    export = json.load(sys.stdin)
    segments = export["segments"]
    index = {segment["name"]: i for i, segment in enumerate(segments)}
    for segment in segments:
        parent = index.get(segment["parent"], -1)
        line("joint", segment["name"], parent, *segment["joint_m"], moves(segment), about_z(segment))
    for part in export["parts"]:
        line("part", index[part["segment"]], part["mass_kg"], *part["cm_m"], *part["moments_kg_m2"])
    sets = {"plan": plan_postures(export), "all": random_postures(len(segments) - 1)}
    for name, postures in sets.items():
        for rotation, rate in postures:
            line("posture", name, *np.hstack([rotation, rate]).ravel().tolist())


if __name__ == "__main__":
    main()
