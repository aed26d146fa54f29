#!/usr/bin/python3
"""Reads DXF files with ezdxf, which knows nothing of this library, and compares them with what they must measure.

    /usr/bin/python3 tests/outside-readers/read_dxf.py FOLDER [--pictures FOLDER]
    /usr/bin/python3 tests/outside-readers/read_dxf.py FILE --audit

FOLDER is written by the tests (Pattern.Core.Tests/Output/DxfOutsideReaderTests.cs): outside-readers/dxf beside their assembly, such as
tests/Pattern.Core.Tests/bin/Debug/net10.0/outside-readers/dxf. It holds the files, pieces.csv and layers.csv. Needs Debian's python3-ezdxf;
pictures also need python3-matplotlib. Exit code 0: all files agree. 1: some do not, and each difference is printed.
"""
import argparse
import csv
import pathlib
import sys

import ezdxf
from ezdxf import bbox
from ezdxf.lldxf.encoding import decode_dxf_unicode

CLOSE_MM = 0.05
VERTEX_MM = 0.0011
MM_PER_UNIT = {"mm": 1.0, "in": 25.4}
INSUNITS = {"mm": 4, "in": 1}
MEASUREMENT = {"mm": 1, "in": 0}
UNITS_TEXT = {"mm": "UNITS: METRIC", "in": "UNITS: ENGLISH"}

faults = []
checks = 0


def check(is_right, what):
    global checks
    checks += 1
    if not is_right:
        faults.append(what)


def close(read, expected, what):
    check(abs(read - float(expected)) <= CLOSE_MM, f"{what}: {read:.4f} mm in the file, {float(expected):.4f} mm in the model")


def length(entity):
    if entity.dxftype() == "LINE":
        return entity.dxf.start.distance(entity.dxf.end)
    points = list(entity.points())
    if entity.is_closed:
        points.append(points[0])
    return sum(a.distance(b) for a, b in zip(points, points[1:]))


def on(layout, layer, *types):
    return [e for e in layout if e.dxf.layer == layer and (not types or e.dxftype() in types)]


def repairs(document):
    """All that the reader would change in a file, in its own words."""
    # On loading, ezdxf 0.18 gives each polyline a SEQEND of its own before it meets the one of the file, and of a polyline in a block leaves the first lying about
    # without an owner: of files that it wrote itself as well. Those are no part of the file, and go before the audit; whatever is left to repair is a fault of the file.
    kept = {id(e.seqend) for e in document.entitydb.values() if e.dxftype() == "POLYLINE"}
    strays = [e for e in document.entitydb.values() if e.dxftype() == "SEQEND" and id(e) not in kept and e.dxf.owner is None]
    in_blocks = sum(1 for block in document.blocks for e in block if e.dxftype() == "POLYLINE")
    for stray in strays:
        document.entitydb.delete_entity(stray)
    auditor = document.audit()
    found = [str(entry.message) for entry in auditor.errors + auditor.fixes]
    return found if len(strays) <= in_blocks else found + [f"{len(strays)} loose SEQEND for {in_blocks} polylines in blocks"]


def read(path, unit):
    document = ezdxf.readfile(path)
    found = repairs(document)
    check(not found, f"{path.name}, repaired: {found}")
    check(document.header["$INSUNITS"] == INSUNITS[unit], f"{path.name}: $INSUNITS is {document.header['$INSUNITS']}")
    check(document.header["$MEASUREMENT"] == MEASUREMENT[unit], f"{path.name}: $MEASUREMENT is {document.header['$MEASUREMENT']}")
    return document


def extents(document, path, tolerance):
    """The header must say what the file holds, or more; words do not count, as their width depends on the type."""
    parts = []
    for entity in document.modelspace():
        parts += entity.virtual_entities() if entity.dxftype() == "INSERT" else [entity]
    box = bbox.extents(part for part in parts if part.dxftype() != "TEXT")
    low, high = document.header["$EXTMIN"], document.header["$EXTMAX"]
    inside = low[0] - tolerance <= box.extmin.x and low[1] - tolerance <= box.extmin.y and high[0] + tolerance >= box.extmax.x and high[1] + tolerance >= box.extmax.y
    check(inside, f"{path.name}: {box} lies outside the extents {low} to {high}")


