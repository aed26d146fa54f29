#!/usr/bin/python3
"""Reads pattern files with Python's own JSON reader and Debian's jsonschema, which know nothing of this library.

    /usr/bin/python3 tests/outside-readers/read_json.py FOLDER

FOLDER is written by the tests (Pattern.Core.Tests/Output/Json/JsonOutsideReaderTests.cs): outside-readers/json beside their assembly, such as
tests/Pattern.Core.Tests/bin/Debug/net10.0/outside-readers/json. It holds the files, pieces.csv, edges.csv, settings.csv and landmarks.csv. Each file must keep the schema
docs/pattern.schema.json; each file that is broken in one place must not; and the lines in a file, flattened here, must be as long as the model says.
Exit code 0: all files agree. 1: some do not, and each difference is printed.
"""
import argparse
import copy
import csv
import json
import math
import pathlib
import sys

import jsonschema

CLOSE_MM = 0.05
MOST_SHOWN = 20
CHORDS = 400
SCHEMA = pathlib.Path(__file__).resolve().parents[2] / "docs" / "pattern.schema.json"

# Where a null is as good as what stands there: the schema cannot know what belongs together.
NULLABLE = {"second", "name", "defined", "value", "easeSpan", "stitched", "tape", "fold", "label", "wearer", "size", "date", "foldLine", "edge", "number"}

faults = []
checks = 0


def check(is_right, what):
    global checks
    checks += 1
    if not is_right:
        faults.append(what)


def close(read, expected, what):
    check(abs(read - float(expected)) <= CLOSE_MM, f"{what}: {read:.4f} mm in the file, {float(expected):.4f} mm in the model")


