"""The foot of a list of steps: the one door through which a step is ticked or unticked.

The trap: there must be no second way. Out of order, a hold point that does not pass and an
untick each ask for a reason here; a value far out asks before it is kept; a hold point wants
its key held or pressed twice. Everything is asked in the line above, never in a dialog.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from PySide6.QtCore import QCoreApplication, QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent

from aligner.assessment import StepStanding, StepState
from aligner.drawing.theme import Theme
from aligner.language import marked, say
from aligner.sheet.quantities import Torque
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.steps.door_offer import (
    has_torque,
    is_same_standing,
    offered_value,
    offered_wrench,
)
from aligner.window.steps.door_row import DoorRow
from aligner.window.steps.seen_value import doubt, wanted
from aligner.window.widgets.hold_key import HoldKey

HOLD_ASKS = marked("Hold point: press Space once more to pass it, or keep it held. Look first.")
_STRAY = marked("Nothing was done: this step takes no reading.")
_WHY_UNTICKED = marked(
    "Why is it unticked? Both entries stay in the log. Undo takes a mistaken tick back alone."
)


@dataclass(frozen=True)
class Typed:
    """What was typed for a step and not acted on; "" where nothing was."""

    value: str = ""
    wrench: str = ""
    reason: str = ""


class TickDoor(DoorRow):
    """Value seen, wrench, reason, and the button.

    Signals:
        ticked: key of the step, the torque seen or `None`, the wrench, the reason or "".
        unticked: key of the step, the reason.
        went_on: there is nothing left to tick and the person goes on.
        list_wanted: the keyboard goes back to the list.
        back_wanted: back to the step in hand.
    """

    ticked = Signal(str, object, str, str)
    unticked = Signal(str, str)
    went_on = Signal()
    list_wanted = Signal()
    back_wanted = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(theme)
        self._show = show
        self._standing: StepStanding | None = None
        self._asked_about = ""
        self._typed: dict[str, Typed] = {}  # by the step's key
        self.hold_key = HoldKey(self)
        self._connect()

    def show_standing(self, standing: StepStanding | None, *, is_finished: bool) -> None:
        """Show what can be done with a step; `None` where none is chosen."""
        before, self._standing = self._standing, standing
        is_same = is_same_standing(before, standing)
        if not is_same:
            self._lay_by(before)
            self._forget()
            self.value.end_typing()
            self.wrench.end_typing()
        if not self.value.is_being_typed:
            self.mark_value("")
        self.value.show_kept(offered_value(standing, self._show))
        self.wrench.show_kept(offered_wrench(standing))
        if not is_same:
            typed = self._typed_for(standing)
            self.value.setText(typed.value or self.value.text())
            self.wrench.setText(typed.wrench or self.wrench.text())
        self.show_parts(standing, is_finished=is_finished)

    def lay_by(self) -> dict[str, Typed] | None:
        """What is typed and not acted on, by the step's key; a value with its unit."""
        self._lay_by(self._standing)
        named = {
            key: replace(typed, value=self._with_unit(typed.value))
            for key, typed in self._typed.items()
        }
        return named or None

    def take_up(self, laid_by: object) -> None:
        """Show what was typed into the door that stood here before."""
        if isinstance(laid_by, dict):
            standing, self._typed = self._standing, laid_by
            if standing is not None:
                self._standing = None
                self.show_standing(standing, is_finished=False)

    def begin_anew(self) -> None:
        """Another job was opened: nothing asked, nothing typed."""
        self._typed = {}
        self._take_back()

    def _lay_by(self, before: StepStanding | None) -> None:
        """Keep what was typed for a step that is left; it stands there again on return."""
        if before is None:
            return
        typed = Typed(
            self.value.text() if self.value.is_being_typed else "",
            self.wrench.text() if self.wrench.is_being_typed else "",
            self.reason.text(),
        )
        if any((typed.value, typed.wrench, typed.reason)):
            self._typed[before.step.key] = typed

    def _typed_for(self, standing: StepStanding | None) -> Typed:
        return self._typed.get(standing.step.key, Typed()) if standing is not None else Typed()

    def _with_unit(self, text: str) -> str:
        """A value typed without its unit means the one preferred when it was typed."""
        try:
            return Torque.typed(text, self._show.torque).said if text else ""
        except UnreadableQuantity:
            return text

    def _take_back(self) -> None:
        """Show the step as if nothing had been asked or typed."""
        self._forget()
        self.value.fill(offered_value(self._standing, self._show))
        self.wrench.fill(offered_wrench(self._standing))
        self.mark_value("")
        if self._standing is not None:
            self._typed.pop(self._standing.step.key, None)

    def act(self) -> None:
        """What Space, Enter and the button do; it asks first where it must."""
        standing = self._standing
        if self.words.text() == say(_STRAY):
            self.say("")
        if standing is None:
            self.went_on.emit()
            return
        if self.reason.isVisible():
            self._with_reason()
        elif standing.state is StepState.DONE:
            self._ask_reason(say(_WHY_UNTICKED))
        elif self._is_value_good():
            self._tick_or_ask(standing)

    def take_number(self, text: str) -> None:
        """A number typed at a step goes into the box for the value, where there is one."""
        if not self.value.isVisible():
            self.hold_key.drop()
            self.say(say(_STRAY))
            return
        self.value.setFocus(Qt.FocusReason.OtherFocusReason)
        self.value.selectAll()
        key = QKeyEvent(QEvent.Type.KeyPress, 0, Qt.KeyboardModifier.NoModifier, text)
        QCoreApplication.sendEvent(self.value, key)

    def let_go(self) -> None:
        """The key came up again."""
        self.hold_key.release()

    def leave(self) -> None:
        """Escape: take back what was asked and what was typed; nothing is ticked."""
        had_asked = bool(self.words.text()) or self.reason.isVisible()
        self._take_back()
        self.list_wanted.emit()
        if not had_asked:
            self.back_wanted.emit()

    def _tick_or_ask(self, standing: StepStanding) -> None:
        if standing.state is StepState.LATER:
            self._ask_reason(say("Out of order: say why. The reason is kept with the job."))
        elif standing.waits_for:
            self._ask_reason(
                say(
                    "It cannot pass: {reason}. To go on all the same, say why.",
                    reason=standing.waits_for,
                )
            )
        elif standing.step.kind == "hold":
            self.say(say(HOLD_ASKS))
            self.hold_key.press()
        else:
            self._tick("")

    def _with_reason(self) -> None:
        standing, reason = self._standing, self.reason.text().strip()
        if standing is None:
            return
        if not any(each.isalpha() for each in reason):  # a gauge's number is none
            self.say(say("Nothing was done: write a reason, or Escape to leave it."))
            self.reason.setFocus(Qt.FocusReason.OtherFocusReason)
        elif standing.state is StepState.DONE:
            self._take_back()
            self.unticked.emit(standing.step.key, reason)
        elif self._is_value_good():
            self._tick(reason)

    def _passed(self) -> None:
        """The hold point's key was held or pressed twice; what it stands on is looked at anew."""
        standing = self._standing
        if standing is None or standing.state is not StepState.NEXT or standing.waits_for:
            return
        if standing.step.kind == "hold":
            self._tick("")

    def _tick(self, reason: str) -> None:
        standing = self._standing
        if standing is None:
            return
        torque = self._torque() if has_torque(standing) else None
        wrench = self.wrench.text().strip() if torque is not None else ""
        self._take_back()
        self.ticked.emit(standing.step.key, torque, wrench, reason)

    def _torque(self) -> Torque:
        return Torque.typed(self.value.text(), self._show.torque)

    def _is_value_good(self) -> bool:
        """Whether the value typed can be kept; else it is said why, in place."""
        standing = self._standing
        if standing is None or not has_torque(standing):
            return True
        try:
            seen = self._torque()
        except UnreadableQuantity as refusal:
            if self.value.text().strip():
                said = say("The value seen was not understood: {refusal}.", refusal=refusal)
            elif standing.step.torque_missing:
                said = say("The torque is missing: type the one from the maker's manual.")
            else:
                said = say("Type the value seen.")
            self.say(said)
            self.mark_value(said)
            self.value.setFocus(Qt.FocusReason.OtherFocusReason)
            return False
        self.mark_value("")
        tool = standing.tool
        text = offered_value(standing, self._show)
        goal = wanted(standing.step, tool.setting_nm if tool else None, text)
        asked = doubt(seen, goal, self._show)
        if asked and not (self._asked_about == self.value.text() and self.reason.text().strip()):
            self._asked_about = self.value.text()
            self.say(f"{asked} {say('Type it over, or write the reason why it is kept.')}")
            self.mark_value(asked)
            self.reason.show()  # the keyboard stays: the value is more often wrong than meant
            return False
        return True

    def _ask_reason(self, words: str) -> None:
        self.say(words)
        if self._standing is not None and not self.reason.text():
            self.reason.setText(self._typed_for(self._standing).reason)
        self.reason.show()
        self.reason.setFocus(Qt.FocusReason.OtherFocusReason)

    def _forget(self) -> None:
        """Take every question back."""
        self.hold_key.drop()
        self._asked_about = ""
        self.reason.clear()
        self.reason.hide()
        self.say("")

    def _value_edited(self) -> None:
        if self._asked_about:
            self._asked_about = ""
            self.reason.hide()
        self.mark_value("")
        if not self.reason.isVisible():
            self.say("")

    def _clicked(self) -> None:
        self.act()
        self.let_go()

    def _connect(self) -> None:
        self.done.clicked.connect(self._clicked)
        for line in (self.value, self.wrench):
            line.went_on.connect(self._clicked)
        self.reason.went_on.connect(self._with_reason)
        for line in (self.value, self.wrench, self.reason):
            line.escaped.connect(self.leave)
        self.value.textEdited.connect(self._value_edited)
        self.hold_key.passed.connect(self._passed)
        self.hold_key.forgotten.connect(lambda: self.say(""))
