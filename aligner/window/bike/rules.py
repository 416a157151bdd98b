"""The maker's order: rules added, changed and taken out, each with its reason and source."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.edits_sheet import with_new_rule, without_rule
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.window.bike.fastener_reads import check_list
from aligner.window.bike.rule_row import RuleRow
from aligner.window.bike.words import rule_words
from aligner.window.open_job import OpenJob
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping

_NONE = marked("No rules of the maker's own: the usual order holds.")


class RulesCard(Card):
    """The maker's rules, and a line to add one.

    Signals:
        said: something to be known, in a sentence.
        laid_out: rows have come or gone.
    """

    said = Signal(str)
    laid_out = Signal()

    def __init__(self, open_job: OpenJob, theme: Theme) -> None:
        super().__init__(say("The maker's order"))
        self._open_job = open_job
        self._theme = theme
        self.rows: list[RuleRow] = []
        self._none = wrapping(say(_NONE))
        self._rows = QVBoxLayout()
        self.new = RuleRow(open_job, theme, None)
        self.new.added.connect(self._add)
        self.column.addWidget(self._none)
        self.column.addLayout(self._rows)
        self.column.addWidget(label(say("One more rule, as the manual gives it:"), "quiet"))
        self.column.addWidget(self.new)

    def stops(self) -> list[QWidget]:
        """Where Tab stops, in order."""
        return [stop for row in (*self.rows, self.new) for stop in row.stops()]

    def show_sheet(self, sheet: Sheet) -> None:
        """Show the rules as they are."""
        count = len(self.rows)
        while len(self.rows) > len(sheet.rules):
            row = self.rows.pop()
            self._rows.removeWidget(row)
            row.hide()
            row.deleteLater()
        while len(self.rows) < len(sheet.rules):
            row = RuleRow(self._open_job, self._theme, len(self.rows))
            row.removed.connect(lambda row=row: self._remove(row))
            self.rows.append(row)
            self._rows.addWidget(row)
        for row, rule in zip(self.rows, sheet.rules, strict=True):
            row.show_rule(sheet, rule)
        self.new.show_rule(sheet, None)
        self._none.setVisible(not self.rows)
        if len(self.rows) != count:
            self.laid_out.emit()

    def end_typing(self) -> None:
        """From here on every row shows what the sheet holds."""
        for row in self.rows:
            row.end_typing()
        self.new.refuse("")
        self.new.empty()

    def _add(self) -> None:
        try:
            rule = self.new.rule()

            def added(job: Job) -> Job:
                made = with_new_rule(job, rule)
                check_list(made.sheet)
                return made

            self._open_job.edit(say("add a rule"), added)
        except AlignerError as error:
            self.new.refuse(say("Not added: {why}.", why=error))
            return
        self.new.refuse("")
        self.new.empty()
        self.new.first.setFocus(Qt.FocusReason.OtherFocusReason)

    def _remove(self, row: RuleRow) -> None:
        place = row.place or 0
        words = rule_words(self._open_job.job.sheet.rules[place])
        for each in self.rows:
            each.end_typing()
        self._open_job.edit(say("remove a rule"), lambda job: without_rule(job, place))
        self.said.emit(say("Removed the rule: {rule}. Undo brings it back.", rule=words))
