"""The Bike stage: the job's sheet to read, each value with where it came from.

The trap: what is missing must be as plain to see as what is there, in words, and a torque
that is missing is never filled in.
"""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.assessment.stages import missing_on_sheet
from aligner.drawing.theme import Theme
from aligner.sheet import (
    Fastener,
    ForkKind,
    HandlebarPlace,
    OrderRule,
    Sheet,
    TorqueSpecification,
)
from aligner.sheet.quantities import Quantity, Torque
from aligner.units import LENGTH
from aligner.units.preferred import Preferred
from aligner.window.labels import Card
from aligner.window.open_job import OpenJob
from aligner.window.page import Cell, Page, table_card, wrapping

_FORKS = {
    ForkKind.DAMPER_ROD: "damper rod",
    ForkKind.AIR_ASSISTED: "damper rod, air-assisted",
    ForkKind.ANTI_DIVE: "damper rod with anti-dive unit",
    ForkKind.CARTRIDGE: "cartridge",
    ForkKind.UPSIDE_DOWN: "upside-down",
}
_HANDLEBARS = {
    HandlebarPlace.ABOVE: "above the top bracket",
    HandlebarPlace.BETWEEN: "between the brackets",
    HandlebarPlace.BELOW: "below the top bracket",
}
_DIMENSIONS = (
    ("leg spacing, centre to centre", "fork.leg_spacing"),
    ("bracket spacing", "fork.bracket_spacing"),
    ("lower bracket to axle", "fork.lower_bracket_to_axle"),
    ("bracket offset", "fork.bracket_offset"),
    ("tube diameter at the brackets", "fork.tube_diameter"),
    ("rake", "steering.rake"),
    ("axle offset", "steering.offset"),
    ("front wheel radius, loaded", "steering.front_radius"),
    ("rear wheel radius, loaded", "steering.rear_radius"),
    ("wheelbase", "steering.wheelbase"),
)
#: Limits, with what is said where one is left out; "" where it is missing.
_LIMITS = (
    ("tubes' height, target", "protrusion.target", "not given: only equal heights are asked for"),
    ("tubes' height, tolerance ±", "protrusion.tolerance", ""),
    ("lower bracket square, tolerance ±", "squaring.tolerance", "not given: not asked for"),
    ("legs in line, tolerance ±", "in_line.tolerance", "not given: not asked for"),
)
_RULES = {
    "before": "{first} before {then}",
    "while_slack": "{first} while {then} is slack",
    "after_hold": "{then} waits for the reading: {first}",
    "again_after": "after {first}, {then} once more",
}
_NO_SOURCE = "source not given"
_NO_TORQUE = "missing: take it from the maker's manual"


