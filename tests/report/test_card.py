"""The job card read back with pypdf, and the text made fit to print."""

from __future__ import annotations

import json
import os
import unicodedata
from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from pypdf import PdfReader

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from aligner.assessment import assess
from aligner.job import Job
from aligner.report.card import card_bytes, write_card
from aligner.storage.documents import job_from
from aligner.storage.failure import SaveFailed

AT = "2026-11-25T14:02:00+01:00"
A4_POINTS = (595, 842)  # ISO 216: 210 mm x 297 mm, at 72 points an inch


def job_of(**fields: Any) -> Job:
    document = {"document": "job", "version": 1, **fields}
    return job_from(json.dumps(document).encode())


def clamp(name: str, side: str, torque: str | None = "23 N·m") -> dict[str, Any]:
    found: dict[str, Any] = {"name": name, "kind": "lower_clamp", "side": side, "bolts": 2}
    return found | ({"torque": {"nominal": torque, "tolerance": "10 %"}} if torque else {})


def full_job(**more: Any) -> Job:
    fasteners = [clamp("left lower clamp", "left"), clamp("right lower clamp", "right", None)]
    sheet = {"name": "Invented Roadster", "protrusion": {"tolerance": "0.5 mm"}}
    fields: dict[str, Any] = {
        "title": "front end refit",
        "sheet": sheet | {"fasteners": fasteners},
        "gauges": {"depth gauge": {"resolution": "0.02 mm", "limit_of_error": "0.03 mm"}},
        "as_found": {"protrusion": {"left": ["5.5 mm"], "right": ["2.5 mm"]}},
        "align": {
            "protrusion": {"gauge": "depth gauge", "left": ["4.24 mm"], "right": ["4.11 mm"]}
        },
        "prove": {
            "checks": [{"name": "Lock to lock", "done": True, "note": "free"}],
            "sign_off": {"name": "A. Invented", "on": "2026-11-25"},
        },
    }
    return job_of(**fields | more)


def pages_of(content: bytes) -> list[str]:
    """The text of each page with every run of white space as one blank."""
    reader = PdfReader(BytesIO(content))
    return [" ".join(page.extract_text().split()) for page in reader.pages]


def text_of(job: Job) -> str:
    return " ".join(pages_of(card_bytes(job)))


def test_the_card_is_a4_of_one_or_two_numbered_pages() -> None:
    content = card_bytes(full_job())
    pages = PdfReader(BytesIO(content)).pages
    assert 1 <= len(pages) <= 2
    for page in pages:
        size = (round(float(page.mediabox.width)), round(float(page.mediabox.height)))
        assert size == A4_POINTS
    for number, text in enumerate(pages_of(content), start=1):
        assert f"page {number} of {len(pages)}" in text


@pytest.mark.parametrize(
    "words",
    [
        "Invented Roadster",
        "Job card: front end refit",
        "5.50 mm (1)",
        "4.24 mm (1)",
        "± 0.5 mm",
        "The maker's manual and local rules come first; if you are not sure have the work "
        "checked by a qualified mechanic.",
        "torque missing: see the maker's manual",
        "23 N·m",
        "20.7 to 25.3 N·m",
        "done: free",
        "A. Invented, 2026-11-25",
        "Signature, date",
        "Seen from the seat",
    ],
)
def test_the_card_says_what_was_done(words: str) -> None:
    assert words in text_of(full_job())


def test_no_two_letters_are_joined_so_that_a_search_finds_the_word() -> None:
    text = text_of(full_job(title="off, fit, flat, office"))
    assert "off, fit, flat, office" in text
    assert not [letter for letter in text if "LIGATURE" in unicodedata.name(letter, "")]


def test_every_step_stands_on_the_card_with_what_was_logged() -> None:
    first = assess(full_job()).tightening.steps[0]
    ticked = {
        "step": first.step.key,
        "at": AT,
        "torque": "8.5 lbf·ft",
        "wrench": "small wrench",
        "reason": "the clamp was at hand",
    }
    undone = {"step": first.step.key, "at": AT, "action": "unticked", "reason": "it slipped"}
    job = full_job(log=[ticked, undone, ticked])
    text = text_of(job)
    assert f"1 of {len(assess(job).tightening.steps)} steps done" in text
    for words in ("8.5 lbf·ft", "small wrench", "2026-11-25 14:02", "(UTC+01:00)", "it slipped"):
        assert words in text
    assert "Out of order or noted: the clamp was at hand" in text
    for standing in assess(job).tightening.steps:
        assert " ".join(standing.step.title.split()) in text


def test_the_card_says_that_readings_are_dated_later_than_it_is() -> None:
    read = {"begun": "2999-01-01T10:00:00+00:00", "protrusion": {"left": ["4 mm"]}}
    assert "The readings are dated 01 January 2999 10:00" in text_of(full_job(align=read))


def test_text_is_never_read_as_markup() -> None:
    assert "<b>bold</b> & &amp; <br>" in text_of(full_job(title="<b>bold</b> & &amp; <br>"))


@pytest.mark.parametrize("length", [200, 3_000, 30_000])
def test_a_long_name_is_wrapped_and_not_clipped(length: int) -> None:
    name = "".join(chr(ord("A") + place % 26) for place in range(length))
    pages = pages_of(card_bytes(full_job(title=name)))
    body = "".join(text.rsplit(" Job card: ", 1)[0] for text in pages).replace(" ", "")
    assert name in body


def test_a_card_stands_there_whole_or_not_at_all(tmp_path: Path) -> None:
    path = tmp_path / "card.pdf"
    write_card(job_of(), path)
    assert pages_of(path.read_bytes())
    assert [entry.name for entry in tmp_path.iterdir()] == ["card.pdf"]
    with pytest.raises(SaveFailed, match="is not there"):
        write_card(job_of(), tmp_path / "no folder" / "card.pdf")
