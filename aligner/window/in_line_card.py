"""The card on which the legs are checked for lying in line, by a plate across both tubes."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QComboBox, QHBoxLayout

from aligner.assessment import Assessment
from aligner.drawing.theme import Theme
from aligner.geometry import Corner
from aligner.job import Job, PlateReadings
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred
from aligner.window.labels import Card, label, set_tone
from aligner.window.pictures import in_line_words
from aligner.window.reading_box import ReadingBox

_CORNERS = (
    (None, "which corner stands off?"),
    (Corner.UPPER_LEFT, "upper left"),
    (Corner.UPPER_RIGHT, "upper right"),
    (Corner.LOWER_LEFT, "lower left"),
    (Corner.LOWER_RIGHT, "lower right"),
)


class CornerChoice(QComboBox):
    """Which corner of the plate stands off; the mouse wheel never changes it."""

    def wheelEvent(self, event: object) -> None:
        """Leave the choice alone: a wheel turned over it is meant for the page."""


class InLineCard(Card):
    """The gap under a plate, its corner, and what follows.

    Signals:
        changed: what was typed or chosen, as fields of the plate readings, once it is left.
        typed: the same while it is being typed.
        went_on: Enter after the last entry.
    """

    changed = Signal(dict)
    typed = Signal(dict)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self.column.addWidget(label("In line, by a plate across both tubes", "strong"))
        self.gap = ReadingBox(theme, "gap", Length, show.length)
        self.height_box = ReadingBox(theme, "plate height", Length, show.length, cells=1)
        self.corner = CornerChoice()
        self.corner.setAccessibleName("corner that stands off")
        for corner, words in _CORNERS:
            self.corner.addItem(words, corner)
        row = QHBoxLayout()
        row.addWidget(self.gap, 3, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self.height_box, 2, Qt.AlignmentFlag.AlignTop)
        self.column.addLayout(row)
        self._verdict = label("", "strong", wraps=True)
        under = QHBoxLayout()
        under.addWidget(self._verdict, 3)
        under.addWidget(self.corner, 2)
        self.column.addLayout(under)
        self.gap.typed.connect(lambda readings: self.typed.emit({"gap": readings}))
        self.gap.kept.connect(lambda readings: self.changed.emit({"gap": readings}))
        self.height_box.typed.connect(lambda readings: self.typed.emit(_height(readings)))
        self.height_box.kept.connect(lambda readings: self.changed.emit(_height(readings)))
        self.corner.activated.connect(
            lambda _: self.changed.emit({"corner": self.corner.currentData()})
        )
        self.gap.went_on.connect(self.height_box.go_to_first_empty)
        self.height_box.went_on.connect(lambda: self.corner.setFocus(Qt.FocusReason.TabFocusReason))

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show a job's plate readings and what follows from them."""
        found = assessment.in_line
        readings = job.align.in_line
        plate = readings if isinstance(readings, PlateReadings) else None
        gaps = plate.gap if plate else ()
        mean = "not read"
        if found.judged is not None and plate is not None and gaps:
            mean = self._show.show_length(assessment.plate_gap_mm or 0.0, fine=1)
        self.gap.show_readings(gaps, mean)
        height = (plate.height,) if plate and plate.height else ()
        self.height_box.show_readings(height, height[0].text if height else "not read")
        place = self.corner.findData(plate.corner if plate else None)
        self.corner.setCurrentIndex(max(place, 0))
        self._verdict.setText(in_line_words(found, self._show))
        set_tone(self._verdict, "tone", "attention" if found.verdict.value == "out" else "")


def road_words(assessment: Assessment, show: Preferred) -> str:
    """What the heights as they stand do on the road."""
    found = assessment.steering
    parts = []
    if found.axle_lean_deg is not None:
        parts.append(f"axle leans {abs(found.axle_lean_deg):.2f}°")
    if found.patch_shift_mm is not None:
        way = "left" if found.patch_shift_mm > 0 else "right"
        parts.append(f"tyre patch {show.show_length(abs(found.patch_shift_mm))} to the {way}")
    if found.now is not None:
        parts.append(
            f"rake {found.now.rake_deg:.2f}°, trail {show.show_length(found.now.trail_mm)}"
        )
    return "On the road as it stands: " + ", ".join(parts) + "." if parts else ""


def _height(readings: tuple[Length, ...]) -> dict[str, Length | None]:
    return {"height": readings[0] if readings else None}
