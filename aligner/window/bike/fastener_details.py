"""The opened part of a fastener's row: everything that the manual may say of it besides."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QVBoxLayout, QWidget

from aligner.drawing.theme import GAP, ROOM
from aligner.fastening.joints import joint_kinds
from aligner.language import marked, say, written
from aligner.sheet import Pattern, Side, ThreadCondition
from aligner.window.bike.boxes import HEIGHT, ValueBox
from aligner.window.bike.fastener_boxes import FastenerBoxes
from aligner.window.bike.words import NO_TORQUE, torque_understood
from aligner.window.widgets.choice import Choice, Row
from aligner.window.widgets.folding_grid import FoldingGrid, titled
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.wrapping_row import WrappingRow

_CONDITIONS = {
    None: marked("not given"),
    ThreadCondition.DRY: marked("dry"),
    ThreadCondition.OILED: marked("oiled"),
    ThreadCondition.GREASED: marked("greased"),
    ThreadCondition.LOCKED: marked("locked"),
}
_PATTERNS = {
    Pattern.ALTERNATING: marked("alternating"),
    Pattern.CROSSWISE: marked("crosswise"),
}
#: Boxes of the opened row: the field, its name, what may be typed.
_BOXES = (
    ("name", marked("name"), marked("as the checklist calls it")),
    ("bolts", marked("bolts"), "1"),
    ("strength_class", marked("strength class"), marked("8.8, or aluminium")),
    ("passes", marked("passes, shares of the torque"), marked("the usual ones")),
    ("again_after", marked("again after, on the road"), marked("e.g. 100 km")),
    ("note", marked("note"), marked("what the manual says beside it")),
)
_STEM_NUT = (
    ("seating", marked("seating torque"), marked("as printed, with its unit")),
    ("seating_source", marked("seating torque, source"), marked("manual page")),
    ("back_off", marked("back off"), marked("e.g. 45 deg or 1/8 turn")),
)
_CHOICES = {
    "kind": marked("kind"),
    "side": marked("side"),
    "thread_condition": marked("thread, when the torque holds"),
    "pattern": marked("in which turn"),
}
#: In which order the boxes stand, four in a row where there is room.
_ORDER = (
    *("name", "kind", "side", "bolts"),
    *("strength_class", "thread_condition", "passes", "pattern"),
    *("again_after", "note"),
    *("seating", "seating_source", "back_off"),
)
#: Enter walks down the values, as in every list of them; Tab stops at the sources too.
_SOURCES = ("seating_source",)
_COLUMN = 180  # least width of a box, at 100 % text


class FastenerDetails(QFrame):
    """The boxes of a fastener that are not in its row.

    Signals:
        copy_wanted: a copy on the other side is wanted.
        removed: it is to go.
        went_on: Enter was pressed in the last box that is asked for.
    """

    copy_wanted = Signal()
    removed = Signal()
    went_on = Signal()

    def __init__(self, fastener: FastenerBoxes) -> None:
        super().__init__()
        self._of = fastener
        theme = fastener.theme
        rows: dict[str, list[Row]] = {
            "kind": [(kind.kind, say(kind.title)) for kind in joint_kinds().values()],
            "side": [(None, say("in the middle")), *((side, side.words) for side in Side)],
            "thread_condition": [(each, say(words)) for each, words in _CONDITIONS.items()],
            "pattern": [(each, say(words)) for each, words in _PATTERNS.items()],
        }
        for field, name in _CHOICES.items():
            fastener.add_choice(field, say(name), rows[field])
        for field, name, example in (*_BOXES, *_STEM_NUT):
            fastener.add_box(field, say(name), say(example))
        self._names: dict[str, QLabel] = {}
        self._refusal = wrapping("", "small", tone="attention")
        self._refusal.hide()
        fastener.refused.connect(self._refuse)
        grid = FoldingGrid(theme, 4, least=_COLUMN)
        walked = self._place_boxes(grid)
        column = QVBoxLayout(self)
        column.setContentsMargins(theme.px(ROOM), 0, 0, theme.px(GAP))
        column.setSpacing(4)
        column.addWidget(grid)
        column.addWidget(self._refusal)
        column.addLayout(self._buttons())
        sources = [fastener.boxes[field] for field in _SOURCES]
        values = [box for box in walked if box not in sources]
        for box, following in pairwise(values):
            box.went_on.connect(lambda following=following: self._go_on(following))
        for box in (*sources, values[-1]):
            box.went_on.connect(self.went_on)
        lines = [box.line if isinstance(box, ValueBox) else box for box in walked]
        self.stops: list[QWidget] = [*lines, self.copy_button, self.remove_button]

    def show_fastener(self) -> None:
        """Show the fastener as the sheet has it."""
        fastener, of = self._of.fastener, self._of
        for field, _, _ in _BOXES:
            of.show_text(field)
        for field, _, _ in _STEM_NUT:
            is_asked = fastener.kind == "stem_nut" or of.boxes[field].is_being_typed
            of.boxes[field].setVisible(is_asked)
            self._names[field].setVisible(is_asked)
        doubt = of.doubts().get("seating", "")
        of.show_text("seating", *torque_understood(fastener.seating, doubt, of.show))
        of.show_text("seating_source")
        back_off = fastener.back_off
        words = f"{written(back_off.value)}°" if back_off else say(NO_TORQUE)
        of.show_text("back_off", words, "" if back_off else "attention")
        for field, choice in of.choices.items():
            choice.show_value(getattr(fastener, field))
        for field, name in self._names.items():
            box = of.boxes[field].line if field in of.boxes else of.choices[field]
            box.setAccessibleName(f"{fastener.name}, {name.text()}")
        self.copy_button.setAccessibleName(
            say("{fastener}, copy to the other side", fastener=fastener.name)
        )
        self.remove_button.setAccessibleName(
            say("{fastener}, remove this fastener", fastener=fastener.name)
        )
        self.copy_button.setVisible(fastener.side is not None)

    def _go_on(self, following: ValueBox | Choice) -> None:
        if following.isHidden():  # asked of a stem nut alone
            self.went_on.emit()
        else:
            following.setFocus(Qt.FocusReason.TabFocusReason)

    def _place_boxes(self, grid: FoldingGrid) -> list[ValueBox | Choice]:
        names = {field: say(name) for field, name, _ in (*_BOXES, *_STEM_NUT)}
        walked: list[ValueBox | Choice] = []
        for field in _ORDER:
            box = self._of.boxes.get(field) or self._of.choices[field]
            name = label(names.get(field) or box.accessibleName(), "small")
            grid.add(titled(name, box), 3 if field == "note" else 1)
            self._names[field] = name
            walked.append(box)
        return walked

    def _buttons(self) -> WrappingRow:
        line = WrappingRow()
        self.copy_button = QPushButton(say("Copy to the other side"))
        self.remove_button = QPushButton(say("Remove this fastener"))
        self.copy_button.clicked.connect(self.copy_wanted)
        self.remove_button.clicked.connect(self.removed)
        for button in (self.copy_button, self.remove_button):
            button.setMinimumHeight(self._of.theme.px(HEIGHT))
            line.add(button)
        return line

    def _refuse(self, why: str) -> None:
        self._refusal.setText(why)
        self._refusal.setVisible(bool(why))
