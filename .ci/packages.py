"""Looks into every package: what a stranger's feed and debugger need is there, and nothing local is. Prints the sizes."""
import pathlib
import posixpath
import re
import sys
import zipfile

feed, version = pathlib.Path(sys.argv[1]), sys.argv[2]
faults = []


def check(package, holds, what):
    if not holds:
        faults.append(f"{package}: {what}")


for path in sorted(feed.glob("*.nupkg")):
    with zipfile.ZipFile(path) as package:
        names = package.namelist()
        spec = next(n for n in names if n.endswith(".nuspec"))
        xml = package.read(spec).decode("utf-8-sig")
        name = path.name
        is_tool_part = "DotnetToolRidPackage" in xml
        check(name, f"<version>{version}</version>" in xml, f"not version {version}")
        for element in ("license", "readme", "icon", "description", "tags", "title", "releaseNotes"):
            check(name, f"<{element}" in xml, f"no {element}")
        check(name, "README.md" in names and "icon.png" in names, "README or icon is not packed")
        for dependency in re.findall(r'<dependency id="Driveline[^>]*>', xml):
            check(name, f'version="[{version}]"' in dependency, f"{dependency} is not the exact version of its own release")
        readme = package.read("README.md").decode()
        check(name, not re.search(r"\]\((?!https?://)", readme), "a link of the README is dead on a feed")
        for page in (n for n in names if n.startswith("docs/") and n.endswith(".md")):
            text = package.read(page).decode()
            for link in re.findall(r"\]\(([^)#]+)", text) + re.findall(r'src(?:set)?="([^"]+)"', text):
                at = posixpath.normpath(posixpath.join(posixpath.dirname(page), link))
                check(name, link.startswith("https://") or at in names, f"{page} leads to {link}, which is not packed")
        for doc in (n for n in names if n.endswith(".xml") and n.startswith("lib/")):
            check(name, b"InternalsVisible" not in package.read(doc), f"{doc} tells of internals")
        print(f"{path.stat().st_size / 1024:8.0f} KiB  {name}")
for path in sorted(feed.glob("*.snupkg")):
    with zipfile.ZipFile(path) as symbols:
        for pdb in (n for n in symbols.namelist() if n.endswith(".pdb")):
            data = symbols.read(pdb)
            root = str(pathlib.Path.cwd())
            for part in (root, root.replace("/", "\\")):
                check(path.name, part.encode() not in data, f"{pdb} names a local path")
    print(f"{path.stat().st_size / 1024:8.0f} KiB  {path.name}")

for fault in faults:
    print(fault, file=sys.stderr)
sys.exit(bool(faults))
