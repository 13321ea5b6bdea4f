"""Puts every file of packets before readers that are not ours and says what they say.

    python3 check-packets.py FOLDER [PLAN ...]

Makes the packet of every sample plan (or of the plans given) in FOLDER with target/longpoint.jar,
reads each file with independent readers, reads the geometry of the DXF and SVG files back and
compares it with the figures, and prints a table. Ends with 1 if a reader refuses anything. What is
needed stands in README.md; a reader that is not installed is named and counts as a failure.
"""
import csv
import email
import email.policy
import json
import os
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
import zipfile
from pathlib import Path

HERE = Path(__file__).resolve().parent
TOP = HERE.parents[2]
MOST = 1e-6
results = []


def check(sample, reader, files, job):
    """Runs a check over files; it gives back words for the table and raises when refused."""
    try:
        if not files:
            raise FileNotFoundError("no such file in the packet")
        words = job(files)
        results.append((sample, reader, len(files), "ok", words or ""))
    except Exception as wrong:  # whatever a reader throws is its refusal
        results.append((sample, reader, len(files), "REFUSED", str(wrong)[:300]))


def run(*command):
    if shutil.which(command[0]) is None:
        raise FileNotFoundError(command[0] + " is not installed")
    done = subprocess.run(
        [str(c) for c in command], capture_output=True, text=True, errors="replace")
    if done.returncode != 0:
        raise RuntimeError(f"{command[0]}: {(done.stderr or done.stdout).strip()[-300:]}")
    return done.stdout + done.stderr


def packet(plan, folder):
    folder.mkdir(parents=True, exist_ok=True)
    command = ["java", "-jar", TOP / "target/longpoint.jar", "packet", plan, "--to", folder]
    done = subprocess.run(
        [str(c) for c in command + ["--zip", "--mail"]], capture_output=True, text=True)
    if done.returncode == 2:
        raise SystemExit(done.stderr)
    return json.loads(next(folder.glob("*-figures.json")).read_text())


# --- pictures ---------------------------------------------------------------------------------


def well_formed(files):
    run("xmllint", "--noout", "--nonet", *files)


def inked(png):
    """Share of a grey picture's points that are not paper."""
    grey = subprocess.run(
        ["pngtopnm", png], capture_output=True, check=True).stdout if shutil.which("pngtopnm") else None
    if grey is None:
        out = subprocess.run(
            ["convert", png, "-colorspace", "gray", "-format", "%[fx:mean]", "info:"],
            capture_output=True, text=True, check=True)
        return 1 - float(out.stdout)
    return 1 - sum(grey[-10000:]) / 2550000


def raster(files):
    least = 1
    for file in files:
        png = file.with_suffix(".png")
        run("rsvg-convert", "-w", "700", "-b", "white", file, "-o", png)
        least = min(least, inked(png))
        png.unlink()
    if least < 0.0005:
        raise ValueError("a blank sheet")
    return f"least ink {least:.2%}"


def svg_geometry(figures, folder):
    """Every roof line on the plan sheet: same scale, same bearing, y flipped once."""

    def job(files):
        mm = {"in": 25.4, "mm": 1.0}[figures["unit"]]
        ids = {}
        for file in files:
            for group in ElementTree.parse(file).iter("{http://www.w3.org/2000/svg}g"):
                if group.get("id") == "roof-plan":
                    ids = {e.get("id"): e.get("d") for e in group.iter() if e.get("d") and e.get("id")}
        ratio, worst, count, origin = None, 0.0, 0, None
        for line in figures["surface"]["lines"]:
            name = "".join(
                c if c.isascii() and (c.isalnum() or c == "-") else
                "." if c == "/" else f"_{ord(c):x}_" for c in line["id"])
            path = next((d for i, d in ids.items() if i.startswith("A-ROOF-") and i[12:] == name), None)
            if path is None:
                continue
            ends = [tuple(map(float, p)) for p in re.findall(r"[ML](\S+) ([^MLZ\s]+)", path)]
            if len(line["seen"]) != 1:
                continue
            (x1, y1), (x2, y2) = line["seen"][0]
            length = ((x2 - x1) ** 2 + (y2 - y1) ** 2) ** 0.5 * mm
            if length < 1e-9:
                continue
            if ratio is None:
                drawn = ((ends[1][0] - ends[0][0]) ** 2 + (ends[1][1] - ends[0][1]) ** 2) ** 0.5
                ratio = round(length / drawn, 3)
            shift = (ends[0][0] - x1 * mm / ratio, ends[0][1] + y1 * mm / ratio)
            origin = origin or shift
            for (x, y), (px, py) in zip(ends, ((x1, y1), (x2, y2))):
                worst = max(
                    worst,
                    abs(x - origin[0] - px * mm / ratio),
                    abs(y - origin[1] + py * mm / ratio))
            count += 1
        # Ends are written to a millionth of a millimetre of paper, the origin is taken from one.
        if count == 0 or worst > 2 * MOST:
            raise ValueError(f"{count} lines, {worst:.2e} mm off on paper")
        return f"{count} roof lines at 1:{ratio:g}, worst {worst:.1e} mm of paper"

    return job


