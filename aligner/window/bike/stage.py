"""The Bike stage: the job's sheet, begun from a pattern or a file and edited in place.

The trap: what is missing must be as plain to see as what is there, in words, and a torque
that is missing is never filled in.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from aligner.assessment.missing import missing_on_sheet, missing_values, not_given, still_to_come
from aligner.assessment.sheet_changes import opened_by_the_sheet
from aligner.drawing.theme import GAP
from aligner.job.edits_sheet import with_bike_name, with_job_title
from aligner.job.edits_sheet_sides import with_torques_of_the_other_side
from aligner.job.edits_sheet_ticks import with_sheet
from aligner.language import marked, say, say_count
from aligner.sheet import Sheet
from aligner.sheet.patterns import composed
from aligner.sheet.variant import Variant
from aligner.window.bike.drawing import SheetDrawing
from aligner.window.bike.fasteners import FastenersCard
from aligner.window.bike.files import SheetFiles
from aligner.window.bike.missing import MissingCard
from aligner.window.bike.rules import RulesCard
from aligner.window.bike.start import StartCard
from aligner.window.bike.values import BikeCard, ValuesCard, dimensions_card, limits_card
from aligner.window.bike.variant import VariantCard
from aligner.window.setting import Setting
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.labels import main_button
from aligner.window.widgets.page import Page
from aligner.window.widgets.said_line import SaidLine
from aligner.window.widgets.tab_order import walk_by_tab

#: The least height of the page, at 100 % text: a line to type in with the words over it.
_LEAST_OF_PAGE = 90
_MANUAL = marked("The maker's manual comes first.")


class BikeStage(QWidget):
    """The sheet of the job.

    Signals:
        finished: the sheet is complete, and the person goes on to take apart.
        legs_wanted: the path of a value of the legs' inside, which has its box on Build.
    """

    finished = Signal()
    legs_wanted = Signal(str)

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        open_job, theme, show = setting.open_job, setting.theme, setting.show
        self._open_job = setting.open_job
        self._theme = setting.theme
        self._now = setting.now
        self._is_at_the_top = True
        self.page = Page(say("The bike's sheet"))
        self.said = SaidLine()
        self.start_card = StartCard(theme)
        self.variant_card = VariantCard(theme)
        self.missing_card = MissingCard(theme)
        self.bike_card = BikeCard(open_job, theme)
        self.dimensions = dimensions_card(open_job, theme, show)
        self.limits = limits_card(open_job, theme, show)
        self.drawing = SheetDrawing(theme)
        self.fasteners = FastenersCard(setting)
        self.rules = RulesCard(open_job, theme)
        self.files = SheetFiles(open_job, setting.now)
        self.go_on = main_button(say("Go on to Strip   Enter"))
        self._lay_out()
        self._connect()
        self.refresh()

    def sentence(self) -> tuple[str, ...]:
        """How complete the sheet is, and what that means."""
        job = self._open_job.job
        if not job.sheet.fasteners:
            return (
                say("Name the bike and choose its pattern.")
                if not job.sheet.name
                else say("Choose the pattern of this bike."),
                f"{say('Or take over a sheet that is there already.')} {say(_MANUAL)}",
            )
        changed = opened_by_the_sheet(job)
        missing = missing_on_sheet(job)
        if missing:
            headline = say_count(
                "{count} value is missing.", "{count} values are missing.", missing
            )
            detail = say(
                "What is missing comes from the maker's manual, which comes first: "
                "a torque is never guessed."
            )
            return headline, detail, changed
        absent = len(not_given(job.sheet))
        if absent:
            detail = say_count(
                "{count} dimension is not given: what follows from them is not worked out.",
                "{count} dimensions are not given: what follows from them is not worked out.",
                absent,
            )
        else:
            detail = say("Every torque and dimension is given.")
        coming = [value.name for value in still_to_come(job)]
        if coming:
            needed = say("The Build stage still needs: {values}.", values=", ".join(coming))
            detail = f"{detail} {needed}"
        return say("Sheet complete."), f"{detail} {say(_MANUAL)}", changed

    def begin(self) -> None:
        """Put the keyboard where the work begins: the name, or the page."""
        if not self._open_job.job.sheet.fasteners:
            self.start_card.name.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self.page.setFocus(Qt.FocusReason.OtherFocusReason)
        if not self._is_at_the_top:
            self._is_at_the_top = True
            self.page.verticalScrollBar().setValue(0)

    def refresh(self) -> None:
        """Show the sheet as it is now; nothing that is being typed is touched."""
        job = self._open_job.job
        sheet = job.sheet
        is_begun = bool(sheet.fasteners)
        is_blank = not is_begun and sheet.with_changes(name="") == Sheet(name="")
        for part in (self.start_card, self.start_card.foot):
            part.setVisible(not is_begun)
        self.start_card.show_job(job)
        for widget in (self.files, self.bike_card, self._measures, self.limits):
            widget.setVisible(not is_blank)
        for widget in (self.fasteners, self.rules):
            widget.setVisible(not is_blank)
        if not is_begun:
            self.variant_card.hide()
        for card in (self.bike_card, self.dimensions, self.limits, self.fasteners, self.rules):
            card.show_sheet(sheet)
        self.missing_card.show_job(job)
        if not is_begun:
            self.missing_card.hide()
        if not self.variant_card.isHidden():
            self.variant_card.show_sheet(sheet)
        self.drawing.show_job(job)
        self.go_on.setVisible(is_begun and not missing_values(sheet))

    def take_over(self, path: Path) -> None:
        """Take over the sheet of a file: a sheet's, or the one in an earlier job."""
        self.files.take_over(path)

    def save_sheet_as(self, path: Path) -> None:
        """Save the sheet to a file of its own, to pass on."""
        self.files.save_as(path, self._open_job.job.sheet)

    def go_to_value(self, path: str) -> None:
        """Put the keyboard in the box of a value, by its path as in `missing_for`."""
        if path.startswith("legs."):
            self.legs_wanted.emit(path)
            return
        if path.startswith("fasteners."):
            name, _, field = path.removeprefix("fasteners.").rpartition(".")
            box = self.fasteners.rows[name].box_at(field)
        else:
            card = self.limits if path in self.limits.values else self.dimensions
            box = card.values[path]
        box.setFocus(Qt.FocusReason.OtherFocusReason)
        self._follow(box)

    def _lay_out(self) -> None:
        self._measures = FoldingRow(self._theme)
        self._measures.add(self.dimensions, 12)
        self._measures.add(self.drawing, 7, on_top=True)
        for card in (
            self.start_card,
            self.files,
            self.variant_card,
            self.missing_card,
            self.bike_card,
            self._measures,
            self.limits,
            self.fasteners,
            self.rules,
        ):
            self.page.add(card)
        self.variant_card.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(GAP)
        column.addWidget(self.said)
        # The page asks for no height of its own, so that its foot is never below the window.
        self.page.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Ignored)
        self.page.setMinimumHeight(self._theme.px(_LEAST_OF_PAGE))
        column.addWidget(self.page, 1)
        column.addWidget(self.start_card.foot)
        column.addWidget(self.go_on, 0, Qt.AlignmentFlag.AlignRight)

    def _connect(self) -> None:
        self.start_card.named.connect(
            lambda name: self._open_job.edit(
                say("bike's name"), lambda job: with_bike_name(job, name or "")
            )
        )
        self.start_card.titled.connect(
            lambda title: self._open_job.edit(
                say("job's title"), lambda job: with_job_title(job, title or "")
            )
        )
        self.start_card.started.connect(self._start)
        self.start_card.file_wanted.connect(self.files.ask_what_to_take_over)
        self.files.said.connect(self.said.say)
        self.files.another.connect(self._end_typing)
        self.files.variant_wanted.connect(self._begin_variant)
        self.variant_card.taken.connect(self._take_variant)
        self.variant_card.save_wanted.connect(
            lambda variant: self.files.ask_where_to_save(variant.sheet)
        )
        self.variant_card.closed.connect(self._leave_variant)
        self.missing_card.wanted.connect(self.go_to_value)
        self.missing_card.other_side_wanted.connect(self._take_from_other_side)
        self.fasteners.said.connect(self.said.say)
        self.rules.said.connect(self.said.say)
        self._walk_on(self.bike_card.note, self.dimensions)
        self._walk_on(self.dimensions, self.limits)
        list(self.limits.values.values())[-1].went_on.connect(self.fasteners.go_to_first)
        self.fasteners.went_on.connect(self._go_on)
        self.go_on.clicked.connect(self.finished)
        for path, box in self.dimensions.values.items():
            box.entered.connect(lambda path=path: self.drawing.light(path))
        for card in (self.missing_card, self.fasteners, self.rules):
            card.laid_out.connect(self._order_for_tab)
        self._open_job.started.connect(self._take_another_job)
        self._order_for_tab()

    def _order_for_tab(self) -> None:
        """Tab goes as the eye does, whatever has come or gone."""
        bike = self.bike_card
        stops = [
            *self.start_card.stops(),
            *self.files.stops,
            *self.variant_card.stops(),
            *self.missing_card.stops(),
        ]
        stops += [bike.name.line, bike.fork, bike.handlebars, bike.title.line, bike.note.line]
        for card in (self.dimensions, self.limits):
            for path, value in card.values.items():
                stops += [value.line, card.sources[path].line]
        stops += [*self.fasteners.stops(), *self.rules.stops(), self.go_on]
        walk_by_tab(stops)

    def _walk_on(self, before: QWidget, after: ValuesCard) -> None:
        first = next(iter(after.values.values()))
        last = list(before.values.values())[-1] if isinstance(before, ValuesCard) else before
        last.went_on.connect(lambda: first.setFocus(Qt.FocusReason.TabFocusReason))

    def _start(self, choices: dict[str, str]) -> None:
        self._open_job.edit(
            say("start a sheet"),
            lambda job: with_sheet(job, composed(choices, job.sheet), self._now()),
        )
        self.page.verticalScrollBar().setValue(0)
        if self.missing_card.links:
            self.missing_card.links[0].setFocus(Qt.FocusReason.OtherFocusReason)

    def _go_on(self) -> None:
        """From the last torque to what is still missing, or to the next stage."""
        if missing_on_sheet(self._open_job.job):
            self.missing_card.go_to_first()
        else:
            self.go_on.setFocus(Qt.FocusReason.TabFocusReason)

    def _take_from_other_side(self) -> None:
        """The manual prints one torque for both sides: it is typed once."""
        self._open_job.edit(
            say("torques of the other side"),
            lambda job: with_torques_of_the_other_side(job, self._now()),
        )
        self._go_on()

    def _begin_variant(self) -> None:
        self.variant_card.show()
        self.variant_card.begin(self._open_job.job.sheet)

    def _leave_variant(self) -> None:
        self.variant_card.hide()
        self.files.variant_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def _take_variant(self, variant: Variant) -> None:
        self._leave_variant()
        self._end_typing()
        self._open_job.edit(
            say("copy to a variant"), lambda job: with_sheet(job, variant.sheet, self._now())
        )
        now_of = say("This is the sheet of {bike} now.", bike=variant.sheet.name)
        self.said.say(f"{now_of} {variant.words}")

    def _follow(self, box: QWidget) -> None:
        """Scroll to a box, whose row may only just have been opened."""
        self.page.widget().layout().activate()
        self.page.ensureWidgetVisible(box, 50, self._theme.px(120))

    def _take_another_job(self) -> None:
        """Another job is opened: what was typed was not for it, and it is seen from its top."""
        self._end_typing()
        self.said.leave()
        self._is_at_the_top = False
        self.refresh()

    def _end_typing(self) -> None:
        for card in (self.dimensions, self.limits):
            for box in (*card.values.values(), *card.sources.values()):
                box.end_typing()
        for box in (*self.bike_card.lines, self.start_card.name, self.start_card.title):
            box.end_typing()
        self.fasteners.end_typing()
        self.rules.end_typing()
