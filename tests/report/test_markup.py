"""A document full of markup is printed letter by letter, and reaches nothing outside."""

from __future__ import annotations

import json
from io import BytesIO
from typing import Any

import pytest
from pypdf import PdfReader

from aligner.assessment import assess
from aligner.report.card import card_bytes
from aligner.report.summary import summary
from aligner.storage.documents import job_from
from tests.report.test_card import AT, pages_of

MARKUP = '<b>bold</b> &amp; <img src="file:///etc/passwd"> <a href="http://x">x</a>'


def job_full_of_markup() -> bytes:
    """A job document with markup in every field that holds a person's words."""
    fastener = {"kind": "lower_clamp", "side": "left", "note": MARKUP}
    torque = {"nominal": "23 N·m", "source": MARKUP}
    names = [f"{number} {MARKUP}" for number in range(2)]
    document: dict[str, Any] = {
        "document": "job",
        "version": 1,
        "title": MARKUP,
        "note": MARKUP,
        "sheet": {
            "name": MARKUP,
            "note": MARKUP,
            "fasteners": [{**fastener, "name": name, "torque": torque} for name in names],
            "sources": {"fork.leg_spacing": MARKUP},
        },
        "gauges": {MARKUP: {"resolution": "0.02 mm", "source": MARKUP}},
        "align": {
            "protrusion": {"gauge": MARKUP, "left": ["4.2 mm"], "right": ["4.2 mm"]},
            "squaring": [{"name": MARKUP, "gauge": MARKUP, "left": ["9 mm"], "right": ["9 mm"]}],
        },
        "log": [{"step": MARKUP, "at": AT, "wrench": MARKUP, "reason": MARKUP}],
        "prove": {
            "checks": [{"name": MARKUP, "note": MARKUP}],
            "road_test": MARKUP,
            "sign_off": {"name": MARKUP, "on": "2026-11-25"},
        },
    }
    return json.dumps(document).encode()


def squeezed(text: str) -> str:
    """Without white space: a long word may be broken anywhere."""
    return "".join(text.split())


def test_the_card_prints_markup_as_it_stands() -> None:
    content = card_bytes(job_from(job_full_of_markup()))

    text = squeezed(" ".join(pages_of(content)))

    # title, bike, pair, log, check, road test, note, sign-off, and each fastener
    assert text.count(squeezed(MARKUP)) >= 8
    for page in PdfReader(BytesIO(content)).pages:
        assert not page.annotations
        assert not page.images


@pytest.mark.parametrize("key", ["/OpenAction", "/AA", "/JavaScript", "/EmbeddedFiles"])
def test_the_card_does_nothing_when_it_is_opened(key: str) -> None:
    assert key.encode() not in card_bytes(job_from(job_full_of_markup()))


def test_the_plain_text_says_it_as_it_stands() -> None:
    assert MARKUP in summary(assess(job_from(job_full_of_markup())))
