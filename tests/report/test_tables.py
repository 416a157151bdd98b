"""The tables read back by Python's own CSV reader: every number is a number in its unit."""

from __future__ import annotations

import csv
import io
from pathlib import Path

import pytest

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.job import Job
from aligner.report.tables import (
    READING_COLUMNS,
    TORQUE_COLUMNS,
    readings_table,
    torques_table,
    write_tables,
)
from aligner.storage.document_file import load_job
from tests.report.test_card import AT, clamp, full_job

DEMOS = ("fellside-left-leg-high.job.json", "fellside-true.job.json")


def records(text: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(text, newline=""), strict=True))


@pytest.mark.parametrize("name", DEMOS)
def test_every_reading_of_the_alignment_comes_back(name: str) -> None:
    job, _ = load_job(demo(name))

    found = records(readings_table(job))

    left = [row for row in found if (row["when_read"], row["what"], row["side"]) == (
        "as left", "height", "left",
    )]  # fmt: skip
    assert [float(row["value_mm"]) for row in left] == [
        reading.value for reading in job.align.protrusion.left
    ]
    assert [row["as_typed"] for row in left] == [str(one) for one in job.align.protrusion.left]
    pair = job.align.squaring[0]
    assert [float(row["value_mm"]) for row in found if row["what"] == pair.name] == [
        reading.value for reading in (*pair.left, *pair.right)
    ]


def test_every_length_is_in_the_table_whatever_it_was_read_for() -> None:
    """Each is typed once and like no other, so that none can stand for another."""
    job = full_job(
        as_found={
            "protrusion": {"left": ["1.01 mm"], "right": ["1.02 mm"]},
            "bracket": {"left": ["1.03 mm"], "right": ["1.04 mm"]},
            "sag": {"extended": ["1.05 mm"], "static": ["1.06 mm"], "rider": ["1.07 mm"]},
        },
        align={
            "protrusion": {"left": ["1.08 mm"], "right": ["1.09 mm"]},
            "squaring": [{"name": "lugs", "left": ["1.10 mm"], "right": ["1.11 mm"]}],
            "in_line": {"method": "plate", "gap": ["1.12 mm"]},
            "in_line_others": [
                {"method": "spread", "upper": ["1.13 mm"], "lower": ["1.14 mm"]},
                {"method": "bars", "end_difference": ["1.15 mm"]},
            ],
        },
        inspect={"found": [{"point": "tube_runout", "side": "left", "readings": ["1.16 mm"]}]},
        build={
            "earlier": [{"closed": AT, "left": ["1.17 mm"], "right": ["1.18 mm"]}],
            "left": {"gap": ["1.19 mm"]},
            "right": {"gap": ["1.20 mm"]},
            "spring": {
                "free_length": "1.26 mm",
                "room": "1.27 mm",
                "washers": "1.28 mm",
                "old_spacer": "1.29 mm",
                "solid_length": "1.30 mm",
                "fitted_spacer": "1.31 mm",
            },
            "sag": {
                "spacer": "1.32 mm",
                "extended": ["1.21 mm"],
                "static_down": ["1.22 mm"],
                "static_up": ["1.23 mm"],
                "rider_down": ["1.24 mm"],
                "rider_up": ["1.25 mm"],
            },
        },
    )
    found = [row["as_typed"] for row in records(readings_table(job))]
    assert sorted(found) == [f"1.{number:02} mm" for number in range(1, 33)]


def test_a_reading_in_inches_is_in_millimetres_beside_what_was_typed() -> None:
    job = full_job(align={"protrusion": {"left": ["0.165 in"]}})

    (row,) = [row for row in records(readings_table(job)) if row["when_read"] == "as left"]

    # Source: 1 in = 25.4 mm exactly (NIST SP 811, appendix B; from memory)
    assert float(row["value_mm"]) == pytest.approx(0.165 * 25.4, abs=1e-9)
    assert row["as_typed"] == "0.165 in"


def test_every_step_comes_with_what_was_specified_and_logged() -> None:
    job = full_job()
    steps = assess(job).tightening.steps
    ticked = next(each for each in steps if each.step.target_nm is not None)
    entry = {
        "step": ticked.step.key,
        "at": AT,
        "torque": "17 lbf·ft",
        "wrench": "large",
        "reason": "late",
    }
    job = full_job(log=[entry])

    found = records(torques_table(assess(job)))

    assert len(found) == len(steps)
    row = found[ticked.number - 1]
    assert float(row["target_nm"]) == ticked.step.target_nm
    # Source: 1 lbf·ft = 1.355 817 948 N·m (NIST SP 811, appendix B; from memory)
    assert float(row["logged_nm"]) == pytest.approx(17 * 1.355817948, rel=1e-8)
    assert (row["done"], row["wrench"], row["reason"], row["at"]) == ("yes", "large", "late", AT)


def test_names_with_commas_quotes_and_line_ends_come_back_whole() -> None:
    name = 'left "lower", clamp\nwith; everything'
    job = full_job(sheet={"name": "x", "fasteners": [clamp(name, "left")]})

    text = torques_table(assess(job))

    assert name in {row["fastener"] for row in records(text)}
    assert all(line.endswith("\r\n") for line in io.StringIO(text, newline="") if '"' not in line)


@pytest.mark.parametrize("name", ["=1+1", "+1", "-1", "@x", "\t=1"])
def test_no_name_is_taken_for_a_formula(name: str) -> None:
    job = full_job(sheet={"name": "x", "fasteners": [clamp(name, "left")]})

    fasteners = {row["fastener"] for row in records(torques_table(assess(job)))} - {""}

    assert fasteners == {f"'{name}"}


def test_an_empty_job_has_the_heads_alone() -> None:
    assert readings_table(Job()) == ",".join(READING_COLUMNS) + "\r\n"
    assert torques_table(assess(Job())).startswith(",".join(TORQUE_COLUMNS))


def test_two_files_are_written_and_none_is_replaced(tmp_path: Path) -> None:
    first = write_tables(full_job(), tmp_path / "refit.csv")
    again = write_tables(full_job(), tmp_path / "refit.csv")

    assert [path.name for path in first] == ["refit readings.csv", "refit torques.csv"]
    assert [path.name for path in again] == ["refit readings 2.csv", "refit torques 2.csv"]
    assert first[0].read_bytes().startswith(b"\xef\xbb\xbf")
    assert records(first[0].read_text(encoding="utf-8-sig"))
