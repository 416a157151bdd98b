"""The fold-out with the owner's wrenches and adapters, and the choice for the joint in hand."""

from __future__ import annotations

from typing import NamedTuple

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget

from aligner.assessment import Assessment, StepStanding
from aligner.drawing.theme import Theme
from aligner.job import Adapter, Job
from aligner.job.edits_tighten import (
    with_adapter,
    with_wrench,
    with_wrench_choice,
    without_adapter,
    without_wrench,
)
from aligner.language import marked, say
from aligner.units.preferred import Preferred
from aligner.window.open_job import OpenJob
from aligner.window.tighten.adapter_view import AdapterView, adapter_words
from aligner.window.tighten.tool_form import ToolForm
from aligner.window.tighten.tool_shelf import ToolShelf
from aligner.window.tighten.wrench_choice_card import WrenchChoiceCard
from aligner.window.tighten.wrench_fields import (
    ADAPTER_FIELDS,
    WRENCH_FIELDS,
    FieldRefused,
    adapter_from,
    adapter_line,
    texts_of,
    wrench_from,
    wrench_line,
)
from aligner.window.widgets.labels import label
from aligner.window.widgets.page import Page

_NO_WRENCH = marked("No wrench yet. With one, each step says what to set on its own scale.")
_NO_ADAPTER = marked("None. A plain socket needs no entry: it changes nothing in the setting.")
_CONCENTRIC = marked("Concentric on the fastener, as a socket is: changes nothing in the setting")


class FormInHand(NamedTuple):
    """A form that is filled in: of which kind and which tool, and what stands in it."""

    is_adapter: bool
    old_name: str
    texts: dict[str, str]
    is_ticked: bool