# --- CAD --------------------------------------------------------------------------------------


def dxf_audit(files):
    run("/usr/bin/python3", HERE / "dxf-audit.py", *files)


def dxf_geometry(figures):
    import ezdxf

    def job(files):
        lines = {line["id"]: line for line in figures["surface"]["lines"]}
        worst, count, dimensions, closed = 0.0, 0, 0, 0
        for file in files:
            space = ezdxf.readfile(file).modelspace()
            dimensions += len(space.query("DIMENSION"))
            closed += sum(1 for p in space.query("LWPOLYLINE") if p.closed)
            for entity in space.query("LINE"):
                if not entity.has_xdata("LONGPOINT") or not entity.dxf.layer.startswith("A-ROOF"):
                    continue
                line = lines.get(next(t.value for t in entity.get_xdata("LONGPOINT") if t.code == 1000))
                if line is None or "-plan" not in file.name:
                    continue
                count += 1
                drawn = entity.dxf.start, entity.dxf.end
                worst = max(worst, min(
                    max(max(abs(at.x - x), abs(at.y - y)) for at, (x, y) in zip(drawn, stretch))
                    for stretch in line["seen"]))
        if count == 0 or worst > MOST:
            raise ValueError(f"{count} roof lines, {worst:.2e} off")
        return f"{count} roof lines, worst {worst:.1e}; {dimensions} dimensions, {closed} closed"

    return job


def ogr(files):
    count = 0
    for file in files:
        out = run("ogrinfo", "-al", "-so", file)
        count += int(re.search(r"Feature Count: (\d+)", out).group(1))
    return f"{count} features"


def node(script):
    return lambda files: run("node", HERE / script, *files).strip().splitlines()[-1][:120]


def office(kind):
    def job(files):
        out = files[0].parent / "office"
        run("soffice", "--headless", "--convert-to", kind, "--outdir", out, *files)
        made = list(out.glob("*." + kind.split(":")[0]))
        if len(made) < len(files) or any(m.stat().st_size == 0 for m in made):
            raise ValueError(f"{len(made)} of {len(files)} came out")
        return "converted to " + kind

    return job


# --- PDF --------------------------------------------------------------------------------------


def qpdf(files):
    for file in files:
        run("qpdf", "--check", file)


def fonts(files):
    rows = run("pdffonts", files[0]).splitlines()[2:]
    if not rows or any(row.split()[-5:-2] != ["yes", "yes", "yes"] for row in rows):
        raise ValueError("\n".join(rows))
    return f"{len(rows)} fonts embedded, subset, with Unicode"


def words(title):
    def job(files):
        text = run("pdftotext", "-layout", files[0], "-")
        for wanted in (title, "1:"):
            if wanted not in text:
                raise ValueError(wanted + " is not found")
        return f"{len(text.split())} words"

    return job


def pages(files):
    out = files[0].parent / "pages"
    out.mkdir(exist_ok=True)
    run("pdftoppm", "-r", "40", "-gray", "-png", files[0], out / "p")
    made = sorted(out.glob("*.png"))
    least = min(inked(png) for png in made)
    if least < 0.0005:
        raise ValueError("a blank page")
    about = run("pdfinfo", files[0])
    return f"{len(made)} pages, least ink {least:.2%}, {re.search('Title: *(.*)', about).group(1)}"


