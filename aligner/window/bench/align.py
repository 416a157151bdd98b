"""The Align stage from three metres: one reading asked for at a time, or what is to be moved.

The trap: a gauge types its number and Enter wherever the keyboard is. The number goes into the
box whose name is on the screen, and its Enter never does anything else.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QKeySequence
from PySide6.QtWidgets import QHBoxLayout, QWidget

from aligner.assessment import Subject
from aligner.assessment.asked_reading import (
    ReadingPlace,
    asked_reading,
    last_reading,
    with_reading,
)
from aligner.drawing.theme import GAP
from aligner.gauging import Verdict
from aligner.job.edits_align import has_readings, with_attempt_closed
from aligner.language import begun, marked, say
from aligner.sheet.quantities import Quantity
from aligner.units import UnreadableQuantity
from aligner.window.bench.drawing import BenchDrawing
from aligner.window.bench.panel import BenchPanel
from aligner.window.bench.words import BenchWords
from aligner.window.setting import Setting
from aligner.window.widgets.labels import set_tone
from aligner.window.widgets.pictures import height_words, in_line_words, square_words
from aligner.window.widgets.typed_line import ValueLine

_STRAY = marked("No reading is asked for now: nothing was kept.")


class BenchCell(ValueLine):
    """Where a gauge types; undo reaches the job while nothing is being typed."""

    def event(self, event: QEvent) -> bool:
        if (
            event.type() == QEvent.Type.ShortcutOverride
            and isinstance(event, QKeyEvent)
            and event.matches(QKeySequence.StandardKey.Undo)
            and not self.text()
        ):
            event.ignore()
            return False
        return super().event(event)


class BenchAlign(QWidget):
    """The drawing, and beside it the box that is asked for.

    Signals:
        finished: nothing is left to correct and the person goes on.
    """

    finished = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme = setting.theme
        self._open_job = setting.open_job
        self._show = setting.show
        self._now = setting.now
        self.drawing = BenchDrawing(theme, setting.show)
        self.panel = BenchPanel(say("reading in hand"))
        self.name = BenchWords(theme, 56)
        self.value = BenchWords(theme, 110)
        self.refusal = BenchWords(theme, 34, role="attention")
        self.verdict = BenchWords(theme, 34, bold=False)
        self.last = BenchWords(theme, 30, role="quiet", bold=False)
        self.cell = BenchCell(say("reading"))
        self.cell.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        self.cell.setProperty("typeSize", "sentence")
        self.cell.setMinimumHeight(theme.px(52))
        for words, share in (
            (self.name, 20),
            (self.value, 26),
            (self.refusal, 24),
            (self.verdict, 14),
        ):
            self.panel.column.addWidget(words, share)
        self.panel.column.addWidget(self.cell)
        self.panel.column.addWidget(self.last, 8)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(theme.px(GAP))
        row.addWidget(self.drawing, 11)
        row.addWidget(self.panel, 10)
        self.cell.textEdited.connect(lambda _: self._say_typed())
        self.cell.went_on.connect(self._enter)
        self.cell.left.connect(self._keep)
        self.panel.acted.connect(self._act)
        self.panel.strayed.connect(lambda _: self.refusal.say(say(_STRAY)))
        setting.open_job.started.connect(self._forget_typing)

    @property
    def asked(self) -> ReadingPlace | None:
        """The length that is asked for now."""
        job, assessment = self._open_job.job, self._open_job.assessment
        return asked_reading(job, assessment, self._corrected)

    def sentence(self) -> tuple[str, str, str]:
        """What to do now, its detail, and the caution that belongs to it."""
        found = self._open_job.assessment.correction(self._show)
        asked = self.asked
        if asked is not None and asked.subject is not found.subject:
            return say("Go on reading: {name}.", name=asked.name), say("As often as the left."), ""
        return found.sentence, found.detail, found.caution

    def refresh(self) -> None:
        """Show the job as it is now."""
        job, assessment = self._open_job.job, self._open_job.assessment
        asked, had_keyboard = self.asked, self.cell.hasFocus() or self.panel.hasFocus()
        pair = asked.pair if asked else self._leading_pair()
        self.drawing.show_job(job, assessment, self._subject, pair)
        self.cell.setVisible(asked is not None)
        self.panel.takes_keyboard(asked is None)
        if asked is not None:
            self.name.say(begun(asked.asked_words))
            self.cell.setAccessibleName(asked.asked_words)
            self.cell.setPlaceholderText(self._show.length)
        else:
            self.name.say(self._next_words())
        self.verdict.say(self._verdict_words() if asked is None else "")
        taken = last_reading(job, assessment, asked, self._subject)
        said = ""
        if taken is not None:
            said = say("Kept: {name}, {reading}", name=taken[0], reading=taken[1].said)
        self.last.say("" if asked is None and self._subject is Subject.NOTHING else said)
        self._say_typed()
        if had_keyboard:
            self.begin()

    def begin(self) -> None:
        """Put the keyboard into the box that is asked for, or where Enter goes on."""
        place: QWidget = self.cell if self.asked is not None else self.panel
        place.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def _corrected(self) -> Subject:
        return self._open_job.assessment.correction(self._show).subject

    @property
    def _subject(self) -> Subject:
        """What is read now, or else what is corrected."""
        asked = self.asked
        return asked.subject if asked is not None else self._corrected

    def _leading_pair(self) -> int:
        found = self._open_job.assessment.squaring
        for place, pair in enumerate(found.pairs):
            if found.disagree and pair.name == found.odd_pair:
                return place
        leading = found.leading_pair
        return found.pairs.index(leading) if leading is not None else 0

    def _next_words(self) -> str:
        if self._subject is Subject.NOTHING:
            return say("Enter: go on to Tighten")
        assessment = self._open_job.assessment
        if self._subject is Subject.SQUARING and not assessment.squaring.pairs:
            return say("Escape, then add a pair of points on the Align page")
        if self._subject is Subject.IN_LINE and assessment.in_line.geometry is None:
            return say("Escape, then give what is missing on the Align page")
        if self._verdict is Verdict.OUT:
            return say("Moved and held? Enter: measure again")
        return say("Enter: measure again")

    @property
    def _verdict(self) -> Verdict:
        found = self._open_job.assessment
        return {
            Subject.PROTRUSION: found.protrusion.verdict,
            Subject.SQUARING: found.squaring.verdict,
            Subject.IN_LINE: found.in_line.verdict,
        }.get(self._subject, Verdict.WITHIN)

    def _verdict_words(self) -> str:
        found = self._open_job.assessment
        match self._subject:
            case Subject.PROTRUSION:
                return begun(height_words(found.protrusion, self._show))
            case Subject.SQUARING:
                return begun(square_words(found.squaring, self._show))
            case Subject.IN_LINE:
                return begun(in_line_words(found.in_line, self._show))
            case Subject.NOTHING:
                return ""

    def _understood(self) -> tuple[Quantity | None, str]:
        """The reading in the cell, or why it cannot be read."""
        asked, text = self.asked, self.cell.text().strip()
        if asked is None or not text:
            return None, ""
        try:
            return asked.kind.typed(text, self._show.length), ""
        except UnreadableQuantity as refusal:
            return None, str(refusal)

    def _say_typed(self) -> None:
        reading, refusal = self._understood()
        set_tone(self.cell, "refused", "true" if refusal else "false")
        self.cell.setAccessibleDescription(refusal)
        self.refusal.say(begun(refusal))
        said = reading.said if reading is not None else ""
        if reading is not None and not said.endswith(f" {self._show.length}"):
            said = f"{said}\n= {self._show.show_length(reading.value, fine=1)}"
        self.value.say(said)

    def _enter(self) -> None:
        """The gauge's Enter: what can be read is kept, what cannot stays where it was typed."""
        self._keep()

    def _keep(self) -> None:
        asked = self.asked
        reading, _ = self._understood()
        if asked is None or reading is None:
            return
        self.cell.setText("")
        self._open_job.edit(
            asked.step_name, lambda job: with_reading(job, asked, reading, self._now())
        )

    def _act(self) -> None:
        if self._subject is Subject.NOTHING:
            self.finished.emit()
        elif self.asked is None and has_readings(self._open_job.job.align):
            self._open_job.edit(
                say("measure again"), lambda job: with_attempt_closed(job, self._now())
            )

    def _forget_typing(self) -> None:
        self.cell.setText("")