class WrenchCard(QWidget):
    """Wrenches and adapters; it folds out beside the step in hand.

    Signals:
        left: it is to be folded away.
    """

    left = Signal()

    def __init__(self, open_job: OpenJob, theme: Theme, show: Preferred) -> None:
        super().__init__()
        self._open_job = open_job
        self._show = show
        self._standing: StepStanding | None = None
        self._old_name = ""
        self.choice = WrenchChoiceCard()
        self.wrenches = ToolShelf(say("Torque wrenches"), say(_NO_WRENCH), say("Add a wrench"))
        self.wrench_form = ToolForm(theme, WRENCH_FIELDS, self._keep_wrench)
        self.adapters = ToolShelf(say("Adapters"), say(_NO_ADAPTER), say("Add an adapter"))
        self.adapter_form = ToolForm(theme, ADAPTER_FIELDS, self._keep_adapter, say(_CONCENTRIC))
        self._sketch = AdapterView(theme)
        self._sketch_words = label("", "small", wraps=True)
        self.adapter_form.column.insertWidget(3, self._sketch)
        self.adapter_form.column.insertWidget(4, self._sketch_words)
        self.page = Page(say("Wrenches and adapters"))
        self.back = QPushButton(say("Back to the list   Esc"))
        for card in (
            self.choice,
            self.wrenches,
            self.wrench_form,
            self.adapters,
            self.adapter_form,
        ):
            self.page.add(card)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page, 1)
        column.addWidget(self.back, 0, Qt.AlignmentFlag.AlignRight)
        self._connect()

    def show_job(self, job: Job, assessment: Assessment, standing: StepStanding | None) -> None:
        """Show the job's tools, and the choice for the step on the screen."""
        self._standing = standing
        if self.wrench_form.isHidden() and self.adapter_form.isHidden():
            self.choice.show_step(job, assessment.tightening, standing)
        self.wrenches.show_tools({name: wrench_line(each) for name, each in job.wrenches.items()})
        self.adapters.show_tools({name: adapter_line(each) for name, each in job.adapters.items()})

    def stops(self) -> list[QWidget]:
        """Where the keyboard stops, as the eye goes."""
        return [
            self.page,
            self.choice.wrench,
            self.choice.adapter,
            *self.wrenches.stops(),
            *self.wrench_form.stops(),
            *self.adapters.stops(),
            *self.adapter_form.stops(),
            self.back,
        ]

    def begin(self) -> None:
        """Put the keyboard where the work begins: the choice, or the first wrench."""
        place: QWidget = self.wrenches.add if self.choice.isHidden() else self.choice.wrench
        for form in (self.wrench_form, self.adapter_form):
            if not form.isHidden():
                place = form.lines["name"]
        place.setFocus(Qt.FocusReason.OtherFocusReason)

    def lay_by(self) -> FormInHand | None:
        """The form that is open, with what stands in it."""
        for form in (self.wrench_form, self.adapter_form):
            if not form.isHidden():
                is_adapter = form is self.adapter_form
                return FormInHand(is_adapter, self._old_name, form.texts(), form.tick.isChecked())
        return None

    def take_up(self, laid_by: FormInHand) -> None:
        """Open a form again as it was left."""
        change = self._change_adapter if laid_by.is_adapter else self._change_wrench
        change(laid_by.old_name)
        form = self.adapter_form if laid_by.is_adapter else self.wrench_form
        form.fill(laid_by.texts, is_ticked=laid_by.is_ticked)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    def _connect(self) -> None:
        self.back.clicked.connect(self.left)
        self.choice.chosen.connect(self._choose)
        self.wrenches.one_more.connect(lambda: self._change_wrench(""))
        self.wrenches.change_wanted.connect(self._change_wrench)
        self.wrenches.removed.connect(self._remove_wrench)
        self.adapters.one_more.connect(lambda: self._change_adapter(""))
        self.adapters.change_wanted.connect(self._change_adapter)
        self.adapters.removed.connect(self._remove_adapter)
        self.adapter_form.typed.connect(self._show_sketch)
        for form, shelf in (
            (self.wrench_form, self.wrenches),
            (self.adapter_form, self.adapters),
        ):
            form.left.connect(lambda shelf=shelf: self._form_left(shelf))

    def _choose(self, wrench: str, adapter: str) -> None:
        joint = self._standing.step.joint if self._standing is not None else None
        if joint is not None:
            self._open_job.edit(
                say("wrench for the {joint}", joint=joint),
                lambda job: with_wrench_choice(job, joint, wrench or None, adapter or None),
            )

    def _change_wrench(self, name: str) -> None:
        self._old_name = name
        title = say("Change {name}", name=name) if name else say("Another wrench")
        self.wrench_form.begin(title, texts_of(self._open_job.job.wrenches.get(name), name))
        self._show_form(self.wrench_form)

    def _keep_wrench(self, texts: dict[str, str], _: bool) -> None:
        old = self._old_name
        name, wrench = wrench_from(texts, self._open_job.job.wrenches.get(old))
        self._open_job.edit(
            say("wrench {name}", name=name),
            lambda job: with_wrench(job, old or None, name, wrench),
        )

    def _remove_wrench(self, name: str) -> None:
        self._open_job.edit(say("remove {name}", name=name), lambda job: without_wrench(job, name))
        self.wrenches.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _change_adapter(self, name: str) -> None:
        self._old_name = name
        adapter = self._open_job.job.adapters.get(name)
        title = say("Change {name}", name=name) if name else say("Another adapter")
        concentric = adapter is not None and adapter.concentric
        self.adapter_form.begin(title, texts_of(adapter, name), is_ticked=concentric)
        self._show_form(self.adapter_form)

    def _keep_adapter(self, texts: dict[str, str], concentric: bool) -> None:
        old = self._old_name
        before = self._open_job.job.adapters.get(old)
        name, adapter = adapter_from(texts, before, concentric=concentric)
        self._open_job.edit(
            say("adapter {name}", name=name),
            lambda job: with_adapter(job, old or None, name, adapter),
        )

    def _remove_adapter(self, name: str) -> None:
        self._open_job.edit(say("remove {name}", name=name), lambda job: without_adapter(job, name))
        self.adapters.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_form(self, form: ToolForm) -> None:
        """The form has the room to itself until it is kept or left."""
        for card in (self.choice, self.wrenches, self.adapters):
            card.hide()
        for other in (self.wrench_form, self.adapter_form):
            other.setVisible(other is form)

    def _form_left(self, shelf: ToolShelf) -> None:
        for card in (self.wrenches, self.adapters):
            card.show()
        assessment = self._open_job.assessment
        self.choice.show_step(self._open_job.job, assessment.tightening, self._standing)
        shelf.add.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_sketch(self) -> None:
        """The sketch of what is being typed, as far as it can be read."""
        texts = {"name": "adapter", **self.adapter_form.texts()}
        texts["name"] = texts["name"].strip() or "adapter"
        try:
            _, adapter = adapter_from(texts, None, concentric=self.adapter_form.tick.isChecked())
        except FieldRefused:
            shown: Adapter | None = None
        else:
            shown = adapter
        wrench = next(iter(self._open_job.job.wrenches.values()), None)
        tool = self._standing.tool if self._standing is not None else None
        if tool is not None and tool.wrench:
            wrench = self._open_job.job.wrenches.get(tool.wrench, wrench)
        self._sketch.show_adapter(wrench, shown)
        self._sketch_words.setText(adapter_words(wrench, shown) if shown is not None else "")
        self._sketch_words.setVisible(shown is not None)
