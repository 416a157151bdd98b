"""The card on which the legs are checked for lying in line: by plate, by bars or by widths.

The trap: another method must not take away what was read by the one before. Each method has
boxes of its own, and the job keeps the readings of those not in use.
"""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from aligner.assessment import Assessment
from aligner.drawing.theme import Theme
from aligner.job import Job, PlateReadings
from aligner.job.edits_align import readings_by
from aligner.language import marked, say
from aligner.units.preferred import Preferred
from aligner.window.align.method_boxes import MOST_CELLS, MethodBoxes
from aligner.window.align.words import HINTS, METHODS, readings_kept
from aligner.window.widgets.labels import Card, label, set_tone
from aligner.window.widgets.part_stack import PartStack
from aligner.window.widgets.pictures import in_line_words
from aligner.window.widgets.reading_box import ReadingBox
from aligner.window.widgets.tried_choice import TriedChoice

#: The name of the undoable step that changes a field.
_STEPS = {
    "gap": marked("gap at the plate"),
    "corner": marked("corner that stands off"),
    "face": marked("face the plate lies on"),
    "end_difference": marked("end difference of the bars"),
    "half_length": marked("half length of the bars"),
    "upper": marked("upper width"),
    "lower": marked("lower width"),
    "height": marked("height in line"),
}
_NOTHING_READ = PlateReadings(method="plate")


class InLineCard(Card):
    """Whether the legs lie in line, by one of three methods.

    Signals:
        typed: the method and fields of its readings, while they are being typed.
        kept: name of the step and the same, once they are left.
        method_tried, method_kept: another method.
        went_on: Enter after the last entry.
    """

    typed = Signal(str, object)
    kept = Signal(str, str, object)
    method_tried = Signal(object)
    method_kept = Signal(object)
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self._theme = theme
        self.method = TriedChoice(say("how the legs are checked for lying in line"))
        self.column.setContentsMargins(theme.px(14), theme.px(8), theme.px(14), theme.px(8))
        self.column.setSpacing(theme.px(6))
        head = QHBoxLayout()
        head.addWidget(label(say("In line, by"), "strong"))
        head.addWidget(self.method, 1)
        self.column.addLayout(head)
        self._words = ""
        self._by_method: dict[str, MethodBoxes] = {}
        self._stack = PartStack()
        self.column.addWidget(self._stack)
        self._verdict = label("", "strong", wraps=True)
        self.column.addWidget(self._verdict)
        self.method.tried.connect(self.method_tried)
        self.method.chosen.connect(self.method_kept)
        self.method.went_on.connect(self.go_to_first_box)
        self._present = self._boxes_of("plate")
        self._hint = HINTS["plate"]

    @property
    def boxes(self) -> dict[str, ReadingBox]:
        """The boxes of the method in use, by field."""
        return self._present.boxes

    @property
    def choices(self) -> dict[str, TriedChoice]:
        """The choices of the method in use, by field."""
        return self._present.choices

    @property
    def verdict_words(self) -> str:
        """What is said under the boxes: the verdict, or what to read where."""
        return self._verdict.text()

    def go_to_first_box(self) -> None:
        """Put the keyboard where the next reading is wanted."""
        next(iter(self.boxes.values())).go_to_first_empty()

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        cells = (cell for box in self.boxes.values() for cell in box.cells)
        return [self.method, *cells, *self.choices.values()]

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show a job's readings by the method in use, and what follows from them."""
        found = assessment.in_line
        readings = job.align.in_line
        method = readings.method if readings else "plate"
        others = job.align.in_line_others
        kept: dict[str, int] = {other.method: readings_by(other) for other in others}
        self.method.offer(
            (name, f"{say(words)}{readings_kept(kept.get(name, 0))}")
            for name, words in METHODS.items()
        )
        self.method.show_value(method)
        self._show_method(method)
        troubles = {}
        if found.geometry is None:
            for notice in found.notices:
                troubles[notice.where.removeprefix("align.in_line.")] = notice.text
        is_of_these = found.is_convergence == (method == "spread")
        wanted = found.advice.readings_needed if found.advice and is_of_these else None
        self._present.show_readings(
            readings or _NOTHING_READ, troubles, min(wanted or 0, MOST_CELLS)
        )
        self._words = in_line_words(found, self._show) if found.geometry or found.notices else ""
        if any(box.trouble == self._words for box in self.boxes.values()):
            self._words = ""
        self._say()
        set_tone(self._verdict, "tone", "attention" if found.verdict.value == "out" else "")

    def _boxes_of(self, method: str) -> MethodBoxes:
        if method not in self._by_method:
            made = MethodBoxes(self._theme, self._show, method)
            made.typed.connect(lambda changes: self.typed.emit(method, changes))
            made.kept.connect(
                lambda changes: self.kept.emit(say(_STEPS[next(iter(changes))]), method, changes)
            )
            made.at.connect(lambda field: self._hint_at(f"{method}.{field}"))
            made.went_on.connect(self.went_on)
            self._by_method[method] = made
            self._stack.addWidget(made)
        return self._by_method[method]

    def _hint_at(self, field: str) -> None:
        self._hint = HINTS[field]
        self._say()

    def _say(self) -> None:
        """The verdict, or what is missing for it; before any reading, what to read where."""
        self._verdict.setText(self._words or say(self._hint))
        set_tone(self._verdict, "typeSize", "strong" if self._words else "small")

    def _show_method(self, method: str) -> None:
        boxes = self._boxes_of(method)
        if boxes is not self._present:
            self._present = boxes
            self._hint = HINTS[method]
        self._stack.setCurrentWidget(boxes)
