"""Merges the tables of many classes with merge.sql.

    python run.py PATTERN FOLDER [RULES]

writes every output of merge.sql but results and older, which class_table holds, as a table with
commas into FOLDER. It prints how long that took, and the most memory it held.
"""

import pathlib
import sys
import tempfile
import time

import duckdb

# What a small laptop has to spare; the rest waits on its disk.
MEMORY = "1GB"
OUTPUTS = ["counts", "points", "odd", "refused", "class_table"]


def main(files, folder, rules=None):
    here = pathlib.Path(__file__).parent
    folder = pathlib.Path(folder)
    folder.mkdir(parents=True, exist_ok=True)
    began = time.monotonic()
    with tempfile.TemporaryDirectory() as waiting:
        limits = {"memory_limit": MEMORY, "temp_directory": waiting}
        with duckdb.connect(config=limits) as base:
            base.execute("SET VARIABLE files = $1", [files])
            base.execute("SET VARIABLE rules = $1", [rules])
            base.execute((here / "merge.sql").read_text(encoding="utf-8"))
            print(f"merged: {time.monotonic() - began:.1f} s")
            for name in OUTPUTS:
                base.table(name).write_csv(str(folder / f"{name}.csv"))
    print(f"written: {time.monotonic() - began:.1f} s{memory()}")


def memory():
    """The most memory that this program held, where the system tells."""
    try:
        import resource
    except ImportError:
        return ""
    most = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    kilobytes = most / 1024 if sys.platform == "darwin" else most
    return f", {kilobytes / 1024:.0f} MB"


main(*sys.argv[1:])
