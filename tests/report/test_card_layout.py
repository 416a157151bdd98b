"""The card as paper: nothing clipped, every page headed and numbered, text that can be found."""

from __future__ import annotations

from functools import cache
from io import BytesIO
from typing import Any

import pytest
from pypdf import PageObject, PdfReader
from PySide6.QtCore import QLocale
from PySide6.QtGui import QPageSize
from scipy import stats

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.job import Job
from aligner.report.card import card_bytes
from aligner.report.paper import page_size
from aligner.storage.document_file import load_job
from tests.report.test_card import AT, clamp, full_job, job_of, pages_of, text_of
from tests.report.test_markup import squeezed

LONG = "left lower clamp behind the horn bracket, reached from below with the long extension"
A4, LETTER = QPageSize.PageSizeId.A4, QPageSize.PageSizeId.Letter
#: What is seen on the wrench in a part pass and in a full one.
TORQUES = {0.5: "8.5 lbf·ft", 1.0: "17 lbf·ft"}
KINDS = ("lower_clamp", "top_clamp", "fork_cap", "brake_caliper", "axle_pinch")


@cache
def crowded_job() -> Job:
    """Forty fasteners with long names, most of them done, some out of order."""
    fasteners: list[dict[str, Any]] = []
    for number in range(40):
        side = ("left", "right")[number % 2]
        fastener = clamp(f"{number:02} {LONG}", side)
        fasteners.append({**fastener, "kind": KINDS[number % 5], "again_after": "100 km"})
    job = full_job(sheet={"name": "Invented Roadster", "fasteners": fasteners})
    log = [
        {
            "step": each.step.key,
            "at": AT,
            "torque": TORQUES[each.step.fraction] if each.step.target_nm else None,
            "wrench": "the large wrench with the crow's foot adapter",
            "reason": f"reason {each.number}: the caliper was in the way" * (each.number % 7 == 0),
        }
        for each in assess(job).tightening.steps
    ]
    return full_job(sheet={"name": "Invented Roadster", "fasteners": fasteners}, log=log)


def places_of(page: PageObject) -> list[tuple[float, float, str]]:
    """Where each run of text begins on a page, in points from its lower left corner."""
    found: list[tuple[float, float, str]] = []

    def visit(text: str, at: list[float], line: list[float], *_: Any) -> None:
        if text.strip():
            x = line[4] * at[0] + line[5] * at[2] + at[4]
            y = line[4] * at[1] + line[5] * at[3] + at[5]
            found.append((x, y, text))

    page.extract_text(visitor_text=visit)
    return found


@cache
def crowded_card(size: QPageSize.PageSizeId = A4) -> bytes:
    return card_bytes(crowded_job(), size=QPageSize(size))


@pytest.mark.parametrize("size", [A4, LETTER], ids=["A4", "Letter"])
def test_forty_fasteners_with_long_names_are_all_there_whole(size: QPageSize.PageSizeId) -> None:
    job = crowded_job()

    pages = pages_of(crowded_card(size))

    text = squeezed(" ".join(pages))
    for number in range(40):
        assert squeezed(f"{number:02} {LONG}") in text
    for each in assess(job).tightening.steps:
        assert squeezed(each.step.title) in text
        if each.number % 7 == 0:
            reason = f"reason {each.number}: the caliper was in the way"
            assert squeezed(reason) in text
    for number, page in enumerate(pages, start=1):
        assert f"page {number} of {len(pages)}" in page


@pytest.mark.parametrize("size", [A4, LETTER], ids=["A4", "Letter"])
def test_all_text_begins_within_the_margins(size: QPageSize.PageSizeId) -> None:
    for page in PdfReader(BytesIO(crowded_card(size))).pages:
        wide, high = float(page.mediabox.width), float(page.mediabox.height)
        places = places_of(page)
        assert len(places) >= 5
        for x, y, text in places:
            assert 40 <= x <= wide - 42, text  # 15 mm are 42.5 points
            assert 27 <= y <= high - 33, text  # 10 mm below, 12 mm above


def test_the_head_of_the_table_stands_on_every_page_it_goes_on_to() -> None:
    pages = pages_of(crowded_card())
    tables = [page for page in pages if "17 lbf·ft" in page]

    assert len(tables) >= 3
    for page in tables:
        assert "step specified logged wrench done at" in page
    assert sum(page.count("specified logged wrench") for page in pages) == len(tables)


@pytest.mark.parametrize(
    "name",
    [
        "fellside-left-leg-high.job.json",
        "fellside-true.job.json",
        "quernbeck-upside-down.job.json",
    ],
)
@pytest.mark.parametrize("size", [A4, LETTER], ids=["A4", "Letter"])
def test_the_demo_cards_are_two_pages_and_end_with_the_signature(
    name: str, size: QPageSize.PageSizeId
) -> None:
    pages = pages_of(card_bytes(load_job(demo(name))[0], size=QPageSize(size)))

    assert len(pages) == 2
    for words in ("Sign-off", "Signed off by", "Signature, date"):
        assert words in pages[-1]


