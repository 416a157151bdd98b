"""The command from outside: exit statuses, one-line refusals, and what is printed."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

AT = "2026-11-25T14:02:00+01:00"
GAUGE = {"resolution": "0.02 mm", "limit_of_error": "0.03 mm", "repeatability": "0.02 mm"}
MINIMAL: dict[str, Any] = {"document": "job", "version": 1}
ROOT = Path(__file__).parent.parent

# design.md section 5, key by key.
KEYS = {
    "protrusion": {
        "left_mm",
        "right_mm",
        "difference_mm",
        "standard_uncertainty_mm",
        "expanded_uncertainty_mm",
        "verdict",
        "probability_within",
        "move_left_mm",
        "move_right_mm",
    },
    "squaring": {
        "turn_deg",
        "turn_uncertainty_deg",
        "verdict",
        "left_change_mm",
        "right_change_mm",
        "target_mm",
        "pairs",
        "consistency_p",
    },
    "in_line": {
        "skew_deg",
        "twist_deg",
        "axle_turn_deg",
        "top_bracket_rim_mm",
        "convergence_deg",
        "verdict",
    },
    "steering": {
        "rake_deg",
        "trail_mm",
        "normal_trail_mm",
        "wheelbase_mm",
        "rake_change_deg",
        "trail_change_mm",
        "axle_lean_deg",
        "patch_shift_mm",
    },
}
STEP_KEYS = {
    "step",
    "kind",
    "joint",
    "bolts",
    "pass",
    "fraction",
    "target_nm",
    "low_nm",
    "high_nm",
    "wrench",
    "setting_nm",
    "reason",
}


def job_with_heights(left: str, right: str, **more: Any) -> dict[str, Any]:
    heights = {"gauge": "depth gauge", "left": [left] * 3, "right": [right] * 3}
    return MINIMAL | {
        "sheet": {"name": "Invented Roadster", "protrusion": {"tolerance": "0.5 mm"}, **more},
        "gauges": {"depth gauge": GAUGE},
        "align": {"protrusion": heights},
    }


def saved(folder: Path, document: object, name: str = "bike.job.json") -> Path:
    path = folder / name
    path.write_text(json.dumps(document), encoding="utf-8")
    return path


def run(*arguments: str | Path, **environment: str) -> subprocess.CompletedProcess[bytes]:
    usual = {name: value for name, value in os.environ.items() if name != "QT_QPA_PLATFORM"}
    for name in ("DISPLAY", "WAYLAND_DISPLAY"):
        usual.pop(name, None)
    return subprocess.run(
        [sys.executable, "-m", "aligner", *map(str, arguments)],
        capture_output=True,
        cwd=ROOT,
        env=usual | environment,
        timeout=60,
        check=False,
    )


def refusal_of(done: subprocess.CompletedProcess[bytes]) -> str:
    """The one line on standard error, after checking that it is one and nothing else is said."""
    line = done.stderr.decode("utf-8")
    assert done.returncode == 2
    assert done.stdout == b""
    assert line.startswith("aligner: ")
    assert line.count("\n") == 1
    assert line.endswith("\n")
    assert "Traceback" not in line
    return line


@pytest.mark.parametrize(
    ("left", "right", "status"),
    [
        pytest.param("4.00 mm", "4.02 mm", 0, id="equal within the limit"),
        pytest.param("4.00 mm", "2.40 mm", 1, id="one leg low"),
        pytest.param("4.00 mm", "3.50 mm", 1, id="on the limit, so unsettled"),
    ],
)
def test_the_status_says_whether_all_is_within(
    tmp_path: Path, left: str, right: str, status: int
) -> None:
    done = run("assess", saved(tmp_path, job_with_heights(left, right)))
    assert done.returncode == status, done.stderr
    assert done.stderr == b""


def test_a_job_without_readings_needs_attention(tmp_path: Path) -> None:
    done = run("assess", saved(tmp_path, MINIMAL))
    assert done.returncode == 1
    assert b"Measure how far each tube stands up." in done.stdout


def test_a_missing_torque_needs_attention_though_the_heights_are_within(tmp_path: Path) -> None:
    cap = {"name": "left fork cap", "kind": "fork_cap", "side": "left"}
    document = job_with_heights("4.00 mm", "4.00 mm", fasteners=[cap])
    done = run("assess", saved(tmp_path, document))
    assert done.returncode == 1
    assert "torque missing" in done.stdout.decode("utf-8")


def test_the_text_begins_with_the_correction_and_gives_the_uncertainty(tmp_path: Path) -> None:
    path = saved(tmp_path, job_with_heights("4.00 mm", "2.40 mm"))
    lines = run("assess", path).stdout.decode("utf-8").splitlines()
    assert lines[0] == "Invented Roadster"
    assert lines[2] == "Let the left leg down 0.8 mm and push the right leg up 0.8 mm."
    heights = next(line for line in lines if line.startswith("Heights"))
    assert "out: left stands higher, 1.60 mm ± " in heights


def test_every_key_is_there_without_any_reading(tmp_path: Path) -> None:
    done = run("assess", saved(tmp_path, MINIMAL), "--json")
    found = json.loads(done.stdout)
    assert set(found) == {*KEYS, "tightening", "notices"}
    for group, keys in KEYS.items():
        assert set(found[group]) == keys
        values = {key: found[group][key] for key in keys - {"verdict", "pairs"}}
        assert set(values.values()) == {None}
    assert found["squaring"]["pairs"] == []
    assert found["tightening"] == []
    assert [found[group]["verdict"] for group in ("protrusion", "squaring", "in_line")] == [
        "missing"
    ] * 3


def test_the_numbers_are_those_read(tmp_path: Path) -> None:
    path = saved(tmp_path, job_with_heights("4.00 mm", "2.40 mm"))
    found = json.loads(run("assess", "--json", path).stdout)["protrusion"]
    assert found["left_mm"] == pytest.approx(4.0)
    assert found["difference_mm"] == pytest.approx(1.6)
    assert found["move_left_mm"] == pytest.approx(-0.8)
    assert found["move_right_mm"] == pytest.approx(0.8)
    assert found["verdict"] == "out"


def test_the_steps_are_numbered_from_one_with_every_key(tmp_path: Path) -> None:
    clamp = {
        "name": "left lower clamp",
        "kind": "lower_clamp",
        "side": "left",
        "bolts": 2,
        "torque": {"low": "20 N·m", "high": "26 N·m"},
    }
    document = job_with_heights("4.00 mm", "4.00 mm", fasteners=[clamp])
    steps = json.loads(run("assess", saved(tmp_path, document), "--json").stdout)["tightening"]
    assert [step["step"] for step in steps] == list(range(1, len(steps) + 1))
    assert all(set(step) == STEP_KEYS for step in steps)
    full = [step for step in steps if step["joint"] == "left lower clamp" and step["high_nm"]]
    assert full
    assert {(step["low_nm"], step["target_nm"], step["high_nm"]) for step in full} == {
        (20.0, 23.0, 26.0)
    }


def test_output_is_utf_8_whatever_the_locale(tmp_path: Path) -> None:
    document = job_with_heights("4.00 mm", "2.40 mm") | {"title": "Göteborg ± μ"}
    done = run("assess", saved(tmp_path, document), PYTHONIOENCODING="ascii", LC_ALL="C")
    assert "Göteborg ± μ" in done.stdout.decode("utf-8")


def test_a_name_cannot_steer_the_terminal(tmp_path: Path) -> None:
    document = MINIMAL | {"title": "red \x1b[31m\r\nNothing left to correct."}
    lines = run("assess", saved(tmp_path, document)).stdout.decode("utf-8").splitlines()
    assert lines[0] == "red ·[31m Nothing left to correct."


@pytest.mark.parametrize("arguments", [(), ("--json",)], ids=["text", "json"])
def test_assess_loads_no_qt(tmp_path: Path, arguments: tuple[str, ...]) -> None:
    path = saved(tmp_path, job_with_heights("4.00 mm", "4.00 mm"))
    code = (
        "import sys; from aligner.__main__ import main; "
        f"status = main(['assess', {str(path)!r}, *{arguments!r}]); "
        "sys.exit(9 if any('PySide' in name for name in sys.modules) else status)"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, check=False)
    assert done.returncode == 0, done.stderr


@pytest.mark.parametrize(
    ("content", "wanted"),
    [
        pytest.param(b"", ["bike.job.json"], id="empty"),
        pytest.param(b'{"document": "job", ', ["bike.job.json"], id="broken off"),
        pytest.param(b"\xff\xfe\x00", ["bike.job.json"], id="not text"),
        pytest.param(b"[]", ["not a job document"], id="no object"),
        pytest.param(b'{"document":"sheet","version":1}', ["a sheet, not a job"], id="other kind"),
        pytest.param(b'{"document":"job","version":7}', ["version", "7"], id="newer version"),
        pytest.param(
            b'{"document":"job","version":1,"sheet":{"fork":{"leg_spaceing":"1 mm"}}}',
            ["sheet.fork.leg_spaceing", "not known", "spelling"],
            id="unknown field",
        ),
        pytest.param(
            b'{"document":"job","version":1,"align":{"protrusion":{"left":[4.2]}}}',
            ["align.protrusion.left[0]", "bare number", "4.2 mm"],
            id="bare number",
        ),
    ],
)
@pytest.mark.parametrize("command", ["assess", "card"])
def test_an_unusable_document_is_refused_in_one_line(
    tmp_path: Path, command: str, content: bytes, wanted: list[str]
) -> None:
    path = tmp_path / "bike.job.json"
    path.write_bytes(content)
    card = tmp_path / "card.pdf"
    line = refusal_of(run(command, path, *(("-o", card) if command == "card" else ())))
    assert str(path) in line
    assert all(words in line for words in wanted), line
    assert not card.exists()


def test_a_folder_and_a_file_that_is_not_there_are_refused(tmp_path: Path) -> None:
    assert "folder" in refusal_of(run("assess", tmp_path))
    assert "gone.json" in refusal_of(run("assess", tmp_path / "gone.json"))


@pytest.mark.parametrize(
    "arguments",
    [
        pytest.param(("assess",), id="no job"),
        pytest.param(("assess", ""), id="empty name"),
        pytest.param(("assess", "a", "b"), id="two jobs"),
        pytest.param(("assess", "a", "--jsn"), id="unknown option"),
        pytest.param(("card", "a"), id="no card"),
        pytest.param(("--demo", "a"), id="a job and the demo"),
        pytest.param(("--what",), id="unknown option of the window"),
        pytest.param(("a", "b"), id="two jobs for the window"),
    ],
)
def test_unusable_arguments_are_refused_in_one_line(arguments: tuple[str, ...]) -> None:
    refusal_of(run(*arguments))


def test_the_card_is_written_without_a_display(tmp_path: Path) -> None:
    card = tmp_path / "card.pdf"
    done = run("card", saved(tmp_path, job_with_heights("4.00 mm", "4.00 mm")), "-o", card)
    assert done.returncode == 0, done.stderr
    assert card.read_bytes().startswith(b"%PDF-")


def test_the_card_is_written_in_german(tmp_path: Path) -> None:
    path, card = saved(tmp_path, job_with_heights("4.00 mm", "4.00 mm")), tmp_path / "card.pdf"
    done = run("card", path, "-o", card, "--language", "de")
    assert done.stderr == b""
    pages = PdfReader(card).pages
    words = " ".join(" ".join(page.extract_text() for page in pages).split())
    assert "Auftragskarte" in words
    assert "4,00 mm" in words


def test_the_assessment_is_said_in_german(tmp_path: Path) -> None:
    path = saved(tmp_path, job_with_heights("4.00 mm", "4.00 mm"))
    words = run("assess", path, "--language", "de").stdout.decode()
    assert "Anziehliste: " in words
    assert "0,00 mm" in words


def test_in_german_only_sentences_of_the_json_differ(tmp_path: Path) -> None:
    path = saved(tmp_path, job_with_heights("4.00 mm", "4.20 mm"))
    english = json.loads(run("assess", path, "--json").stdout)
    german = json.loads(run("assess", path, "--json", "--language", "de").stdout)
    for step in (*english["tightening"], *german["tightening"]):
        del step["reason"]
    assert german == english


def test_a_card_that_cannot_be_written_is_refused_in_one_line(tmp_path: Path) -> None:
    path = saved(tmp_path, MINIMAL)
    card = tmp_path / "no folder" / "card.pdf"
    line = refusal_of(run("card", path, "-o", card))
    assert str(card) in line
    assert "is not there" in line


def test_the_card_never_replaces_its_job(tmp_path: Path) -> None:
    path = saved(tmp_path, MINIMAL)
    before = path.read_bytes()
    assert "another name" in refusal_of(run("card", path, "-o", path))
    assert path.read_bytes() == before


def test_help_names_the_commands_and_the_statuses() -> None:
    window, assess = run("--help"), run("assess", "--help")
    assert (window.returncode, assess.returncode) == (0, 0)
    assert b"aligner card JOB -o CARD.pdf" in window.stdout
    assert b"2 unusable" in assess.stdout