def compare_block(document, row, where):
    mm = MM_PER_UNIT[row["units"]]
    block = document.blocks.get(row["block"])
    check(block is not None, f"{where}: no such block")
    if block is None:
        return
    inserts = [e for e in document.modelspace().query("INSERT") if e.dxf.name == row["block"]]
    check(len(inserts) == 1, f"{where}: inserted {len(inserts)} times")
    boundary, sew = on(block, "1", "POLYLINE"), on(block, "14", "POLYLINE")
    check(len(boundary) == 1 and boundary[0].is_closed, f"{where}: {len(boundary)} boundaries")
    check(len(sew) == 1 and sew[0].is_closed, f"{where}: {len(sew)} sew lines")
    close(length(boundary[0]) * mm, row["cut_mm"], f"{where}, cut line")
    close(length(sew[0]) * mm, row["seam_mm"], f"{where}, seam line")
    points = list(boundary[0].points())
    for name, value in (("left_mm", min(p.x for p in points)), ("bottom_mm", min(p.y for p in points)),
                        ("right_mm", max(p.x for p in points)), ("top_mm", max(p.y for p in points))):
        close(value * mm, row[name], f"{where}, {name}")
    # Internal lines of these pieces are straight, so that all turn points belong to the two outlines.
    for layer, column in (("2", "turns"), ("4", "notches"), ("13", "drill_holes"), ("6", "mirror_lines"), ("8", "internal_lines")):
        check(len(on(block, layer)) == int(row[column]), f"{where}, layer {layer}: {len(on(block, layer))} instead of {row[column]}")
    check(len(on(block, "2")) + len(on(block, "3")) == len(points) + len(list(sew[0].points())), f"{where}: vertices without turn or curve point")
    check(len(on(block, "7", "LINE")) == 1, f"{where}: {len(on(block, '7'))} grainlines")
    for notch in on(block, "4", "POINT"):
        distance = min(segment_distance(notch.dxf.location, a, b) for a, b in zip(points, points[1:] + points[:1]))
        check(distance * mm <= CLOSE_MM, f"{where}: a notch lies {distance * mm:.4f} mm off the boundary")
        if notch.dxf.thickness:
            vertex = min((notch.dxf.location - p).magnitude for p in points)
            check(vertex * mm <= VERTEX_MM, f"{where}: a notch lies {vertex * mm:.4f} mm from the next vertex of the boundary")
    texts = [e.dxf.text for e in on(block, "15", "TEXT")]
    check(any(t.startswith("Piece Name: ") for t in texts) and any(t.startswith("Size: ") for t in texts), f"{where}: texts are {texts}")
    if row["block"] == "back_gr-er":
        words = [decode_dxf_unicode(t) for t in texts]
        check("Size: größer" in words and any(t.startswith("Annotation: for Zoë 李") for t in words), f"{where}: texts are {words}")


def segment_distance(p, a, b):
    ab = b - a
    size = ab.dot(ab)
    u = 0 if size == 0 else max(0, min(1, (p - a).dot(ab) / size))
    return (p - (a + ab * u)).magnitude


def compare_layer(document, row, where):
    mm = MM_PER_UNIT[row["units"]]
    check(row["layer"] in document.layers, f"{where}: no such layer")
    lines = on(document.modelspace(), row["layer"], "LINE", "POLYLINE")
    texts = on(document.modelspace(), row["layer"], "TEXT")
    check(len(lines) == int(row["lines"]), f"{where}: {len(lines)} lines instead of {row['lines']}")
    check(len(texts) == int(row["texts"]), f"{where}: {len(texts)} texts instead of {row['texts']}")
    close(sum(length(line) for line in lines) * mm, row["length_mm"], f"{where}, all lines")


def compare_audit(path):
    """A check that cannot fail is none: a line type that no table has, and an owner that is not there, have to be found."""
    document = ezdxf.readfile(path)
    document.modelspace().query("INSERT").first.dxf.linetype = "NOWHERE"
    check(len(repairs(document)) == 1, f"{path.name}: the audit finds no undefined line type")
    document = ezdxf.readfile(path)
    next(e for block in document.blocks for e in block if e.dxftype() == "POLYLINE").seqend.dxf.owner = "FFFFF"
    document.modelspace().query("TEXT").first.dxf.owner = "FFFFF"
    check(len(repairs(document)) >= 1, f"{path.name}: the audit finds no wrong owner")


def draw(document, path):
    import matplotlib
    matplotlib.use("Agg")
    from ezdxf.addons.drawing import matplotlib as drawing
    drawing.qsave(document.modelspace(), str(path), bg="#FFFFFF", fg="#000000", dpi=100)


def main():
    arguments = argparse.ArgumentParser(description="Compares DXF files with their figures.")
    arguments.add_argument("folder", type=pathlib.Path, help="what the tests wrote; with --audit, a DXF file")
    arguments.add_argument("--pictures", type=pathlib.Path)
    arguments.add_argument("--audit", action="store_true", help="looks for faults and repairs in one file, and compares no figures")
    asked = arguments.parse_args()
    if asked.audit:
        found = repairs(ezdxf.readfile(asked.folder))
        print(*found, sep="\n")
        return 1 if found else 0
    rows = {name: list(csv.DictReader((asked.folder / name).open(encoding="utf-8-sig"))) for name in ("pieces.csv", "layers.csv")}
    documents = {}
    for name, compare in (("pieces.csv", compare_block), ("layers.csv", compare_layer)):
        check(len(rows[name]) > 0, f"{name} is empty")
        for row in rows[name]:
            path = asked.folder / row["file"]
            if path.name not in documents:
                documents[path.name] = read(path, row["units"])
                extents(documents[path.name], path, CLOSE_MM / MM_PER_UNIT[row["units"]])
            compare(documents[path.name], row, f"{path.name}, {row.get('block') or row['layer']}")
    compare_audit(asked.folder / rows["pieces.csv"][0]["file"])
    for row in rows["pieces.csv"]:
        texts = [e.dxf.text for e in documents[row["file"]].modelspace().query("TEXT")]
        check(UNITS_TEXT[row["units"]] in texts, f"{row['file']}: texts are {texts}")
        own = [r["block"] for r in rows["pieces.csv"] if r["file"] == row["file"]]
        others = [b.name for b in documents[row["file"]].blocks if not b.name.startswith(("*", "_", "$")) and b.name not in own]
        check(not others, f"{row['file']}: blocks that nobody asked for: {others}")
    if asked.pictures:
        asked.pictures.mkdir(parents=True, exist_ok=True)
        for name, document in documents.items():
            draw(document, asked.pictures / (pathlib.Path(name).stem + ".png"))
    for fault in faults:
        print(fault)
    print(f"{len(documents)} files, {checks} comparisons, {len(faults)} differences")
    return 1 if faults or not documents else 0


if __name__ == "__main__":
    sys.exit(main())
