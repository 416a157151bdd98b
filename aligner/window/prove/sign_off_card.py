"""The card on which a job is signed off, or is said, in words, not to be ready for it."""

from __future__ import annotations

from datetime import date

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QPushButton, QWidget

from aligner.drawing.theme import ROOM, Theme
from aligner.job import SignOff
from aligner.language import say
from aligner.window.widgets.labels import Card, label, main_button, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.typed_line import TypedLine
from aligner.window.widgets.wrapping_row import WrappingRow


class SignOffCard(Card):
    """A name, a date and the button; once signed, who signed and when.

    The button is never greyed: pressed too early, it says what is open.

    Signals:
        asked: the button was pressed, before anything is decided.
        signed: the name of who signs; nothing is open.
        opened_again: the sign-off is taken back.
    """

    asked = Signal()
    signed = Signal(str)
    opened_again = Signal()

    def __init__(self, theme: Theme) -> None:
        super().__init__(say("Sign-off"))
        self._open = ""
        self._signed: SignOff | None = None
        self._was_refused = False
        self.name = TypedLine(say("Name for the sign-off"), say("name of who did the work"))
        self.name.setMinimumWidth(theme.px(260))
        self.on = label("")
        self.button = main_button(say("Sign off"))
        self.who = label("", "value", wraps=True)
        self.who.setMinimumWidth(theme.px(260))
        self.open_again = QPushButton(say("Open again"))
        for button in (self.button, self.open_again):
            button.setAccessibleName(button.text())
        line = WrappingRow(spacing=ROOM)
        for widget in (self.name, self.on, self.button):
            line.add(widget)
        line.add(self.who, 1)
        line.add(self.open_again)
        self.refusal = wrapping("")
        self.column.addLayout(line)
        self.column.addWidget(self.refusal)
        self.name.went_on.connect(self._sign)
        self.name.textEdited.connect(lambda _: self._show())
        self.button.clicked.connect(self._sign)
        self.open_again.clicked.connect(self._open_again)

    def show_sign_off(self, signed: SignOff | None, what_is_open: str, today: date) -> None:
        """Show who signed, or what keeps the job from being signed ("" if nothing does)."""
        self._signed, self._open = signed, what_is_open
        self.on.setText(say("on {day}", day=today))
        self._show()

    def forget_typing(self) -> None:
        """Empty the line: the name was typed under another job."""
        self.name.clear()

    def lay_by(self) -> str | None:
        """The name that is typed and not signed with."""
        return self.name.text() or None

    def take_up(self, laid_by: object) -> None:
        """Show the name that was typed into the page that stood here before."""
        if isinstance(laid_by, str):
            self.name.type_in(laid_by)

    def _show(self) -> None:
        before: tuple[QWidget, ...] = (self.name, self.on, self.button)
        after: tuple[QWidget, ...] = (self.who, self.open_again)
        for widget in (*before, *after):
            widget.setVisible((widget in after) == (self._signed is not None))
        text = self._refusal_words()
        if self._signed is not None:
            self.who.setText(
                say("Signed off by {name} on {day}", name=self._signed.name, day=self._signed.on)
            )
            text = ""
            if self._open:
                text = say("It no longer holds: {why}. Open it again.", why=self._open)
        self._was_refused = self._was_refused and bool(text)
        self.refusal.setText(text)
        self.refusal.setVisible(bool(text))
        self.refusal.setAccessibleName(text)
        is_grave = self._was_refused or (self._signed is not None and bool(text))
        set_tone(self.refusal, "tone", "attention" if is_grave else "")

    def _refusal_words(self) -> str:
        if self._open:
            return say("It cannot be signed off yet: {why}.", why=self._open)
        if not self.name.text().strip():
            return say("Nobody signs yet: give the name of who did the work.")
        return ""

    def _sign(self) -> None:
        self.asked.emit()
        if self._refusal_words():
            self._was_refused = True
            self._show()
            return
        self.signed.emit(self.name.text())
        self.open_again.setFocus(Qt.FocusReason.OtherFocusReason)

    def _open_again(self) -> None:
        self.opened_again.emit()
        self.name.setFocus(Qt.FocusReason.OtherFocusReason)