def test_its_fonts_are_in_the_document_and_its_letters_can_be_searched() -> None:
    fonts = {}
    for page in PdfReader(BytesIO(crowded_card())).pages:
        for name, font in page["/Resources"]["/Font"].items():  # type: ignore[index]
            fonts[name] = font.get_object()
    assert fonts
    for font in fonts.values():
        (inside,) = font["/DescendantFonts"]
        descriptor = inside.get_object()["/FontDescriptor"].get_object()
        assert {"/FontFile", "/FontFile2", "/FontFile3"} & set(descriptor)
        assert "/ToUnicode" in font


def test_the_drawing_is_lines_and_no_picture_of_them() -> None:
    for page in PdfReader(BytesIO(card_bytes(full_job()))).pages:
        assert not page.images


def test_the_passes_of_one_fastener_stand_in_one_row() -> None:
    job = full_job()
    steps = [each for each in assess(job).tightening.steps if each.step.joint == "left lower clamp"]
    assert len(steps) > 1
    ticked = {"step": steps[0].step.key, "at": AT, "torque": "11.5 N·m", "wrench": "small wrench"}

    text = text_of(full_job(log=[ticked]))

    assert f"{steps[0].number}-{steps[-1].number} Left lower clamp" in text
    assert f"1 of {len(steps)} passes" in text


def test_what_is_due_and_when_stands_on_it() -> None:
    fastener = {**clamp("left lower clamp", "left"), "again_after": "100 km"}
    sheet = {"name": "Invented Roadster", "fasteners": [fastener]}
    waiting = full_job(sheet=sheet)
    key = assess(waiting).rechecks[0].key
    checks = {"rechecks": [{"step": key, "at": AT, "torque": "23 N·m"}]}

    assert "After 100 km check again: Left lower clamp, bolts 1 and 2, 23 N·m" in text_of(waiting)
    assert "checked again 2026-11-25 14:02+01:00, 23 N·m: Left lower clamp" in text_of(
        full_job(sheet=sheet, prove=checks)
    )


def test_findings_and_what_is_to_be_watched_stand_on_it() -> None:
    job = full_job()
    place = assess(job).inspection.places[0]
    found = {
        "point": place.point.key,
        "finding": "watch",
        "note": "a slight mark",
        "photographs": ["photographs/seal-12345678.jpg"],
    }
    if place.side:
        found["side"] = place.side.value
    text = text_of(full_job(inspect={"found": [found]}))

    assert "Findings" in text
    assert place.point.name in text
    assert "a slight mark" in text
    assert "photographs/seal-12345678.jpg" in text
    assert "To watch" in text


def test_oil_and_settings_stand_on_it() -> None:
    build = {"oil": "fork oil 10W", "left": {"gap": ["140 mm"]}, "right": {"gap": ["141 mm"]}}

    text = text_of(full_job(build=build))

    assert "Oil and settings" in text
    for words in ("fork oil 10W", "140.0 mm", "141.0 mm"):
        assert words in text


def test_each_leg_has_its_uncertainty_at_the_drawing() -> None:
    text = text_of(load_job(demo("fellside-left-leg-high.job.json"))[0])

    estimate = assess(load_job(demo("fellside-left-leg-high.job.json"))[0]).protrusion.left
    assert estimate is not None
    assert estimate.standard_uncertainty_mm is not None
    # GUM G.4.1: Student's t at the next lower whole number of degrees of freedom.
    factor = stats.t.ppf(0.975, int(estimate.degrees_of_freedom))
    expected = f"left {estimate.value_mm:.2f} ± {factor * estimate.standard_uncertainty_mm:.2f} mm"
    assert expected in text


def test_the_same_caution_stands_there_once() -> None:
    job = load_job(demo("fellside-true.job.json"))[0]
    cautions = {each.step.caution for each in assess(job).tightening.steps if each.step.caution}
    text = squeezed(text_of(job))

    assert len(cautions) > 3
    for caution in cautions:
        assert text.count(squeezed(caution)) == 1


def test_a_card_of_an_empty_job_is_one_page() -> None:
    assert len(pages_of(card_bytes(job_of()))) == 1


@pytest.mark.parametrize(
    ("language", "expected"),
    [("en_US", LETTER), ("fr_CA", LETTER), ("en_GB", A4), ("de_DE", A4), ("sv_SE", A4)],
)
def test_the_paper_is_the_usual_one_of_the_place(
    language: str, expected: QPageSize.PageSizeId
) -> None:
    assert page_size("", QLocale(language)).id() == expected
    assert page_size("A4", QLocale(language)).id() == A4
    assert page_size("Letter", QLocale(language)).id() == LETTER