def points(segment):
    """A segment as the corners of many chords."""
    if "line" in segment:
        x1, y1, x2, y2 = segment["line"]
        return [(x1, y1), (x2, y2)]
    if "arc" in segment:
        x, y, radius, start, sweep = segment["arc"]
        angles = [start + sweep * i / CHORDS for i in range(CHORDS + 1)]
        return [(x + radius * math.cos(a), y + radius * math.sin(a)) for a in angles]
    x0, y0, x1, y1, x2, y2, x3, y3 = segment["cubic"]
    corners = []
    for i in range(CHORDS + 1):
        t = i / CHORDS
        a, b, c, d = (1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3
        corners.append((a * x0 + b * x1 + c * x2 + d * x3, a * y0 + b * y1 + c * y2 + d * y3))
    return corners


def length(path, where, is_closed=False):
    total = 0.0
    before = None
    for segment in path:
        corners = points(segment)
        if before is not None:
            check(math.dist(before, corners[0]) <= 1e-5, f"{where}: a segment begins {math.dist(before, corners[0])} mm away from the one before")
        total += sum(math.dist(p, q) for p, q in zip(corners, corners[1:]))
        before = corners[-1]
    if is_closed:
        check(math.dist(before, points(path[0])[0]) <= 1e-5, f"{where}: not closed")
    return total


def strict(pairs):
    names = [name for name, _ in pairs]
    check(len(names) == len(set(names)), f"a name stands twice: {names}")
    return dict(pairs)


def refuse(constant):
    raise ValueError(f"{constant} is no JSON")


def read(path):
    data = path.read_bytes()
    check(not data.startswith(b"\xef\xbb\xbf") and b"\r" not in data and data.endswith(b"}\n"), f"{path.name}: byte order mark or line ends")
    return json.loads(data.decode("utf-8"), object_pairs_hook=strict, parse_constant=refuse)


def places(value, way=()):
    yield way, value
    if isinstance(value, dict):
        for name, part in value.items():
            yield from places(part, way + (name,))
    elif isinstance(value, list):
        for i, part in enumerate(value):
            yield from places(part, way + (i,))


def at(value, way):
    for step in way:
        value = value[step]
    return value


def broken(document):
    """The document with one thing wrong, again and again, and what it is."""
    for way, value in list(places(document)):
        if isinstance(value, dict):
            yield way, "an extra property", lambda part: part.update({"surplus": 1})
            for name in value:
                yield way + (name,), "left out", lambda part, name=name: part.pop(name)
        if not way:
            continue
        wrong = [True, -1e13] if isinstance(value, str) else ["text", True] if isinstance(value, (int, float)) and not isinstance(value, bool) else ["text", 7]
        if value is not None and way[-1] not in NULLABLE:
            wrong.append(None)
        for other in wrong:
            if value is None or (isinstance(value, bool) and isinstance(other, bool)):
                continue
            yield way, f"being {other!r}", other


def shortened(value):
    """The same with at most two of each kind of thing in a list: a schema looks at every one alike."""
    if isinstance(value, dict):
        return {name: shortened(part) for name, part in value.items()}
    if not isinstance(value, list) or not any(isinstance(part, (dict, list)) for part in value):
        return value
    kept = {}
    for part in value:
        alike = tuple(sorted(part)) + tuple(part.get(word) for word in ("kind", "role", "mark")) if isinstance(part, dict) else None
        kept.setdefault(alike, []).append(part)
    return [shortened(part) for parts in kept.values() for part in parts[:2]]


def check_schema(path, document, validator):
    errors = sorted(validator.iter_errors(document), key=lambda e: e.json_path)
    check(not errors, f"{path.name}: {[(e.json_path, e.message[:200]) for e in errors[:3]]}")


def check_broken(path, document, validator):
    count = 0
    for way, what, change in broken(document):
        if callable(change):
            holder = way[:-1] if what == "left out" else way
            part = at(document, holder)
            saved = dict(part)
            change(part)
            is_valid = validator.is_valid(document)
            part.clear()
            part.update(saved)
        else:
            part = at(document, way[:-1])
            saved = part[way[-1]]
            part[way[-1]] = change
            is_valid = validator.is_valid(document)
            part[way[-1]] = saved
        count += 1
        check(not is_valid, f"{path.name}: {'/'.join(map(str, way))} {what} keeps the schema")
    check(count > 1000, f"{path.name}: only {count} broken variants")


def main():
    arguments = argparse.ArgumentParser(description="Compares pattern files with their schema and their figures.")
    arguments.add_argument("folder", type=pathlib.Path)
    asked = arguments.parse_args()
    schema = json.loads(SCHEMA.read_text(encoding="utf-8"))
    jsonschema.Draft202012Validator.check_schema(schema)
    validator = jsonschema.Draft202012Validator(schema)
    documents = {path.name: read(path) for path in sorted(asked.folder.glob("*.json"))}
    for name, document in documents.items():
        check_schema(asked.folder / name, document, validator)
    small = "small.json"
    check(small in documents, f"{small} is missing")
    if small in documents:
        short = shortened(documents[small])
        check_schema(asked.folder / small, short, validator)
        before = copy.deepcopy(short)
        check_broken(asked.folder / small, short, validator)
        check(before == short, "the broken variants left traces")
    for row in csv.DictReader((asked.folder / "pieces.csv").open(encoding="utf-8-sig")):
        drawn = documents[row["file"]]["pieces"][int(row["piece"])]["drawn"]
        where = f"{row['file']}, piece {row['piece']}"
        close(length(drawn["cutLine"], where + ", cut line", True), row["cut_mm"], where + ", cut line")
        close(length(drawn["seamLine"], where + ", seam line", True), row["seam_mm"], where + ", seam line")
        check(sum(len(n["cuts"]) for n in drawn["notches"]) == int(row["notches"]), f"{where}: notches")
        check(sum(len(d["drillHoles"]) for d in drawn["darts"]) == int(row["drill_holes"]), f"{where}: drill holes")
    for row in csv.DictReader((asked.folder / "edges.csv").open(encoding="utf-8-sig")):
        panel = documents[row["file"]]["panels"][int(row["panel"])]
        edge = next(e for e in panel["edges"] if e["name"] == row["edge"])
        where = f"{row['file']}, panel {panel['name']}, edge {edge['name']}"
        close(sum(length(stretch, where) for stretch in edge["stretches"]), row["sewn_mm"], where)
        check(len(edge["darts"]) == int(row["darts"]) == len(edge["stretches"]) - 1, f"{where}: darts and stretches")
    for row in csv.DictReader((asked.folder / "settings.csv").open(encoding="utf-8-sig")):
        setting = next(s for s in documents[row["file"]]["method"]["settings"] if s["name"] == row["name"])
        check(setting["value"] == float(row["value"]), f"{row['file']}, setting {row['name']}: {setting['value']} in the file, {row['value']} in the model")
    for row in csv.DictReader((asked.folder / "landmarks.csv").open(encoding="utf-8-sig")):
        trued = next(m for m in documents[row["file"]]["landmarks"] if m["name"] == row["name"])["trued"]
        check(trued == [float(row["x"]), float(row["y"])], f"{row['file']}, landmark {row['name']}: {trued} in the file, {row['x']}, {row['y']} in the model")
    for fault in faults[:MOST_SHOWN]:
        print(fault)
    print(f"{len(documents)} files, {checks} comparisons, {len(faults)} differences")
    return 1 if faults or not documents else 0


if __name__ == "__main__":
    sys.exit(main())
