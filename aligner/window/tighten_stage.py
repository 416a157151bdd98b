"""The Tighten stage: the step in hand large, its bolts lit, the whole list beside it."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLineEdit,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from aligner.assessment import StepStanding, StepState
from aligner.drawing.theme import ROOM, Theme
from aligner.job.edits import with_heights_to_read_again, with_tick, with_untick
from aligner.sheet.quantities import Torque
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.bolt_card import BoltCard
from aligner.window.labels import Card, Caution, label, main_button, set_tone
from aligner.window.open_job import OpenJob
from aligner.window.step_words import big_words, hold_words, pass_marks, range_words, row_words


class StepList(QListWidget):
    """The whole list; Space or Enter acts on the step that is chosen in it."""

    acted = Signal()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if not event.isAutoRepeat():
                self.acted.emit()
        else:
            super().keyPressEvent(event)


class TightenStage(QWidget):
    """The ordered checklist.

    Signals:
        heights_wanted: the heights are to be read again, on the Align stage.
        finished: the list is done and the person goes on.
    """

    heights_wanted = Signal()
    finished = Signal()

    def __init__(
        self,
        open_job: OpenJob,
        theme: Theme,
        show: Preferred,
        now: Callable[[], datetime],
    ) -> None:
        super().__init__()
        self._open_job = open_job
        self._show = show
        self._now = now
        self._shown_key = ""
        self._card = Card()
        self._card.setProperty("inHand", True)
        self._card.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Ignored)
        self._big = label("", "huge")
        self._range = label("", "quiet", wraps=True)
        self._passes = label("", "strong", wraps=True)
        self._hold = label("", "strong", wraps=True)
        self._caution = Caution()
        self.torque_typed = QLineEdit()
        self.torque_typed.setAccessibleName("torque from the maker's manual")
        self.torque_typed.setPlaceholderText(f"torque from the manual, {show.torque}")
        self._entry = label("", "small", wraps=True)
        for widget in (
            self._big,
            self._range,
            self._passes,
            self._hold,
            self.torque_typed,
            self._caution,
            self._entry,
        ):
            self._card.column.addWidget(widget)
        self._card.column.addStretch(1)
        self.list = StepList()
        self.list.setAccessibleName("tightening list")
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.bolts = BoltCard(theme)
        self.reason = QLineEdit()
        self.reason.setAccessibleName("reason")
        self.reason.hide()
        self._refusal = label("", "text", wraps=True, tone="attention")
        self.done = main_button("Done   Space")
        self.read_again = QPushButton("Read the heights again")
        self._lay_out()
        self.list.currentRowChanged.connect(self._chosen)
        self.list.acted.connect(self._act)
        self.done.clicked.connect(self._act)
        self.reason.returnPressed.connect(self._act_with_reason)
        self.torque_typed.returnPressed.connect(self._act)
        self.read_again.clicked.connect(self._read_again)

    def sentence(self) -> tuple[str, str, str]:
        """The step in hand, and why it stands where it stands."""
        tightening = self._open_job.assessment.tightening
        standing = self._standing()
        if standing is None or (tightening.is_finished and not self._is_looking_back()):
            if tightening.steps:
                return "Everything is done up.", "Go on to Prove: brakes first.", ""
            text = tightening.notices[0].text if tightening.notices else ""
            return "There is nothing to tighten.", text or "The sheet lists no fasteners.", ""
        return standing.step.title + ".", standing.step.reason, ""

    def refresh(self) -> None:
        """Show the list as it is now, with the step in hand chosen."""
        tightening = self._open_job.assessment.tightening
        rows = [row_words(each, self._show) for each in tightening.steps]
        self.list.blockSignals(True)
        if self.list.count() != len(rows):
            self.list.clear()
            self.list.addItems(rows)
        for place, (row, each) in enumerate(zip(rows, tightening.steps, strict=True)):
            item: QListWidgetItem = self.list.item(place)
            item.setText(row)
            state = each.state.value
            item.setData(Qt.ItemDataRole.AccessibleTextRole, f"{each.step.title}, {state}")
        keys = [each.step.key for each in tightening.steps]
        if self._shown_key in keys:
            self.list.setCurrentRow(keys.index(self._shown_key))
        else:
            self._go_to_next()
            if self._shown_key in keys:
                self.list.setCurrentRow(keys.index(self._shown_key))
        self.list.blockSignals(False)
        self._show_step()

    def begin(self) -> None:
        """Choose the step in hand and put the keyboard on the list."""
        self._go_to_next()
        self.refresh()
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _lay_out(self) -> None:
        left = QVBoxLayout()
        left.setSpacing(ROOM)
        left.addWidget(self._card, 3)
        left.addWidget(self.list, 2)
        cards = QHBoxLayout()
        cards.setSpacing(ROOM)
        cards.addLayout(left, 11)
        cards.addWidget(self.bolts, 10)
        foot = QHBoxLayout()
        foot.addWidget(self.reason, 1)
        foot.addStretch(0)
        foot.addWidget(self.read_again)
        foot.addWidget(self.done)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(ROOM)
        column.addLayout(cards, 1)
        column.addWidget(self._refusal)
        column.addLayout(foot)

    def _standing(self) -> StepStanding | None:
        steps = self._open_job.assessment.tightening.steps
        return next((each for each in steps if each.step.key == self._shown_key), None)

    def _is_looking_back(self) -> bool:
        steps = self._open_job.assessment.tightening.steps
        return bool(steps) and self._shown_key != steps[-1].step.key

    def _go_to_next(self) -> None:
        tightening = self._open_job.assessment.tightening
        standing = tightening.next_step
        if standing is None and tightening.steps:
            standing = tightening.steps[-1]
        self._shown_key = standing.step.key if standing else ""

    def _chosen(self, row: int) -> None:
        steps = self._open_job.assessment.tightening.steps
        if 0 <= row < len(steps):
            self._shown_key = steps[row].step.key
            self._ask_no_reason()
            self._show_step()
            self._open_job.look_changed.emit()

    def _show_step(self) -> None:
        job, assessment = self._open_job.job, self._open_job.assessment
        standing = self._standing()
        self.bolts.show_step(job, assessment, standing)
        for widget in (self._card, self.list, self.done):
            widget.setVisible(standing is not None)
        if standing is None:
            self.read_again.hide()
            return
        step = standing.step
        self._big.setText(big_words(step, self._show))
        self._range.setText(range_words(job, step, self._show))
        self._passes.setText(pass_marks(assessment.tightening.steps, step))
        said = hold_words(assessment, standing, self._show) if step.kind == "hold" else ""
        self._hold.setText(said)
        set_tone(self._hold, "tone", "attention" if standing.waits_for else "")
        self._caution.say(step.caution)
        self.torque_typed.setVisible(step.torque_missing and standing.state is not StepState.DONE)
        entry = standing.entry
        if entry is None:
            self._entry.setText("")
        else:
            torque = f" at {entry.torque}" if entry.torque else ""
            reason = f", out of order: {entry.reason}" if entry.reason else ""
            self._entry.setText(f"Done {entry.at:%Y-%m-%d %H:%M}{torque}{reason}")
        self._range.setVisible(bool(self._range.text()))
        self._passes.setVisible(bool(self._passes.text()))
        self._hold.setVisible(bool(said))
        self.read_again.setVisible(step.kind == "hold" and bool(standing.waits_for))
        is_done = standing.state is StepState.DONE
        all_done = assessment.tightening.is_finished
        self.done.setText(
            "Go on to Prove   Enter"
            if all_done and not self._is_looking_back()
            else "Untick   Space"
            if is_done
            else "Done   Space"
        )
        if not self.reason.isVisible():
            self._refusal.setText("")

    def _act(self) -> None:
        standing = self._standing()
        tightening = self._open_job.assessment.tightening
        if standing is None:
            return
        if tightening.is_finished and not self._is_looking_back():
            self.finished.emit()
        elif standing.state is StepState.DONE:
            self._ask_reason("Why is it unticked? Both entries stay in the log.")
        elif standing.state is StepState.LATER:
            self._ask_reason("Out of order: say why. The reason is kept with the job.")
        elif standing.waits_for:
            self._ask_reason(
                f"The hold point cannot pass: {standing.waits_for}. To go on all the same, say why."
            )
        else:
            self._tick(standing, "")

    def _act_with_reason(self) -> None:
        standing = self._standing()
        reason = self.reason.text().strip()
        if standing is None:
            return
        if not reason:
            self._refusal.setText("Nothing was done: write a reason, or Escape to leave it.")
            return
        if standing.state is StepState.DONE:
            self._ask_no_reason()
            self._open_job.edit(
                f"untick {standing.step.title}",
                lambda job: with_untick(job, standing.step.key, self._now(), reason),
            )
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._tick(standing, reason)

    def _tick(self, standing: StepStanding, reason: str) -> None:
        step = standing.step
        torque: Torque | None = None
        if step.torque_missing:
            try:
                torque = Torque.typed(self.torque_typed.text(), self._show.torque)
            except UnreadableQuantity as refusal:
                self._refusal.setText(f"The torque is missing: {refusal}.")
                self.torque_typed.setFocus(Qt.FocusReason.OtherFocusReason)
                return
        elif step.target_nm is not None:
            torque = Torque.typed(f"{step.target_nm:.4g} N·m")
        self._ask_no_reason()
        self.torque_typed.clear()
        self._shown_key = ""
        self._open_job.edit(
            step.title,
            lambda job: with_tick(job, step.key, self._now(), torque=torque, reason=reason),
        )
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _ask_reason(self, words: str) -> None:
        self._refusal.setText(words)
        self.reason.setPlaceholderText("reason, then Enter")
        self.reason.show()
        self.reason.setFocus(Qt.FocusReason.OtherFocusReason)

    def _ask_no_reason(self) -> None:
        self.reason.clear()
        self.reason.hide()
        self._refusal.setText("")

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape and self.reason.isVisible():
            self._ask_no_reason()
            self.list.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            super().keyPressEvent(event)

    def _read_again(self) -> None:
        self._open_job.edit(
            "heights to read again", lambda job: with_heights_to_read_again(job, self._now())
        )
        self.heights_wanted.emit()
