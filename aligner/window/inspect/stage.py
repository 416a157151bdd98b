"""The Inspect stage: what to look at in a list, the place in hand large beside it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from aligner.assessment.inspection import InspectionAssessment, PlaceStanding
from aligner.job.edits_inspect import with_finding
from aligner.job.inspect import Finding, Place
from aligner.language import say
from aligner.window.inspect.doors import PlaceDoors, step_name
from aligner.window.inspect.list import PARTS, InspectList
from aligner.window.inspect.panel import InspectPanel
from aligner.window.inspect.parts import PartsPage
from aligner.window.inspect.photograph_view import PhotographView
from aligner.window.inspect.words import count_words, given_words, headline, whole_words
from aligner.window.setting import Setting
from aligner.window.typed_texts import KEY
from aligner.window.widgets.folding_row import FoldingRow
from aligner.window.widgets.labels import label, main_button
from aligner.window.widgets.part_stack import PartStack
from aligner.window.widgets.standing_foot import StandingFoot
from aligner.window.widgets.wrapping_row import WrappingRow


class InspectStage(QWidget):
    """The findings of a job.

    Signals:
        finished: everything is looked at and the person goes on.
    """

    finished = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        open_job, theme = setting.open_job, setting.theme
        self._open_job = setting.open_job
        self._theme = setting.theme
        self._show = setting.show
        self._now = setting.now
        self._save = setting.save
        self._in_hand: Place = PARTS
        self.panels: dict[Place, InspectPanel] = {}
        self.list = InspectList(theme)
        self.parts = PartsPage(theme, setting.show)
        self.large = PhotographView(theme)
        self._stack = PartStack()
        self._stack.addWidget(self.parts)
        self._stack.addWidget(self.large)
        self.count = label("", "quiet")
        self.next = main_button(say("Next   Enter"))
        self._foot = QWidget()
        foot = WrappingRow(self._foot)
        foot.add(self.count)
        foot.add_room()
        foot.add(self.next)
        right = QWidget()
        self._beside_list = QVBoxLayout(right)
        self._beside_list.setContentsMargins(0, 0, 0, 0)
        self._beside_list.addWidget(self._stack, 1)
        self._beside_list.addWidget(self._foot)
        row = FoldingRow(theme, last_on_top=True)
        row.add(self.list, 0)
        row.add(right)
        row.folded.connect(self._place_foot)
        self._page = StandingFoot(self, theme, row, self._foot)
        self._place_foot(is_folded=False)
        self.list.chosen.connect(self._choose)
        self.list.given.connect(self._give)
        self.list.entered.connect(self._enter)
        self.next.clicked.connect(self._go_on)
        self.large.left.connect(self._leave_photograph)
        open_job.started.connect(self._take_another_job)

    def sentence(self) -> tuple[str, str]:
        """The place in hand and how it is looked at, or what the findings come to."""
        standing = self._standing()
        if standing is None:
            return whole_words(self._inspection)
        return headline(standing), say(standing.point.how)

    def refresh(self) -> None:
        """Show the job as it is now."""
        inspection = self._inspection
        if self._in_hand != PARTS and inspection.at_place(self._in_hand) is None:
            self._in_hand = self._next_after(self._in_hand)
        self.list.show_places(inspection, self._in_hand)
        if self._in_hand == PARTS:
            self.parts.show_parts(inspection, self._open_job.job.sheet.name)
        self.count.setText(count_words(inspection))
        standing = self._standing()
        if standing is not None:
            self._panel(standing).show_standing(self._open_job.job, standing)
        self._show_in_hand()

    def begin(self) -> None:
        """Take the next place in hand and put the keyboard where it is entered."""
        ahead = self._inspection.next_place
        standing = self._standing()
        if standing is None or standing.found.finding is not None:
            self._in_hand = ahead.place if ahead else PARTS
        self._show_photograph_no_more()
        self.refresh()
        self._enter(self._in_hand)

    @property
    def _inspection(self) -> InspectionAssessment:
        return self._open_job.assessment.inspection

    def _standing(self) -> PlaceStanding | None:
        return self._inspection.at_place(self._in_hand)

    def _panel(self, standing: PlaceStanding) -> InspectPanel:
        place = standing.place
        if place not in self.panels:
            doors = PlaceDoors(self._open_job, self._now, place, standing.title)
            made = InspectPanel(self._theme, self._show, doors, self._save, standing)
            made.setProperty(KEY, str(place))
            made.went_on.connect(self._go_on)
            made.photograph_opened.connect(self._open_photograph)
            self._stack.addWidget(made)
            self.panels[place] = made
        return self.panels[place]

    def _show_in_hand(self) -> None:
        if self._stack.currentWidget() is self.large:
            return
        panel = self.panels.get(self._in_hand)
        shown: QWidget = panel or self.parts
        if self._stack.currentWidget() is not shown:
            self._stack.setCurrentWidget(shown)
            self._page.go_to_top()
        if panel is not None:
            QWidget.setTabOrder(panel.photographs.add, self.next)  # as the eye goes
        is_finished = self._in_hand == PARTS and self._inspection.next_place is None
        self.next.setText(say("Go on to Build   Enter") if is_finished else say("Next   Enter"))

    def _place_foot(self, is_folded: bool) -> None:
        """Folded, the page scrolls, and the foot stays below it, where it is always in sight."""
        (self._page if is_folded else self._beside_list).addWidget(self._foot)

    def _choose(self, place: Place) -> None:
        self._show_photograph_no_more()
        self._in_hand = place
        self.refresh()
        self._open_job.look_changed.emit()

    def _give(self, place: Place, finding: Finding) -> None:
        at = self._now()
        standing = self._inspection.at_place(place)
        title = standing.title if standing else place[0]
        self._open_job.edit(
            step_name(title, given_words(finding)),
            lambda job: with_finding(job, place, finding, at),
        )

    def _enter(self, place: Place) -> None:
        """Into the entries of a place; on from one that has its finding already."""
        standing = self._inspection.at_place(place)
        if standing is None:
            self._begin_parts()
        elif standing.found.finding is not None and self.list.hasFocus():
            self._choose(self._next_after(place))
        else:
            self._panel(standing).begin()

    def _go_on(self) -> None:
        if self._in_hand == PARTS and self._inspection.next_place is None:
            self.finished.emit()
            return
        self._choose(self._next_after(self._in_hand))
        standing = self._standing()
        if standing is None:
            self._begin_parts()
        else:
            self._panel(standing).begin()

    def _begin_parts(self) -> None:
        if self._inspection.open_parts:  # the list is wanted to order them by
            self.parts.begin()
        else:
            self.next.setFocus(Qt.FocusReason.OtherFocusReason)

    def _next_after(self, place: Place) -> Place:
        """The next place without a finding, from here on and then from the top."""
        places = [each.place for each in self._inspection.places]
        here = places.index(place) if place in places else -1
        for each in (*places[here + 1 :], *places[: here + 1]):
            standing = self._inspection.at_place(each)
            if standing is not None and standing.found.finding is None and each != place:
                return each
        return PARTS

    def _open_photograph(self, name: str) -> None:
        standing = self._standing()
        if standing is None:
            return
        doors = PlaceDoors(self._open_job, self._now, standing.place, standing.title)
        names = standing.found.photographs
        self.large.show_photographs([(each, doors.photograph_file(each)) for each in names], name)
        self._stack.setCurrentWidget(self.large)
        self.large.setFocus()

    def _leave_photograph(self, name: str) -> None:
        self._show_photograph_no_more()
        panel = self.panels.get(self._in_hand)
        if panel is not None:
            panel.photographs.go_back_to(name)

    def _show_photograph_no_more(self) -> None:
        if self._stack.currentWidget() is self.large:
            self._stack.setCurrentWidget(self.panels.get(self._in_hand) or self.parts)

    def _take_another_job(self) -> None:
        """Another job is opened: what was typed was not for it."""
        self._in_hand = PARTS
        panels, self.panels = self.panels, {}
        for panel in panels.values():
            panel.close_doors()
            self._stack.removeWidget(panel)
            panel.deleteLater()
        if self.isVisible():
            self.refresh()
