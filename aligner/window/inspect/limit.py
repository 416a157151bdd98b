"""The limit of a measured point, typed in place with its source where the sheet lacks it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.assessment.inspection import PlaceStanding
from aligner.drawing.theme import Theme
from aligner.job.inspection_points import LimitKind
from aligner.language import begun, marked, say
from aligner.sheet.inspection import LimitOf
from aligner.sheet.quantities import Length
from aligner.units import UnreadableQuantity
from aligner.units.preferred import Preferred
from aligner.window.inspect.doors import PlaceDoors
from aligner.window.measuring.guides import measured_by
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.labels import label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.typed_line import TypedLine, ValueLine
from aligner.window.widgets.wrapping_row import WrappingRow

_OF_WORDS = {LimitOf.INDICATED: marked("indicated"), LimitOf.BEND: marked("of the bend")}


class LimitLine(QWidget):
    """How far the part may be worn, what that is printed for, and where it comes from.

    Signals:
        went_on: Enter after the last field.
    """

    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred, doors: PlaceDoors, point_name: str) -> None:
        super().__init__()
        self._unit = show.length
        self._doors = doors
        self._standing: PlaceStanding | None = None
        self.way = label("", "text")
        self.value = ValueLine(
            say("{point}: limit", point=point_name), say("limit, {unit}", unit=self._unit)
        )
        self.value.setFixedWidth(theme.px(106))
        measured_by(self.value, "from_the_manual")
        self.of = Choice(
            say("{point}: the limit is printed for", point=point_name),
            [(of, say(words)) for of, words in _OF_WORDS.items()],
        )
        self.of.show_value(LimitOf.INDICATED)
        self.source = TypedLine(
            say("{point}: source of the limit", point=point_name), say("its source: manual, page")
        )
        self.said = wrapping("", "small")
        row = WrappingRow()
        row.add(self.way)
        row.add(self.value)
        row.add(self.of)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addLayout(row)
        column.addWidget(self.source)
        column.addWidget(self.said)
        self.value.textEdited.connect(self._typed)
        self.value.left.connect(self._keep)
        self.value.went_on.connect(self._value_entered)
        self.of.chosen.connect(self._keep_of)
        self.source.left.connect(self._keep_source)
        self.source.went_on.connect(self._source_entered)

    def show_limit(self, standing: PlaceStanding) -> None:
        """Show the sheet's limit; what is being typed or cannot be read stays."""
        limit, measure = standing.limit, standing.point.measure
        if measure is None:
            return
        self._standing = standing
        is_most = measure.limit is LimitKind.MOST
        self.way.setText(say("At most") if is_most else say("At least"))
        self.of.setVisible(measure.is_halved)
        self.value.show_kept(limit.value.said if limit else "")
        self.source.show_kept(limit.source if limit else "")
        if limit:
            self.of.show_value(limit.of)
        self._say()

    @property
    def is_wanted(self) -> bool:
        """Whether the sheet has no limit yet."""
        return not self._has_limit

    @property
    def has_refused_text(self) -> bool:
        """Whether the limit typed cannot be read."""
        return bool(self._refusal())

    def begin(self) -> None:
        """Put the keyboard on the limit."""
        self.value.setFocus(Qt.FocusReason.TabFocusReason)

    @property
    def _has_limit(self) -> bool:
        return self._standing is not None and self._standing.limit is not None

    def _typed(self) -> None:
        if not self.value.is_being_typed:
            self._doors.drop_draft()
        elif not self._refusal():
            self._doors.draft_limit(**self._changes())
        self._say()

    def _keep(self) -> None:
        if self.value.is_being_typed and not self._refusal():
            changes = self._changes()
            self.value.end_typing()
            self.source.end_typing()
            self._doors.keep_limit(**changes)
        self._say()

    def _keep_of(self, of: LimitOf) -> None:
        if self._has_limit:
            self._doors.keep_limit(of=of)

    def _keep_source(self) -> None:
        if self.source.is_being_typed and self._has_limit:
            self.source.end_typing()
            self._doors.keep_limit(source=self.source.text().strip())

    def _changes(self) -> dict[str, object]:
        """The limit with what stands beside it, so that a new one has it all."""
        text = self.value.text().strip()
        return {
            "value": Length.typed(text, self._unit) if text else None,
            "of": self.of.value,
            "source": self.source.text().strip(),
        }

    def _value_entered(self) -> None:
        if self._refusal():
            self._say()
            return
        is_given = bool(self.value.text().strip())
        self._keep()
        if is_given and not self.source.text().strip():
            self.source.setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.went_on.emit()

    def _source_entered(self) -> None:
        self._keep_source()
        self.went_on.emit()

    def _refusal(self) -> str:
        text = self.value.text().strip()
        if not text:
            return ""
        try:
            Length.typed(text, self._unit)
        except UnreadableQuantity as refusal:
            return str(refusal)
        return ""

    def _say(self) -> None:
        refusal = self._refusal()
        set_tone(self.value, "refused", "true" if refusal else "false")
        self.value.setAccessibleDescription(refusal)
        missing = "" if self._has_limit else say("The limit is missing: take it from the manual.")
        said = begun(refusal) if refusal else missing
        self.said.setText(said)
        self.said.setVisible(bool(said))
        set_tone(self.said, "tone", "attention" if said else "")
