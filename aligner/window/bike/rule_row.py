"""One rule of the maker's order in two lines: what before what, because of what.

The trap: a rule that makes a ring with another one leaves no list at all. It is refused here,
in words, and the rule that stood before goes on standing.
"""

from __future__ import annotations

from itertools import pairwise
from typing import Any

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QGridLayout, QHBoxLayout, QPushButton, QWidget

from aligner.drawing.theme import GAP, Theme
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.edits_sheet import with_rule
from aligner.language import begun, marked, say
from aligner.sheet import OrderRule, Sheet
from aligner.window.bike.boxes import HEIGHT, ValueBox
from aligner.window.bike.fastener_reads import check_list
from aligner.window.bike.values import bind
from aligner.window.bike.words import RULE_KINDS, rule_names, thing_words
from aligner.window.open_job import OpenJob
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import wrapping

#: The parts of a rule, behind which rule it is ("rule 2").
_PARTS = {
    "first": marked("{rule}, first"),
    "kind": marked("{rule}, kind"),
    "then": marked("{rule}, then"),
    "because": marked("{rule}, because"),
    "source": marked("{rule}, source"),
}


class RuleRow(QFrame):
    """A rule: what before what, because of what, and where that is printed.

    Without a place on the sheet it is the rule to be added next.

    Signals:
        removed: it is to go.
        added: it is to be added.
    """

    removed = Signal()
    added = Signal()

    def __init__(self, open_job: OpenJob, theme: Theme, place: int | None) -> None:
        super().__init__()
        self._open_job = open_job
        self.place = place
        self._shown: OrderRule | None = None
        about = _name(place)
        names = {part: say(words, rule=about) for part, words in _PARTS.items()}
        kinds = [(kind, say(words)) for kind, words in RULE_KINDS.items()]
        self.first = Choice(names["first"], letters=8)
        self.kind = Choice(names["kind"], kinds, letters=8)
        self.then = Choice(names["then"], letters=8)
        self.first.setPlaceholderText(say("what comes first"))
        self.then.setPlaceholderText(say("what comes after it"))
        self.because = ValueBox(theme, names["because"], str, say("the reason"))
        self.source = ValueBox(theme, names["source"], str, say("manual page"))
        self.button = QPushButton(say("Remove") if place is not None else say("Add this rule"))
        self.button.setAccessibleName(f"{self.button.text()}: {about}")
        self.button.setMinimumHeight(theme.px(HEIGHT))
        self.button.clicked.connect(self.removed if place is not None else self.added)
        self._refusal = wrapping("", "small", tone="attention")
        self._refusal.hide()
        self._lay_out()
        if place is not None:
            for field, choice in self._choices().items():
                choice.chosen.connect(lambda _, field=field: self._choose(field))
            for field, box in (("because", self.because), ("source", self.source)):
                bind(
                    open_job,
                    box,
                    names[field],
                    lambda job, text, field=field: with_rule(
                        job, self.place or 0, **{field: text or ""}
                    ),
                )

    def show_rule(self, sheet: Sheet, rule: OrderRule | None) -> None:
        """Show a rule of the sheet; choices that were refused stay as they were taken."""
        names = rule_names(sheet)
        known = {name for name, _ in names}
        for choice, name in (
            (self.first, rule.first if rule else None),
            (self.then, rule.then if rule else None),
        ):
            extra = [] if name is None or name in known else [(name, thing_words(name))]
            choice.offer([*names, *extra])
        if rule is None:
            if self.kind.value is None:
                self.kind.setCurrentIndex(0)
            return
        if rule != self._shown:
            self._shown = rule
            self.refuse("")
        if self._refusal.isHidden():
            for field, choice in self._choices().items():
                choice.show_value(getattr(rule, field))
        self.because.show_value(rule.because)
        self.source.show_value(rule.source)

    def rule(self) -> OrderRule:
        """The rule as chosen.

        Raises:
            AlignerError: it is not complete.
        """
        if self.first.value is None or self.then.value is None:
            raise AlignerError(
                "", say("the rule is not complete"), say("choose what comes first, and then")
            )
        because = self.because.line.text().strip()
        if not because:
            raise AlignerError(
                "", say("the rule has no reason"), say("say why, as the manual does")
            )
        return OrderRule(
            kind=self.kind.value,  # type: ignore[arg-type]  # the values are the kinds
            first=str(self.first.value),
            then=str(self.then.value),
            because=because,
            source=self.source.line.text().strip(),
        )

    @property
    def refusal(self) -> str:
        """What is wrong with it, in words; "" if nothing is."""
        return "" if self._refusal.isHidden() else self._refusal.text()

    def refuse(self, why: str) -> None:
        """Say why it cannot be; "" if nothing is wrong."""
        self._refusal.setText(why)
        self._refusal.setVisible(bool(why))

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        choices = [self.first, self.kind, self.then]
        return [*choices, self.because.line, self.source.line, self.button]

    def empty(self) -> None:
        """Make room for another rule."""
        for choice in (self.first, self.then):
            choice.setCurrentIndex(-1)
        for box in (self.because, self.source):
            box.end_typing()
            box.show_value("")

    def end_typing(self) -> None:
        """From here on it shows what the sheet holds."""
        self.refuse("")
        for box in (self.because, self.source):
            box.end_typing()

    def _choices(self) -> dict[str, Choice]:
        return {"first": self.first, "kind": self.kind, "then": self.then}

    def _choose(self, field: str) -> None:
        changes: dict[str, Any] = {name: box.value for name, box in self._choices().items()}

        def changed(job: Job) -> Job:
            made = with_rule(job, self.place or 0, **changes)
            check_list(made.sheet)
            return made

        try:
            self.refuse("")
            self._open_job.edit(say(_PARTS[field], rule=_name(self.place or 0)), changed)
        except AlignerError as error:
            as_it_was = say("The rule on the sheet is as it was.")
            self.refuse(f"{begun(str(error))}. {as_it_was}")

    def _lay_out(self) -> None:
        upper, lower = QHBoxLayout(), QHBoxLayout()
        for widget, width in ((self.first, 4), (self.kind, 3), (self.then, 4)):
            upper.addWidget(widget, width)
        lower.addWidget(label(say("because"), "small"))
        lower.addWidget(self.because, 6)
        lower.addWidget(self.source, 3)
        lower.addWidget(self.button)
        for line in (upper, lower):
            line.setSpacing(GAP)
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, GAP)
        grid.setVerticalSpacing(4)
        grid.addLayout(upper, 0, 0)
        grid.addLayout(lower, 1, 0)
        grid.addWidget(self._refusal, 2, 0)
        walked = [self.first, self.kind, self.then, self.because, self.source]
        for before, after in pairwise(walked):
            before.went_on.connect(
                lambda after=after: after.setFocus(Qt.FocusReason.TabFocusReason)
            )
        self.source.went_on.connect(self.button.setFocus)


def _name(place: int | None) -> str:
    return say("new rule") if place is None else say("rule {number}", number=place + 1)
