"""The job's gauges: which was used for what, and what is known of each.

What a gauge is said to be decides every verdict, so each change shows at once in the words
beside the thing that was measured with it.
"""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout, QWidget

from aligner.assessment import Assessment
from aligner.drawing.theme import Theme
from aligner.gauging import Verdict
from aligner.job import Gauge, Job
from aligner.job.edits_align import with_heights_gauge, with_in_line_gauge, with_pair
from aligner.job.edits_gauges import with_gauge, without_gauge
from aligner.job.known_gauges import known_gauges, not_listed
from aligner.language import marked, say
from aligner.units.preferred import Preferred
from aligner.window.align.fold import FoldPage
from aligner.window.align.gauge_fold import GaugeFold
from aligner.window.align.words import gauge_choices, pair_words
from aligner.window.open_job import Change, OpenJob
from aligner.window.widgets.labels import Card, label, set_tone
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.pictures import height_words, in_line_words, square_words
from aligner.window.widgets.tried_choice import TriedChoice

#: Stands for a gauge of the person's own among those to add.
_ANOTHER = marked("another gauge")


class UseCard(Card):
    """Which gauge was used for each thing that was measured, with its verdict beside it."""

    def __init__(self, show: Preferred, open_job: OpenJob) -> None:
        super().__init__(say("Which gauge was used"))
        self._show = show
        self._open_job = open_job
        self._grid = QGridLayout()
        for column, share in enumerate((4, 6, 5)):
            self._grid.setColumnStretch(column, share)
        self.column.addLayout(self._grid)
        self.choices: list[TriedChoice] = []
        self._names: list[QLabel] = []
        self._words: list[QLabel] = []

    @property
    def words(self) -> tuple[str, ...]:
        """The verdicts beside the choices."""
        return tuple(words.text() for words in self._words)

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show what was measured with which gauge."""
        found = assessment
        in_line = job.align.in_line
        uses = [
            (
                say("heights"),
                job.align.protrusion.gauge,
                height_words(found.protrusion, self._show),
                found.protrusion.verdict,
            )
        ]
        pairs = found.squaring.pairs
        for pair, judged in zip(job.align.squaring, pairs, strict=True):
            words, verdict = pair_words(judged, self._show), Verdict.MISSING
            if len(pairs) == 1 and judged.change is not None:
                words = square_words(found.squaring, self._show)
                verdict = found.squaring.verdict
            uses.append((pair.name, pair.gauge, words, verdict))
        uses.append(
            (
                say("in line"),
                in_line.gauge if in_line else None,
                in_line_words(found.in_line, self._show),
                found.in_line.verdict,
            )
        )
        self._make_room(len(uses))
        for place, (name, gauge, words, verdict) in enumerate(uses):
            self._names[place].setText(name)
            self.choices[place].setAccessibleName(say("gauge for {name}", name=name))
            self.choices[place].offer(gauge_choices(job, gauge))
            self.choices[place].show_value(gauge)
            self._words[place].setText(words)
            set_tone(self._words[place], "tone", "attention" if verdict is Verdict.OUT else "")

    def _make_room(self, count: int) -> None:
        while len(self.choices) > count:
            for widget in (self.choices.pop(), self._names.pop(), self._words.pop()):
                self._grid.removeWidget(widget)
                widget.hide()
                widget.deleteLater()
        while len(self.choices) < count:
            place = len(self.choices)
            choice = TriedChoice(say("gauge"))
            choice.tried.connect(lambda g, place=place: self._open_job.draft(self._used(place, g)))
            choice.chosen.connect(
                lambda g, place=place: self._open_job.edit(say("gauge used"), self._used(place, g))
            )
            choice.went_on.connect(lambda place=place: self._go_on(place))
            self.choices.append(choice)
            self._names.append(label("", wraps=True))
            self._words.append(wrapping("", "small"))
            self._grid.addWidget(self._names[place], place, 0)
            self._grid.addWidget(choice, place, 1)
            self._grid.addWidget(self._words[place], place, 2)
            choice.show()

    def _used(self, place: int, gauge: str | None) -> Change:
        if place == 0:
            return lambda job: with_heights_gauge(job, gauge)
        if place == len(self.choices) - 1:
            return lambda job: with_in_line_gauge(job, gauge)
        return lambda job: with_pair(job, place - 1, gauge=gauge)

    def _go_on(self, place: int) -> None:
        self.choices[(place + 1) % len(self.choices)].setFocus(Qt.FocusReason.TabFocusReason)


class GaugeCard(QWidget):
    """The uses, then one fold for each gauge, then where another is added."""

    def __init__(self, theme: Theme, show: Preferred, open_job: OpenJob) -> None:
        super().__init__()
        self._theme = theme
        self._show = show
        self._open_job = open_job
        self.uses = UseCard(show, open_job)
        self.folds: dict[str, GaugeFold] = {}
        self.page = FoldPage(say("Gauges of this job"))
        self.page.add(self.uses)
        foot = QWidget()
        row = QHBoxLayout(foot)
        row.setContentsMargins(0, 0, 0, 0)
        self.add_which = TriedChoice(say("gauge to add"))
        self.add_gauge = QPushButton(say("Add to this job"))
        row.addWidget(self.add_which, 1)
        row.addWidget(self.add_gauge)
        self.page.add(foot)
        self.page.watch(foot)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        self.add_which.went_on.connect(
            lambda: self.add_gauge.setFocus(Qt.FocusReason.TabFocusReason)
        )
        self.add_gauge.clicked.connect(self._add)

    def begin(self) -> None:
        """Put the keyboard on the first use."""
        self.uses.choices[0].setFocus(Qt.FocusReason.TabFocusReason)

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        folds = (stop for fold in self.folds.values() for stop in fold.stops())
        return [*self.uses.choices, *folds, self.add_which, self.add_gauge]

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show a job's gauges and what each was used for."""
        self.uses.show_job(job, assessment)
        self._match_folds(tuple(job.gauges))
        for name, fold in self.folds.items():
            fold.show_gauge(job, name)
        offered = {name: name for name in not_listed(job.gauges)} | {_ANOTHER: say(_ANOTHER)}
        chosen = self.add_which.value
        self.add_which.offer(offered.items())
        self.add_which.show_value(chosen if chosen in offered else next(iter(offered)))

    def _match_folds(self, names: tuple[str, ...]) -> None:
        if names == tuple(self.folds):
            return
        gone = [name for name in self.folds if name not in names]
        new = [name for name in names if name not in self.folds]
        if len(gone) == len(new) == 1:  # the same gauge under another name
            self.folds[new[0]] = self.folds.pop(gone[0])
        else:
            for name in gone:
                self.page.remove(self.folds.pop(name))
            for name in new:
                self.folds[name] = self._make_fold(name, names.index(name))
        self.folds = {name: self.folds[name] for name in names}

    def _make_fold(self, name: str, place: int) -> GaugeFold:
        fold = GaugeFold(self._theme, self._show, self._open_job, name)
        fold.remove.clicked.connect(lambda: self._remove(fold.name))
        self.page.insert(place + 1, fold)
        self.page.watch(fold)
        return fold

    def _add(self) -> None:
        known = known_gauges().get(str(self.add_which.value))
        taken = self._open_job.job.gauges
        if known is not None:
            name, gauge = known.name, known.for_job()
        else:
            names = (say("gauge {number}", number=place + 1) for place in range(len(taken) + 1))
            name = next(name for name in names if name not in taken)
            gauge = Gauge()
        self._open_job.edit(say("gauge on the list"), lambda job: with_gauge(job, name, gauge))
        self.folds[name].go_to_first_entry()

    def _remove(self, name: str) -> None:
        self._open_job.edit(say("gauge off the list"), lambda job: without_gauge(job, name))
        self.add_which.setFocus(Qt.FocusReason.TabFocusReason)
