"""The code's own rules: lint, format, types, and which part may import which."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent
PACKAGE = ROOT / "aligner"

#: What each part may import of the others.
ALLOWED = {
    "language": set(),
    "units": set(),
    "gauging": set(),
    "geometry": set(),
    "fastening": {"units"},
    "legs": set(),
    "sheet": {"units"},
    "job": {"sheet", "units", "gauging", "geometry"},
    "storage": {"job", "sheet", "units"},
    "assessment": {"job", "sheet", "units", "gauging", "geometry", "fastening", "legs"},
    "drawing": {"job", "sheet"},
}
EVERYWHERE = {"errors", "data_files", "language"}
WITHOUT_QT = set(ALLOWED) - {"drawing"}
TYPED = WITHOUT_QT | {"errors.py"}

#: The folders of the window that show one thing each; what they share stands in the others.
STAGES = {"bike", "strip", "inspect", "build", "align", "tighten", "prove", "bench"}
SHARED = {"widgets", "steps", "measuring", "history", "files"}


def imports_of(path):
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module:
            if node.module == "aligner":
                yield from (f"aligner.{alias.name}" for alias in node.names)
            else:
                yield node.module


@pytest.mark.parametrize("part", sorted(ALLOWED))
def test_imports_run_one_way(part):
    for path in (PACKAGE / part).rglob("*.py"):
        for name in imports_of(path):
            if name.startswith("aligner."):
                other = name.split(".")[1]
                assert other in ALLOWED[part] | EVERYWHERE | {part}, f"{path} imports {name}"


@pytest.mark.parametrize("folder", sorted(STAGES | SHARED))
def test_no_folder_of_the_window_imports_from_a_stage(folder):
    for path in (PACKAGE / "window" / folder).rglob("*.py"):
        for name in imports_of(path):
            if name.startswith("aligner.window."):
                other = name.split(".")[2]
                assert other == folder or other not in STAGES, f"{path} imports {name}"


@pytest.mark.parametrize("part", sorted(WITHOUT_QT))
def test_nothing_below_the_window_imports_qt(part):
    for path in (PACKAGE / part).rglob("*.py"):
        assert not any(name.startswith("PySide6") for name in imports_of(path)), path


@pytest.mark.parametrize(
    "command",
    [
        pytest.param(["ruff", "check", "--no-cache", "."], id="lint"),
        pytest.param(["ruff", "format", "--check", "--no-cache", "."], id="format"),
        pytest.param(
            ["mypy", *(str(PACKAGE / part) for part in sorted(TYPED))],
            id="types",
        ),
    ],
)
def test_the_tools_find_nothing(command):
    found = subprocess.run(
        [sys.executable, "-m", *command], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert found.returncode == 0, found.stdout + found.stderr
