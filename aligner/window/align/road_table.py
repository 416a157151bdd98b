"""The table of road figures: a row for each subject, and two columns for each state."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QLabel, QWidget

from aligner.assessment.road_figures import RoadState, RoadSubject, RoadTable, WhatIf
from aligner.drawing.theme import Theme, TypeSize
from aligner.units.preferred import Preferred
from aligner.window.align.road_figures_words import (
    cell,
    column_name,
    heading,
    spoken,
    subject_words,
)
from aligner.window.widgets.labels import label


class RoadTableView(QWidget):
    """Each figure in one column, and its change or the side it lies to in the one beside it."""

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._show = show
        self._cells: dict[tuple[RoadSubject, RoadState], tuple[QLabel, QLabel]] = {}
        small, ink = theme.points(TypeSize.SMALL), theme.palette.ink
        self.setStyleSheet(
            f"QLabel[tone='figure'] {{ font-size: {small}pt; font-weight: 600; color: {ink}; }}"
        )
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(theme.px(3))
        grid.setVerticalSpacing(2)
        right, bottom = Qt.AlignmentFlag.AlignRight, Qt.AlignmentFlag.AlignBottom
        grid.addWidget(label(f"°, {show.length}", "small"), 0, 0, bottom)
        for place, state in enumerate(RoadState):
            head = label(heading(state), "small")
            head.setAlignment(right | bottom)
            grid.addWidget(head, 0, 2 * place + 1, 1, 2)
            grid.setColumnStretch(2 * place + 1, 1)
            grid.setColumnMinimumWidth(2 * place + 2, theme.px(10 if place else 0))
        for line, subject in enumerate(RoadSubject, start=1):
            grid.addWidget(label(subject_words(subject), "small"), line, 0)
            for place, state in enumerate(RoadState):
                figure, beside = label("", "small", tone="figure"), label("", "small")
                figure.setAlignment(right)
                self._cells[subject, state] = (figure, beside)
                grid.addWidget(figure, line, 2 * place + 1)
                grid.addWidget(beside, line, 2 * place + 2)

    def show_table(self, table: RoadTable, supposed: WhatIf) -> None:
        """Show these figures."""
        for (subject, state), (figure, beside) in self._cells.items():
            value = table.figures[subject, state]
            for part, text in zip((figure, beside), cell(subject, value, self._show), strict=True):
                if part.text() != text:
                    part.setText(text)
            name = column_name(state, supposed, self._show)
            figure.setAccessibleName(spoken(subject, name, value, self._show))