# --- lists and letters ------------------------------------------------------------------------


def workbook(files):
    import openpyxl

    book = openpyxl.load_workbook(files[0])
    numbers = 0
    for sheet in book.worksheets:
        for row in sheet.iter_rows():
            for cell in row:
                if cell.data_type == "f":
                    raise ValueError(f"a formula in {sheet.title}!{cell.coordinate}")
                numbers += cell.data_type == "n" and cell.value is not None
    if any(sheet.freeze_panes != "A2" for sheet in book.worksheets[1:]):
        raise ValueError("a head that does not stay")
    return f"{len(book.worksheets)} sheets, {numbers} numbers"


def comma_separated(files):
    with open(files[0], newline="", encoding="utf-8-sig") as text:
        rows = list(csv.reader(text))
    if len({len(row) for row in rows}) != 1:
        raise ValueError("rows of different length")
    bad = [c for row in rows for c in row if re.match(r"\s*[=@]|\s*[+-](?![\d.])", c)]
    if bad:
        raise ValueError("a formula: " + bad[0])
    return f"{len(rows)} rows"


def mail(files):
    message = email.message_from_bytes(files[0].read_bytes(), policy=email.policy.default)
    parts = list(message.walk())
    defects = [d for part in parts for d in part.defects]
    if defects or message["X-Unsent"] != "1" or "height" not in message.get_body().get_content():
        raise ValueError(str(defects))
    for part in message.iter_attachments():
        beside = files[0].parent / part.get_filename()
        if part.get_payload(decode=True) != beside.read_bytes():
            raise ValueError(part.get_filename() + " differs")
    return f"{len(list(message.iter_attachments()))} attachments, {message['Subject']}"


def archive(files):
    with zipfile.ZipFile(files[0]) as packed:
        if packed.testzip():
            raise ValueError(packed.testzip())
        for name in packed.namelist():
            if packed.read(name) != (files[0].parent / name).read_bytes():
                raise ValueError(name + " differs")
        return f"{len(packed.namelist())} files"


def everything(plan, folder):
    sample = plan.stem
    figures = packet(plan, folder)

    def of(pattern):
        return sorted(f for f in folder.glob(pattern) if f.is_file())

    sheets = of("*.svg")
    check(sample, "xmllint", sheets + of("*.html"), well_formed)
    check(sample, "rsvg-convert", sheets, raster)
    check(sample, "SVG geometry", sheets, svg_geometry(figures, folder))
    check(sample, "ezdxf audit", of("*.dxf"), dxf_audit)
    check(sample, "DXF geometry", of("*.dxf"), dxf_geometry(figures))
    check(sample, "ogrinfo", of("*.dxf"), ogr)
    check(sample, "npm dxf-parser, dxf", of("*.dxf"), node("dxf-parsers.js"))
    check(sample, "LibreOffice Draw", of("*.dxf"), office("pdf"))
    check(sample, "LibreOffice Calc", of("*.xlsx"), office("csv"))
    check(sample, "qpdf", of("*.pdf"), qpdf)
    check(sample, "pdffonts", of("*.pdf"), fonts)
    check(sample, "pdftotext", of("*.pdf"), words(figures["title"]))
    check(sample, "pdftoppm", of("*.pdf"), pages)
    check(sample, "Chromium, 360 px", of("*.html"), node("phone-page.js"))
    check(sample, "glTF validator", of("*.glb"), node("gltf-validate.js"))
    check(sample, "three.js", of("*.glb") + of("*.obj"), node("models.mjs"))
    check(sample, "openpyxl", of("*.xlsx"), workbook)
    check(sample, "Python csv", of("*.csv"), comma_separated)
    check(sample, "Python email", of("*.eml"), mail)
    check(sample, "Python zipfile", of("*.zip"), archive)


def main():
    folder = Path(sys.argv[1])
    plans = [Path(p) for p in sys.argv[2:]] or sorted((TOP / "sample-plans").glob("*.json"))
    for plan in plans:
        everything(plan, folder / plan.stem)
    for row in results:
        print("| " + " | ".join(str(cell).replace("\n", " ") for cell in row) + " |")
    sys.exit(1 if any(row[3] != "ok" for row in results) else 0)


if __name__ == "__main__":
    main()
