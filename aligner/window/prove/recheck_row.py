"""One fastener that is checked again: its tick, the value seen, and when it was done."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from aligner.assessment.rechecks import RecheckStanding
from aligner.drawing.theme import GAP, Theme
from aligner.job import LogEntry
from aligner.language import say
from aligner.sheet.quantities import Torque
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.measuring.guides import measured_by
from aligner.window.steps.seen_value import doubt, wanted_of
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.tick import Tick
from aligner.window.widgets.typed_line import FormLine


class RecheckRow(QWidget):
    """A tick with a value.

    Signals:
        ticked: key, the torque seen or `None`, the wrench.
        unticked: key.
    """

    ticked = Signal(str, object, str)
    unticked = Signal(str)

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self._standing: RecheckStanding | None = None
        self._agreed = ""
        self.tick = Tick("")
        self.tick.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.tick.setMinimumHeight(theme.px(34))
        self.value = FormLine(say("value seen on the wrench"), say("value seen"))
        self.value.setFixedWidth(theme.px(150))
        measured_by(self.value, "seen_torque")
        self.value.setMinimumHeight(theme.px(34))
        self.about = label("", "small", wraps=True)
        self.words = label("", "text", wraps=True, tone="attention")
        self.words.hide()
        line = QHBoxLayout()
        line.setSpacing(GAP)
        line.addWidget(self.tick, 1)
        line.addWidget(self.value)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        for part in (self.about, self.words):
            column.addWidget(part)
        column.insertLayout(0, line)
        self.tick.clicked.connect(self._clicked)
        self.value.went_on.connect(self._entered)
        self.value.escaped.connect(self._take_back)
        self.value.textEdited.connect(lambda _: self.say(""))

    @property
    def title(self) -> str:
        """What is checked."""
        return self._standing.title if self._standing is not None else ""

    def show_standing(self, standing: RecheckStanding) -> None:
        """Show where it stands; a value that is being typed stays."""
        was_done = self._standing is not None and self._standing.is_done
        is_other = self._standing is None or was_done != standing.is_done
        self._standing = standing
        self.tick.setText(standing.title)
        self.tick.setAccessibleName(standing.title)
        self.tick.setChecked(standing.is_done)
        if is_other:
            self.value.end_typing()
        if not self.value.is_being_typed:
            self.say("")
        self.value.show_kept(self._offer(standing))
        self.value.setVisible(not standing.is_done)
        self.value.setAccessibleName(say("value seen on {title}", title=standing.title))
        self.about.setText(self._about(standing))
        self.tick.setAccessibleDescription(self.about.text())

    def forget_typing(self) -> None:
        """Another job is opened: the value was seen on another fastener."""
        self._agreed = ""
        self.value.end_typing()

    def say(self, words: str) -> None:
        """Say why nothing was ticked, or ask before a value far out is kept."""
        self.words.setText(words)
        self.words.setVisible(bool(words))
        set_tone(self.value, "refused", "true" if words else "false")
        self.value.setAccessibleDescription(words)
        if not words:
            self._agreed = ""

    def _clicked(self) -> None:
        standing = self._standing
        if standing is None:
            return
        self.tick.setChecked(standing.is_done)  # the job says whether it is ticked
        if standing.is_done:
            self.unticked.emit(standing.key)
        else:
            self._tick(standing)

    def _entered(self) -> None:
        if self._standing is not None and not self._standing.is_done:
            self._tick(self._standing)

    def _tick(self, standing: RecheckStanding) -> None:
        try:
            seen = Torque.typed(self.value.text(), self._show.torque)
        except UnreadableQuantity as refusal:
            is_empty = not self.value.text().strip()
            self.say(
                say("Type the value seen.")
                if is_empty
                else say("Not understood: {why}.", why=refusal)
            )
            self.value.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        asked = self._doubt(standing, seen)
        if asked and self._agreed != self.value.text():
            self.say(f"{asked} {say('Type it over, or Enter once more to keep it.')}")
            self._agreed = self.value.text()
            return
        tool = standing.tool
        self.ticked.emit(standing.key, seen, tool.words if tool is not None else "")

    def _doubt(self, standing: RecheckStanding, seen: Torque) -> str:
        torque, tool = standing.torque, standing.tool
        if torque is None:
            return ""
        setting = tool.setting_nm if tool is not None else None
        goal = wanted_of(
            torque.target_nm, torque.low_nm, torque.high_nm, setting, self._offer(standing)
        )
        return doubt(seen, goal, self._show)

    def _take_back(self) -> None:
        self.value.fill(self._offer(self._standing) if self._standing else "")
        self.say("")
        self.tick.setFocus(Qt.FocusReason.OtherFocusReason)

    def _offer(self, standing: RecheckStanding) -> str:
        if standing.tool is not None and standing.tool.can_be_set:
            return standing.tool.setting_text
        return self._show.show_torque(standing.torque.target_nm) if standing.torque else ""

    def _about(self, standing: RecheckStanding) -> str:
        entry, torque, tool = standing.entry, standing.torque, standing.tool
        if entry is not None:
            return _checked_words(entry)
        if torque is None:
            return say("The torque is missing: take it from the maker's manual.")
        said = self._show.show_torque(torque.target_nm)
        if torque.low_nm < torque.high_nm:
            said = f"{said}, {self._show.show_torques(torque.low_nm, torque.high_nm)}"
        if tool is not None and tool.can_be_set:
            setting = say(
                "Set {setting} on the {wrench}.", setting=tool.setting_text, wrench=tool.words
            )
            return f"{said}. {setting}"
        return f"{said}."


def _checked_words(entry: LogEntry) -> str:
    """When it was checked, the torque seen and the wrench, where they were given."""
    at = f"{entry.at:%Y-%m-%d %H:%M}"
    torque, wrench = entry.torque, entry.wrench
    if torque and wrench:
        return say("Checked {at}, {torque} seen on {wrench}.", at=at, torque=torque, wrench=wrench)
    if torque:
        return say("Checked {at}, {torque} seen.", at=at, torque=torque)
    if wrench:
        return say("Checked {at} on {wrench}.", at=at, wrench=wrench)
    return say("Checked {at}.", at=at)
