"""The points that the lower bracket is squared to: each pair's name, gauge and dimensions.

They are set once and fold away; the readings themselves stand on the drawing.
"""

from __future__ import annotations

from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from aligner.assessment import Assessment, Level
from aligner.assessment.squaring_pair import PairAssessment
from aligner.drawing.theme import Theme
from aligner.errors import AlignerError
from aligner.job import Job, SquaringPair
from aligner.job.edits_align import with_another_pair, with_pair, without_pair
from aligner.language import marked, say, say_count
from aligner.sheet.quantities import Length, Quantity, SignedLength
from aligner.units.preferred import Preferred
from aligner.window.align.entry import Entry, reads
from aligner.window.align.fold import Fold, FoldPage
from aligner.window.align.words import alike_at_first, gauge_choices, pair_words
from aligner.window.measuring.guides import measured_by
from aligner.window.open_job import OpenJob
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.tried_choice import TriedChoice

#: Field, name, kind, and where it is measured from and to.
_DIMENSIONS: tuple[tuple[str, str, type[Quantity], str], ...] = (
    (
        "bracket_reach",
        marked("bracket reach"),
        SignedLength,
        marked(
            "From the steering axis forward to the bracket's points, seen from above; "
            "behind is minus."
        ),
    ),
    (
        "bracket_half_width",
        marked("bracket half width"),
        Length,
        marked("From the middle out to either of them: half of what lies between the two."),
    ),
    (
        "frame_setback",
        marked("frame setback"),
        SignedLength,
        marked("From the steering axis back to the frame's points; ahead of it is minus."),
    ),
    (
        "frame_half_width",
        marked("frame half width"),
        Length,
        marked("From the middle out to either of them: half of what lies between the two."),
    ),
    (
        "frame_asymmetry",
        marked("frame's own difference"),
        SignedLength,
        marked("Left less right when the bracket is truly straight, where it is known."),
    ),
    (
        "frame_asymmetry_uncertainty",
        marked("known to ±"),
        Length,
        marked("Standard uncertainty of that difference."),
    ),
)
#: Guides that go by another name than the field.
_GUIDES = {"frame_asymmetry": "frame_difference", "frame_asymmetry_uncertainty": "frame_difference"}
_LEAD = marked(
    "Two points alike on the frame, left and right, and two on the lower bracket. With the first "
    "four dimensions the turn is told in degrees; without them, in millimetres."
)


