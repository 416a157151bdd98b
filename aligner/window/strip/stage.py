"""The Strip stage: how it was found, what is loosened in which order, and what came off."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QWidget

from aligner.assessment.strip import StripAssessment, StripSubject
from aligner.drawing.theme import GAP, ROOM
from aligner.language import say
from aligner.window.setting import Setting
from aligner.window.strip.as_found import AsFoundView
from aligner.window.strip.loosen import LoosenView
from aligner.window.strip.parts import PartsView
from aligner.window.strip.views import StripView, StripViewRow
from aligner.window.strip.words import Said, sentence_words
from aligner.window.widgets.labels import main_button
from aligner.window.widgets.part_stack import PartStack
from aligner.window.widgets.standing_foot import StandingFoot
from aligner.window.widgets.wrapping_row import WrappingRow


class StripStage(QWidget):
    """Taking apart, in three parts of one page.

    Signals:
        finished: the person goes on to look at the parts.
        sheet_wanted: the fasteners are to be given, on the Bike stage.
    """

    finished = Signal()
    sheet_wanted = Signal()

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        open_job, theme, show = setting.open_job, setting.theme, setting.show
        self._open_job = setting.open_job
        self._is_begun = False
        self._view = StripView.LOOSEN
        self.as_found = AsFoundView(open_job, theme, show)
        self.loosen = LoosenView(setting)
        self.parts = PartsView(open_job, theme, setting.now)
        self._pages: dict[StripView, QWidget] = {
            StripView.AS_FOUND: self.as_found,
            StripView.LOOSEN: self.loosen,
            StripView.PARTS: self.parts,
        }
        self.views = StripViewRow()
        self.go_on = main_button("")
        self.loosen.door.hide()
        self._stack = PartStack()
        for page in self._pages.values():
            self._stack.addWidget(page)
        below = QWidget()
        foot = WrappingRow(below, spacing=ROOM)
        foot.add(self.views)
        foot.add(self.loosen.door, 1)
        foot.add_room()
        foot.add(self.go_on)
        self._page = StandingFoot(self, theme, self._stack, below)
        self._page.setSpacing(GAP)
        self.views.chosen.connect(self._open)
        self.go_on.clicked.connect(self._go_on)
        self.as_found.went_on.connect(self._to_button)
        self.parts.went_on.connect(self._to_button)
        self.loosen.finished.connect(self.finished)
        self.loosen.readings_wanted.connect(self._read)
        open_job.started.connect(self._take_another_job)

    @property
    def view(self) -> StripView:
        """The part of the page that is open."""
        return self._view

    def sentence(self) -> Said:
        """What to do now on the part that is open."""
        return sentence_words(self._found, self._view, self.loosen.chosen)

    def refresh(self) -> None:
        """Show the job as it is now, on the part that is open."""
        if not self._is_begun:
            self._is_begun, self._view = True, self._first_view()
        self._show_view()
        for view, page in ((StripView.AS_FOUND, self.as_found), (StripView.LOOSEN, self.loosen)):
            if view is self._view:
                page.refresh()
        if self._view is StripView.PARTS:
            self.parts.refresh()

    def begin(self) -> None:
        """Put the keyboard where the work stands; at refitting that is what goes back."""
        self.refresh()
        done = self._found.subject is StripSubject.DONE
        if done and self._found.to_go_back and self._is_refitting:
            self._view = StripView.PARTS
        self._begin_view()

    def _begin_view(self) -> None:
        self.refresh()
        match self._view:
            case StripView.AS_FOUND:
                self.as_found.begin()
            case StripView.LOOSEN if self._is_without_list:
                self._to_button()
            case StripView.LOOSEN:
                self.loosen.begin()
            case _ if self._found.is_finished and self._found.to_go_back and self._is_refitting:
                self.parts.begin_back()
            case _:
                self.parts.begin()

    @property
    def _found(self) -> StripAssessment:
        return self._open_job.assessment.strip

    @property
    def _is_refitting(self) -> bool:
        job = self._open_job.job
        return bool(job.log) or any(each.back for each in job.strip.removed)

    def _first_view(self) -> StripView:
        found = self._found
        if found.subject is StripSubject.HEIGHTS or not found.steps:
            return StripView.AS_FOUND
        if found.subject is StripSubject.DONE and found.to_go_back:
            return StripView.PARTS
        return StripView.LOOSEN

    def _open(self, view: StripView) -> None:
        self._view = view
        self._begin_view()
        self._open_job.look_changed.emit()

    def _read(self, reads: str) -> None:
        self._open(StripView.AS_FOUND)
        self.as_found.begin(reads)

    def _go_on(self) -> None:
        if self._is_without_list:
            self.sheet_wanted.emit()
        elif self._leads_to_loosen:
            self._open(StripView.LOOSEN)
        else:
            self.finished.emit()

    @property
    def _is_without_list(self) -> bool:
        """Whether there is nothing to loosen because the sheet lists no fasteners."""
        return self._view is StripView.LOOSEN and not self._found.steps

    @property
    def _leads_to_loosen(self) -> bool:
        """Whether the loosening comes after the part that is open, and not the next stage."""
        is_loosening = self._found.subject is StripSubject.LOOSEN
        return self._view is StripView.AS_FOUND or (is_loosening and not self._is_refitting)

    def _to_button(self) -> None:
        self.go_on.setFocus(Qt.FocusReason.TabFocusReason)

    def _show_view(self) -> None:
        self.views.show_view(self._view)
        if self._stack.currentWidget() is not self._pages[self._view]:
            self._stack.setCurrentWidget(self._pages[self._view])
            self._page.go_to_top()
        is_loosen = self._view is StripView.LOOSEN
        self.loosen.door.setVisible(is_loosen and not self._is_without_list)
        self.go_on.setVisible(not is_loosen or self._is_without_list)
        if self._is_without_list:
            self.go_on.setText(say("Go to Bike   Enter"))
        elif self._leads_to_loosen:
            self.go_on.setText(say("Go on to Loosen   Enter"))
        else:
            self.go_on.setText(say("Go on to Inspect   Enter"))

    def _take_another_job(self) -> None:
        """Another job is opened: it begins at its own beginning, and nothing is typed for it."""
        self._is_begun = False
        self.parts.pick.forget_typing()
        self.as_found.fields.forget_typing()
