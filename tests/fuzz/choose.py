"""Chooses, from the folders of a long run, the inputs that go into the corpora.

    python3 tests/fuzz/choose.py PROGRAMS RUN

PROGRAMS is the folder of the fuzz programs, RUN holds a folder for each target. Of each,
at most 75 inputs of at most 3,000 bytes are taken, one after the other the one that adds
most features (as libFuzzer counts them) for its size.
"""

import hashlib
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

MOST_FILES = 75
MOST_BYTES = 3000


def features(program, corpus, run):
    """Each input of both folders with the features it reaches."""
    with tempfile.TemporaryDirectory() as folder:
        control = Path(folder, "control")
        merged = Path(folder, "merged")
        merged.mkdir()
        subprocess.run(
            [program, "-merge=1", f"-merge_control_file={control}", merged, corpus, run],
            stderr=subprocess.DEVNULL,
            check=True,
        )
        lines = control.read_text().splitlines()
    count = int(lines[0])
    files = [Path(line) for line in lines[2 : 2 + count]]
    words = [line.split() for line in lines[2 + count :]]
    return {files[int(w[1])]: {int(n) for n in w[2:]} for w in words if w[0] == "FT"}


def choose(program, corpus, run):
    reached = features(program, corpus, run)
    size = {file: file.stat().st_size for file in reached}
    old = {file for file in reached if file.parent == corpus}
    have = set().union(*(reached[file] for file in old))
    new = [file for file in reached if file not in old and size[file] <= MOST_BYTES]
    for _ in range(MOST_FILES):
        gain = {file: len(reached[file] - have) for file in new}
        best = max(new, key=lambda file: gain[file] / (30 + size[file]) ** 0.5, default=None)
        if best is None or gain[best] == 0:
            return
        have |= reached[best]
        name = hashlib.sha1(best.read_bytes()).hexdigest()[:12]
        shutil.copy(best, corpus / f"found-{name}")


def main():
    programs, run = map(Path, sys.argv[1:])
    corpora = Path(__file__).resolve().parent / "corpus"
    for corpus in sorted(corpora.iterdir()):
        choose(programs / corpus.name, corpus, run / corpus.name)


main()
