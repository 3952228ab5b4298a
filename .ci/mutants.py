"""mutants.py LEAST REPORT ...: the score of each mutated file as a table; what survived or ran out of time, with its line.

Not tried is what does not compile, and with it each other change of the same method.
"""
import json
import sys

least = float(sys.argv[1])
rows, left, below = [], [], []
for report in sys.argv[2:]:
    with open(report, encoding="utf-8") as text:
        files = json.load(text)["files"]
    for path, file in sorted(files.items()):
        mutants = [m for m in file["mutants"] if m["status"] in ("Killed", "Timeout", "Survived", "NoCoverage")]
        if not mutants:
            continue
        name = path.split("src/Driveline/")[-1]
        count = {status: sum(m["status"] == status for m in mutants) for status in ("Killed", "Timeout", "Survived", "NoCoverage")}
        score = 100 * (count["Killed"] + count["Timeout"]) / len(mutants)
        survived = count["Survived"] + count["NoCoverage"]
        untried = sum(m["status"] == "CompileError" for m in file["mutants"])
        rows.append(f"| {name} | {len(mutants)} | {count['Killed']} | {count['Timeout']} | {survived} | {score:.0f} % | {untried} |")
        if score < least:
            below.append(f"{name}: {score:.1f} %")
        lines = file["source"].splitlines()
        for m in sorted(mutants, key=lambda m: m["location"]["start"]["line"]):
            if m["status"] != "Killed":
                start, end = m["location"]["start"], m["location"]["end"]
                was = lines[start["line"] - 1][start["column"] - 1:end["column"] - 1 if end["line"] == start["line"] else None]
                left.append(f"{name}:{start['line']} {m['status']} {m['mutatorName']}: {was} -> {' '.join(m['replacement'].split())}")
print("| file | changes | noticed | out of time | not noticed | score | not tried |\n| --- | --- | --- | --- | --- | --- | --- |")
print("\n".join(rows))
print("\n".join(["", *left]))
sys.exit(f"below {least:g} %: " + "; ".join(below) if below else 0)
