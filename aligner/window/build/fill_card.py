"""The card that says what went in: the oil, its volume for each leg, the gauge it was read with."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QPushButton

from aligner.assessment.build import BuildAssessment
from aligner.drawing.theme import GAP, Theme
from aligner.job import Job
from aligner.job.listed_gauges import gauge_choices
from aligner.language import begun, marked, say, say_count
from aligner.sheet.quantities import Volume
from aligner.units.preferred import Preferred
from aligner.window.build.results import volume_words
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.labels import Card, label
from aligner.window.widgets.page import wrapping
from aligner.window.widgets.reading_box import ReadingBox, one_of
from aligner.window.widgets.word_line import WordLine
from aligner.window.widgets.wrapping_row import WrappingRow

_VOLUMES = {"left": marked("left leg's oil"), "right": marked("right leg's oil")}


class FillCard(Card):
    """What was poured in.

    Signals:
        oil_typed: the oil's name, while it is typed. oil_kept: when it is left.
        volume_typed: side and volume, while it is typed. volume_kept: when it is left.
        gauge_chosen: the gauge's name.
        again_wanted: the air gaps are to be read again.
        went_on: Enter after the last field.
    """

    oil_typed = Signal(str)
    oil_kept = Signal(str)
    volume_typed = Signal(str, object)
    volume_kept = Signal(str, object)
    gauge_chosen = Signal(object)
    again_wanted = Signal()
    went_on = Signal()

    def __init__(self, theme: Theme, show: Preferred) -> None:
        super().__init__(say("What went in"))
        self._show = show
        self.gauge = Choice(say("gauge of the air gaps"))
        self.again = QPushButton(say("Read the gaps again"))
        self.oil = WordLine(theme, say("oil that went in"), say("name on the bottle"))
        self.volumes = {
            side: ReadingBox(theme, say(words), Volume, show.volume, 1, "poured_oil")
            for side, words in _VOLUMES.items()
        }
        self.said = wrapping("")
        grid = QGridLayout()
        grid.setHorizontalSpacing(GAP)
        grid.setColumnStretch(1, 1)
        read_with = WrappingRow()
        read_with.add(self.gauge, 1)
        read_with.add(self.again)
        grid.addWidget(label(say("read with")), 0, 0)
        grid.addLayout(read_with, 0, 1)
        grid.addWidget(label(say("oil")), 1, 0)
        grid.addWidget(self.oil, 1, 1)
        row = QHBoxLayout()
        row.setSpacing(GAP)
        for box in self.volumes.values():
            row.addWidget(box, 1, Qt.AlignmentFlag.AlignTop)
        self.column.addLayout(grid)
        self.column.addLayout(row)
        self.column.addWidget(self.said)
        self.column.addStretch(1)
        self.gauge.chosen.connect(self.gauge_chosen)
        self.gauge.went_on.connect(lambda: self.oil.setFocus(Qt.FocusReason.TabFocusReason))
        self.again.clicked.connect(self.again_wanted)
        self.oil.typed.connect(self.oil_typed)
        self.oil.kept.connect(self.oil_kept)
        self.oil.went_on.connect(self.volumes["left"].go_to_first_empty)
        for side, box in self.volumes.items():
            box.typed.connect(lambda found, side=side: self.volume_typed.emit(side, one_of(found)))
            box.kept.connect(lambda found, side=side: self.volume_kept.emit(side, one_of(found)))
        self.volumes["left"].went_on.connect(self.volumes["right"].go_to_first_empty)
        self.volumes["right"].went_on.connect(self.went_on)

    def show_job(self, job: Job, found: BuildAssessment) -> None:
        """Show what the job says went in, and what that comes to."""
        build = job.build
        self.gauge.offer(gauge_choices(job, build.gauge))
        self.gauge.show_value(build.gauge)
        self.oil.show_kept(build.oil)
        wanted = job.sheet.legs.oil.name
        self.oil.setPlaceholderText(
            say("the sheet says: {oil}", oil=wanted) if wanted else say("name on the bottle")
        )
        self.again.setEnabled(bool(build.left.gap or build.right.gap))
        for side, box in self.volumes.items():
            volume = getattr(build, side).volume
            box.show_readings(
                (volume,) if volume else (), volume.text if volume else say("volume?")
            )
        lines = [volume_words(side, found.oil, self._show) for side in _VOLUMES]
        if build.earlier:
            lines.append(
                say_count(
                    "read {count} time before, kept with the job",
                    "read {count} times before, kept with the job",
                    len(build.earlier),
                )
            )
        self.said.setText("\n".join(f"{begun(line)}." for line in lines if line))
        self.said.setVisible(bool(self.said.text()))
