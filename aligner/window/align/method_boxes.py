"""The boxes of one method of telling whether the legs lie in line.

The trap: each method reads something else, and what could not be read by one must not stand
in a box of another. So each has boxes of its own.
"""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from aligner.assessment.readings import mean_of
from aligner.drawing.theme import GAP, Theme
from aligner.geometry import Corner, Face
from aligner.job import InLineReadings
from aligner.language import marked, say
from aligner.sheet.quantities import Length, Quantity, SignedLength
from aligner.units.preferred import Preferred
from aligner.window.align.words import HINTS
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.tried_choice import TriedChoice

MOST_CELLS = 6

_CORNERS = (
    (None, marked("which corner?")),
    (Corner.UPPER_LEFT, marked("upper left")),
    (Corner.UPPER_RIGHT, marked("upper right")),
    (Corner.LOWER_LEFT, marked("lower left")),
    (Corner.LOWER_RIGHT, marked("lower right")),
)
_FACES = ((Face.FRONT, marked("on the front")), (Face.REAR, marked("on the rear")))
_CHOICES = (("corner", marked("corner that stands off")), ("face", marked("face of the tubes")))

#: The boxes of each method: field, name, kind of quantity, and whether it is read repeatedly.
_BOXES: dict[str, tuple[tuple[str, str, type[Quantity], bool], ...]] = {
    "plate": (
        ("gap", marked("gap"), Length, True),
        ("height", marked("height"), Length, False),
    ),
    "bars": (
        ("end_difference", marked("lower ahead +"), SignedLength, True),
        ("half_length", marked("half length"), Length, False),
        ("height", marked("height"), Length, False),
    ),
    "spread": (
        ("upper", marked("upper"), Length, True),
        ("lower", marked("lower"), Length, True),
        ("height", marked("height"), Length, False),
    ),
}

#: How each is measured.
_GUIDES = {
    "gap": "plate_gap",
    "height": "height_between",
    "end_difference": "bars",
    "half_length": "half_length",
    "upper": "widths",
    "lower": "widths",
}


class MethodBoxes(QWidget):
    """The boxes of one method, in the order Enter walks them.

    Signals:
        typed, kept: the fields that are other than they were.
        at: the field in which the keyboard is.
        went_on: Enter after the last of them.
    """

    typed = Signal(object)
    kept = Signal(object)
    at = Signal(str)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred, method: str) -> None:
        super().__init__()
        self._show = show
        self.method = method
        self.boxes: dict[str, ReadingBox] = {}
        self.choices: dict[str, TriedChoice] = {}
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP)
        for field, name, kind, is_repeated in _BOXES[method]:
            cells = 3 if is_repeated else 1
            box = ReadingBox(theme, say(name), kind, show.length, cells, _GUIDES[field])
            self.boxes[field] = box
            once = 2 if method == "spread" else 3  # two boxes of long readings want the room
            row.addWidget(box, 5 if is_repeated else once, Qt.AlignmentFlag.AlignTop)
            box.typed.connect(lambda r, field=field: self.typed.emit({field: _held(field, r)}))
            box.kept.connect(lambda r, field=field: self.kept.emit({field: _held(field, r)}))
        if method == "plate":
            self._add_choices(row)
        self._walk()

    def show_readings(
        self, readings: InLineReadings, troubles: dict[str, str], wanted: int = 0
    ) -> None:
        """Show what the job holds by this method, and what is wrong with it at its box.

        Args:
            readings: as the job holds them.
            troubles: why a field cannot be right, by its name.
            wanted: how many readings would settle it, where more than usual.
        """
        for field, box in self.boxes.items():
            held = getattr(readings, field)
            listed = held if isinstance(held, tuple) else (held,) if held is not None else ()
            mean = _mean(listed, self._show) if isinstance(held, tuple) else ""
            box.show_readings(listed, mean, cells=wanted if isinstance(held, tuple) else 0)
            box.say_trouble(troubles.get(field, "") if listed else "")
        for field, choice in self.choices.items():
            offered = _CORNERS if field == "corner" else _FACES
            choice.offer((value, say(words)) for value, words in offered)
            choice.show_value(getattr(readings, field))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() == QEvent.Type.FocusIn:
            self.at.emit(str(watched.property("field")))
        return super().eventFilter(watched, event)

    def _add_choices(self, row: QHBoxLayout) -> None:
        column = QVBoxLayout()
        column.setSpacing(4)
        for field, name in _CHOICES:
            choice = TriedChoice(say(name))
            self.choices[field] = choice
            choice.tried.connect(lambda value, field=field: self.typed.emit({field: value}))
            choice.chosen.connect(lambda value, field=field: self.kept.emit({field: value}))
            column.addWidget(choice)
        column.addStretch(1)
        row.addLayout(column, 5)

    def _walk(self) -> None:
        stops: dict[str, ReadingBox | TriedChoice] = {**self.boxes, **self.choices}
        for here, there in pairwise(stops.values()):
            here.went_on.connect(there.go_to_first_empty)
        list(stops.values())[-1].went_on.connect(self.went_on)
        for field, stop in stops.items():
            widgets = stop.cells if isinstance(stop, ReadingBox) else (stop,)
            for widget in widgets:
                widget.setToolTip(say(HINTS[f"{self.method}.{field}"]))
                widget.setProperty("field", field)
                widget.installEventFilter(self)


def _held(field: str, readings: tuple[Quantity, ...]) -> object:
    """What the job holds of a box: a list of readings, or the one length."""
    if field in ("height", "half_length"):
        return readings[0] if readings else None
    return readings


def _mean(readings: tuple[Quantity, ...], show: Preferred) -> str:
    mean = mean_of(readings, None)
    return (
        show.show_length(mean.value_mm, fine=1)
        if mean
        else say("not read", meaning="in place of a mean")
    )