class PairFold(Fold):
    """One pair of points."""

    def __init__(self, theme: Theme, show: Preferred, open_job: OpenJob, place: int) -> None:
        super().__init__(theme)
        self._show = show
        self._open_job = open_job
        self._place = place
        self._steps = {"name": say("name of the pair")}
        self._add("name", Entry(theme, say("name"), self._read_name))
        gauge = QHBoxLayout()
        gauge.addWidget(label(say("gauge")), 5)
        self.gauge = TriedChoice(say("gauge of this pair"))
        gauge.addWidget(self.gauge, 4)
        self.body_column.addLayout(gauge)
        for field, name, kind, about in _DIMENSIONS:
            self._steps[field] = say(name)
            read = reads(kind, show.length)
            entry = Entry(theme, say(name), read, say(about), show.length)
            measured_by(entry, _GUIDES.get(field, field))
            self._add(field, entry)
        self.remove = QPushButton(say("Remove this pair"))
        self.body_column.addWidget(self.remove, 0, Qt.AlignmentFlag.AlignLeft)
        self._walk()

    def show_pair(self, job: Job, found: PairAssessment) -> None:
        """Show a pair, and what is wrong with its dimensions at their boxes."""
        pair = job.align.squaring[self._place]
        self.say(pair.name, pair_words(found, self._show))
        where = f"align.squaring[{self._place}]."
        told = {notice.where.removeprefix(where): notice.text for notice in found.notices}
        is_stuck = found.change is None
        troubles = {
            notice.where.removeprefix(where): notice.text
            for notice in found.notices
            if is_stuck and notice.level is Level.ATTENTION
        }
        for field, entry in self.entries.items():
            held = getattr(pair, field)
            text = held.said if isinstance(held, Quantity) else held or ""
            entry.show_text(
                text.removesuffix(f" {self._show.length}"),
                troubles.get(field, ""),
                told.get(field, ""),
            )
        self.gauge.offer(gauge_choices(job, pair.gauge))
        self.gauge.show_value(pair.gauge)
        count = len(pair.left) + len(pair.right)
        self.gauge.setAccessibleName(say("gauge, {name}", name=pair.name))
        self.remove.setText(_removal_words(count))
        self.remove.setAccessibleName(_removal_words(count, pair.name))

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops: the gauge stands under the name."""
        head, name, *dimensions = super().stops()
        return [head, name, self.gauge, *dimensions, self.remove]

    def _add(self, field: str, entry: Entry) -> None:
        self.add_entry(field, entry)
        entry.typed.connect(lambda value: self._open_job.draft(self._change(field, value)))
        entry.kept.connect(
            lambda value: self._open_job.edit(self._steps[field], self._change(field, value))
        )

    def _change(self, field: str, value: object) -> Any:
        changes = {field: value}
        return lambda job: with_pair(job, self._place, **changes)

    def _walk(self) -> None:
        name, reach = self.entries["name"], self.entries["bracket_reach"]
        name.went_on.disconnect()
        name.went_on.connect(lambda: self.gauge.setFocus(Qt.FocusReason.TabFocusReason))
        self.gauge.went_on.connect(lambda: reach.cell.setFocus(Qt.FocusReason.TabFocusReason))
        last = list(self.entries.values())[-1]
        last.went_on.connect(lambda: self.head.setFocus(Qt.FocusReason.TabFocusReason))
        self.gauge.tried.connect(lambda name: self._open_job.draft(self._change("gauge", name)))
        self.gauge.chosen.connect(
            lambda name: self._open_job.edit(say("gauge of the pair"), self._change("gauge", name))
        )

    def _read_name(self, text: str) -> str:
        kept = " ".join(text.split())
        if not kept:
            raise AlignerError("", say("a pair needs a name"), say("such as “frame lugs”"))
        pairs: tuple[SquaringPair, ...] = self._open_job.job.align.squaring
        if any(pair.name == kept for place, pair in enumerate(pairs) if place != self._place):
            taken = say("another pair is called “{name}”", name=kept)
            raise AlignerError("", taken, say("call this one otherwise"))
        return kept


def _removal_words(readings: int, name: str = "") -> str:
    """What removing a pair takes away; of "this pair" where it is not named."""
    if name and readings:
        return say_count(
            "Remove {name} and its reading",
            "Remove {name} and its {count} readings",
            readings,
            name=name,
        )
    if name:
        return say("Remove {name}", name=name)
    if readings:
        return say_count(
            "Remove this pair and its reading",
            "Remove this pair and its {count} readings",
            readings,
        )
    return say("Remove this pair")


class PointsCard(QWidget):
    """Every pair of points of the job, one fold each."""

    def __init__(self, theme: Theme, show: Preferred, open_job: OpenJob) -> None:
        super().__init__()
        self._theme = theme
        self._show = show
        self._open_job = open_job
        self.folds: list[PairFold] = []
        self._shown: tuple[SquaringPair, ...] = ()
        self.page = FoldPage(say("Points that the bracket is squared to"))
        self.page.add(wrapping(say(_LEAD), "small"))
        self.add_pair = QPushButton(say("Add a pair of points"))
        self.page.add(self.add_pair)
        self.page.watch(self.add_pair)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        self.add_pair.clicked.connect(self._add_pair)

    def begin(self) -> None:
        """Put the keyboard on the first pair, opened where it is the only one."""
        if len(self.folds) == 1:
            self.folds[0].go_to_first_entry()
        elif self.folds:
            self.folds[0].head.setFocus(Qt.FocusReason.TabFocusReason)
        else:
            self.add_pair.setFocus(Qt.FocusReason.TabFocusReason)

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [*(stop for fold in self.folds for stop in fold.stops()), self.add_pair]

    def show_job(self, job: Job, assessment: Assessment) -> None:
        """Show the pairs of a job."""
        pairs = assessment.squaring.pairs
        if len(self.folds) != len(pairs):
            kept = alike_at_first(self._shown, job.align.squaring)
            while len(self.folds) > kept:
                self.page.remove(self.folds.pop())
        self._shown = job.align.squaring
        while len(self.folds) < len(pairs):
            self._add_fold()
        for fold, found in zip(self.folds, pairs, strict=True):
            fold.show_pair(job, found)

    def _add_fold(self) -> None:
        place = len(self.folds)
        fold = PairFold(self._theme, self._show, self._open_job, place)
        fold.remove.clicked.connect(lambda: self._remove(place))
        self.folds.append(fold)
        self.page.insert(place + 1, fold)
        self.page.watch(fold)

    def _add_pair(self) -> None:
        self._open_job.edit(say("pair of points"), with_another_pair)
        self.folds[-1].go_to_first_entry()

    def _remove(self, place: int) -> None:
        self._open_job.edit(say("pair of points taken off"), lambda job: without_pair(job, place))
        self.add_pair.setFocus(Qt.FocusReason.TabFocusReason)
