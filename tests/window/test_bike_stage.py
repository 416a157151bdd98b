"""The Bike stage shows each value with its source, and says in words what is missing."""

from __future__ import annotations

import json

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from aligner.drawing.theme import Theme
from aligner.job import Job
from aligner.sheet import Fastener, OrderRule, Sheet, TorqueSpecification
from aligner.units.preferred import Preferred
from aligner.window.bike_stage import BikeStage, rule_words, torque_words
from aligner.window.open_job import OpenJob

_SHEET = {
    "name": "an invented bike",
    "fork": {"kind": "upside_down", "handlebars": "between", "leg_spacing": "194 mm"},
    "steering": {"rake": "26 deg"},
    "protrusion": {"tolerance": "0.5 mm"},
    "fasteners": [
        {
            "name": "left lower clamp",
            "kind": "lower_clamp",
            "side": "left",
            "bolts": 2,
            "thread": "M8x1.25",
            "strength_class": "8.8",
            "thread_condition": "dry",
            "torque": {"low": "21 N·m", "high": "25 N·m", "source": "invented p. 3"},
        },
        {"name": "right lower clamp", "kind": "lower_clamp", "side": "right"},
    ],
    "rules": [
        {
            "kind": "while_slack",
            "first": "fork_cap",
            "then": "top_clamp",
            "because": "An invented reason.",
        }
    ],
    "sources": {"fork.leg_spacing": "measured"},
}


def _sheet(**changes: object) -> Sheet:
    return Sheet.model_validate_json(json.dumps({**_SHEET, **changes}))


def _stage(qtbot, sheet: Sheet, show: Preferred | None = None) -> BikeStage:
    stage = BikeStage(OpenJob(Job(sheet=sheet)), Theme(), show or Preferred())
    qtbot.addWidget(stage)
    return stage


def _read(stage: BikeStage) -> dict[str, str]:
    """What a screen reader says of each label on the page, with its tone."""
    labels = stage.page.widget().findChildren(QLabel)
    return {
        each.accessibleName() or each.text(): each.property("tone") or ""
        for each in labels
        if not each.isHidden() and not each.parentWidget().isHidden()
    }


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        pytest.param({"low": "21 N·m", "high": "25 N·m"}, "21 to 25 N·m", id="a range"),
        pytest.param({"nominal": "23 N·m", "tolerance": "10 %"}, "23 N·m ± 10 %", id="per cent"),
        pytest.param({"nominal": "23 N·m", "tolerance": "2 N·m"}, "23 N·m ± 2 N·m", id="a torque"),
        pytest.param({"nominal": "23 N·m"}, "23 N·m", id="a nominal alone"),
        pytest.param(
            {
                "low": "21 N·m",
                "high": "25 N·m",
                "also_printed": {"low": "15 lbf·ft", "high": "18 lbf·ft"},
            },
            "21 to 25 N·m (15 to 18 lbf·ft)",
            id="printed in two units",
        ),
    ],
)
def test_a_torque_reads_as_the_manual_prints_it(printed, words):
    assert torque_words(TorqueSpecification.model_validate(printed)) == words


def test_a_torque_that_is_not_known_is_never_a_number():
    words = torque_words(None)
    assert words == "missing: take it from the maker's manual"
    assert not any(character.isdigit() for character in words)


@pytest.mark.parametrize(
    ("kind", "words"),
    [
        ("before", "fork cap before top clamp"),
        ("while_slack", "fork cap while top clamp is slack"),
        ("again_after", "after fork cap, top clamp once more"),
    ],
)
def test_a_rule_reads_as_a_sentence(kind, words):
    rule = OrderRule(kind=kind, first="fork_cap", then="top_clamp", because="invented")
    assert rule_words(rule) == words


def test_each_value_stands_with_its_source_or_says_that_none_is_given(qtbot):
    said = _read(_stage(qtbot, _sheet()))
    assert "fork: upside-down" in said
    assert "handlebars: between the brackets" in said
    assert said["leg spacing, centre to centre, value: 194 mm"] == ""
    assert "leg spacing, centre to centre, source: measured" in said
    assert "rake, value: 26°" in said
    assert "rake, source: source not given" in said
    assert "left lower clamp, 2 bolts, torque: 21 to 25 N·m" in said
    assert "left lower clamp, 2 bolts, source of the torque: invented p. 3" in said
    assert "fork cap while top clamp is slack, because: An invented reason." in said


def test_what_is_missing_says_so_in_words_and_asks_for_attention(qtbot):
    said = _read(_stage(qtbot, _sheet()))
    torque = "right lower clamp, torque: missing: take it from the maker's manual"
    assert said[torque] == "attention"
    assert said["wheelbase, value: missing"] == "attention"
    assert said["right lower clamp, thread: missing"] == "attention"


def test_a_limit_that_nobody_asks_for_is_not_called_missing(qtbot):
    said = _read(_stage(qtbot, _sheet()))
    assert said["legs in line, tolerance ±, value: not given: not asked for"] == ""


def test_a_length_shows_in_the_preferred_unit_too(qtbot):
    said = _read(_stage(qtbot, _sheet(), Preferred(length="in")))
    assert "leg spacing, centre to centre, value: 194 mm (7.638 in)" in said


@pytest.mark.parametrize(
    ("sheet", "headline"),
    [
        pytest.param(Sheet(), "No sheet yet.", id="no sheet"),
        pytest.param(_sheet(), "1 value is missing.", id="one torque"),
        pytest.param(_sheet(protrusion={}), "2 values are missing.", id="a tolerance as well"),
        pytest.param(_sheet(fasteners=_SHEET["fasteners"][:1]), "Sheet complete.", id="complete"),
    ],
)
def test_the_sentence_says_how_complete_the_sheet_is(qtbot, sheet, headline):
    found, detail = _stage(qtbot, sheet).sentence()
    assert found == headline
    assert "maker's manual" in detail


def test_another_sheet_is_shown_after_an_edit_and_the_first_after_undo(qtbot):
    stage = _stage(qtbot, _sheet())
    job = stage._open_job
    job.changed.connect(stage.refresh)
    fastener = Fastener(name="stem nut", kind="stem_nut")
    job.edit("sheet", lambda j: j.with_changes(sheet=_sheet().with_changes(fasteners=(fastener,))))
    assert "stem nut" in _read(stage)
    assert "right lower clamp" not in _read(stage)
    job.edits.undo()
    assert "stem nut" not in _read(stage)
    assert "right lower clamp" in _read(stage)


def test_the_page_scrolls_by_keyboard(qtbot):
    stage = _stage(qtbot, _sheet())
    stage.resize(900, 200)
    stage.show()
    assert stage.page.focusPolicy() & Qt.FocusPolicy.TabFocus
    assert stage.page.accessibleName()
    before = stage.page.verticalScrollBar().value()
    qtbot.keyClick(stage.page, Qt.Key.Key_PageDown)
    assert stage.page.verticalScrollBar().value() > before