class BikeStage(QWidget):
    """The sheet of the job, read-only."""

    def __init__(self, open_job: OpenJob, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._open_job = open_job
        self._show = show
        self._shown: Sheet | None = None
        self.page = Page("The bike's sheet")
        self.setFocusProxy(self.page)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        self.refresh()

    def sentence(self) -> tuple[str, str]:
        """How complete the sheet is, and what that means."""
        job = self._open_job.job
        if not job.sheet.fasteners:
            return (
                "No sheet yet.",
                "A sheet names the bike's fasteners, with their torques from the maker's manual.",
            )
        missing = missing_on_sheet(job)
        first = "The maker's manual comes first."
        if missing:
            headline = "1 value is missing." if missing == 1 else f"{missing} values are missing."
            return headline, f"Take what is missing from it: a torque is never guessed. {first}"
        absent = sum(_value(job.sheet, path) is None for _, path in _DIMENSIONS)
        if absent:
            what = "1 dimension is" if absent == 1 else f"{absent} dimensions are"
            return (
                "Sheet complete.",
                f"{what} not given: what follows from them is not worked out. {first}",
            )
        return "Sheet complete.", f"Every torque and dimension is given. {first}"

    def begin(self) -> None:
        """Put the keyboard on the page."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)

    def refresh(self) -> None:
        """Show the sheet as it is now; an unchanged one stays where it was scrolled to."""
        sheet = self._open_job.job.sheet
        if sheet == self._shown:
            return
        self._shown = sheet
        self.page.clear()
        self.page.add(_bike_card(sheet))
        self.page.add(self._values_card("Dimensions", sheet, [(*each, "") for each in _DIMENSIONS]))
        self.page.add(self._values_card("Limits", sheet, _LIMITS))
        self.page.add(_fasteners_card(sheet))
        self.page.add(_rules_card(sheet.rules))

    def _values_card(
        self, title: str, sheet: Sheet, values: Sequence[tuple[str, str, str]]
    ) -> Card:
        rows: list[list[Cell]] = []
        for name, path, if_left_out in values:
            value = _value(sheet, path)
            if value is not None:
                source = sheet.sources.get(path) or _NO_SOURCE
                rows.append([(name, ""), (self._words(value), ""), (source, "")])
            elif if_left_out:
                rows.append([(name, ""), (if_left_out, ""), ("", "")])
            else:
                rows.append([(name, ""), ("missing", "attention"), ("", "")])
        return table_card(title, ("", "value", "source"), rows, (3, 3, 3))

    def _words(self, value: Quantity) -> str:
        """As typed, and in the preferred unit where that is another."""
        text = str(value).replace(" deg", "°")
        if value.dimension is LENGTH and not text.endswith(f" {self._show.length}"):
            return f"{text} ({self._show.show_length(value.value)})"
        return text


def torque_words(torque: TorqueSpecification | None) -> str:
    """A torque as the manual prints it: "21 to 25 N·m", "23 N·m ± 10 %"."""
    if torque is None:
        return _NO_TORQUE
    words = _range_words(torque.low, torque.high) or str(torque.nominal)
    if torque.tolerance is not None:
        words += f" ± {torque.tolerance}"
    also = torque.also_printed
    if also is not None:
        second = _range_words(also.low, also.high) or (str(also.nominal) if also.nominal else "")
        words += f" ({second})" if second else ""
    return words


def _range_words(low: Torque | None, high: Torque | None) -> str:
    if low is None or high is None:
        return ""
    low_number, _, low_unit = str(low).partition(" ")
    _, _, high_unit = str(high).partition(" ")
    return f"{low_number if low_unit == high_unit else low} to {high}"


def rule_words(rule: OrderRule) -> str:
    """What a rule of the maker's asks for, in words."""
    first, then = rule.first.replace("_", " "), rule.then.replace("_", " ")
    return _RULES.get(rule.kind, "{first}, then {then}").format(first=first, then=then)


def _bike_card(sheet: Sheet) -> Card:
    rows: list[list[Cell]] = [
        [("name", ""), (sheet.name, "") if sheet.name else ("missing", "attention")],
        [("fork", ""), (_FORKS[sheet.fork.kind], "")],
        [("handlebars", ""), (_HANDLEBARS[sheet.fork.handlebars], "")],
    ]
    if sheet.note:
        rows.append([("note", ""), (sheet.note, "")])
    return table_card("The bike", ("", ""), rows, (3, 6))


def _fasteners_card(sheet: Sheet) -> Card:
    title = "Fasteners"
    if not sheet.fasteners:
        card = Card(title)
        card.column.addWidget(wrapping("missing: no fasteners on the sheet", tone="attention"))
        return card
    headings = ("", "torque", "thread", "class", "thread condition", "source of the torque")
    rows = [_fastener_row(fastener) for fastener in sheet.fasteners]
    return table_card(title, headings, rows, (4, 4, 2, 2, 2, 4))


def _fastener_row(fastener: Fastener) -> list[Cell]:
    torque = fastener.torque
    source: Cell = ((torque.source or _NO_SOURCE) if torque else "", "")
    bolts = f", {fastener.bolts} bolts" if fastener.bolts > 1 else ""
    condition = fastener.thread_condition
    return [
        (f"{fastener.name}{bolts}", ""),
        (torque_words(torque), "" if torque else "attention"),
        _or_missing(fastener.thread),
        _or_missing(fastener.strength_class),
        _or_missing(condition.value if condition else None),
        source,
    ]


def _or_missing(text: str | None) -> Cell:
    return (text, "") if text else ("missing", "attention")


def _rules_card(rules: Sequence[OrderRule]) -> Card:
    title = "The maker's order"
    if not rules:
        card = Card(title)
        card.column.addWidget(wrapping("No rules of the maker's own: the usual order holds."))
        return card
    rows: list[list[Cell]] = [
        [(rule_words(rule), ""), (rule.because, ""), (rule.source or _NO_SOURCE, "")]
        for rule in rules
    ]
    return table_card(title, ("", "because", "source"), rows, (4, 6, 3))


def _value(sheet: Sheet, path: str) -> Quantity | None:
    part, field = path.split(".")
    found: Quantity | None = getattr(getattr(sheet, part), field)
    return found
