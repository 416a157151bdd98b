"""The bench view: the sentence, the drawing and the step in hand, read from three metres.

The trap: a second screen that knows better. It shows the open job and keeps nothing: readings
go through the same edits as on the Align page, ticks through the same door as on Tighten.

Type that is read from three metres is to be 14 mm high at least, 16 minutes of arc, which is
the least of ISO 9241-303 (from memory); on a screen half a metre wide that is a capital of 34
points of the 1280 across the window, and so type of 47.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from aligner.assessment import Stage
from aligner.drawing.theme import GAP, ROOM
from aligner.language import marked, say
from aligner.window.bench.align import BenchAlign
from aligner.window.bench.panel import BenchPanel
from aligner.window.bench.step import BenchStep
from aligner.window.bench.words import BenchWords
from aligner.window.setting import Setting
from aligner.window.widgets.labels import label

Said = Callable[[], tuple[str, ...]]

_KEYS = {
    Stage.ALIGN: marked(
        "A gauge types number and Enter    Ctrl+Z takes a reading back    Escape leaves"
    ),
    Stage.TIGHTEN: marked(
        "Space or Enter: done    a number goes to the torque seen    Escape leaves"
    ),
}
_KEYS_OF_THE_REST = marked("Escape leaves")


class _Pages(QStackedWidget):
    """The pages take the room there is; what wraps inside never pushes the sentence away."""

    def hasHeightForWidth(self) -> bool:
        return False


class BenchView(QWidget):
    """One stage of the open job in very large type.

    Signals:
        left: Escape was pressed and nothing was asked or being typed.
        stage_wanted: the stage that comes next; whoever shows the view shows it.
    """

    left = Signal()
    stage_wanted = Signal(object)

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme = setting.theme
        self.setObjectName("ground")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._stage = Stage.ALIGN
        self._page_said: Said = lambda: ("", "")
        self.words = BenchWords(theme, 84)
        self.detail = BenchWords(theme, 36, role="quiet", bold=False)
        self.caution = BenchWords(theme, 34, framed=True)
        self.align = BenchAlign(setting)
        self.step = BenchStep(setting)
        self.rest = BenchPanel(say("what to do now"))
        self.rest_words = BenchWords(theme, 110)
        self.rest_detail = BenchWords(theme, 60, bold=False)
        self.rest.column.addWidget(self.rest_words, 3)
        self.rest.column.addWidget(self.rest_detail, 2)
        self.keys = label("", "text", wraps=True)
        self._stack = _Pages()
        for page in (self.align, self.step, self.rest):
            self._stack.addWidget(page)
        self._stack.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(theme.px(ROOM), theme.px(GAP), theme.px(ROOM), theme.px(4))
        self._column.setSpacing(theme.px(GAP))
        for widget, share in (
            (self.words, 21),
            (self.detail, 10),
            (self.caution, 8),
            (self._stack, 68),
        ):
            self._column.addWidget(widget, share)
        self.words.setMinimumHeight(theme.px(50))
        self._column.addWidget(self.keys)
        self.align.finished.connect(lambda: self.stage_wanted.emit(Stage.TIGHTEN))
        self.step.finished.connect(lambda: self.stage_wanted.emit(Stage.PROVE))
        self.step.align_wanted.connect(lambda: self.stage_wanted.emit(Stage.ALIGN))

    @property
    def stage(self) -> Stage:
        """The stage on the screen."""
        return self._stage

    def show_stage(self, stage: Stage, said: Said | None = None) -> None:
        """Show a stage.

        Args:
            stage: that is open.
            said: the `sentence` of the stage's own page, for the stages that have nothing of
                their own here; Align and Tighten say theirs without it.
        """
        self._stage = stage
        self._page_said = said or (lambda: (stage.title, ""))
        self._stack.setCurrentWidget(self._page)
        self.refresh()
        self.begin()

    def sentence(self) -> tuple[str, ...]:
        """What to do now, its detail, and a caution where there is one."""
        match self._stage:
            case Stage.ALIGN:
                return self.align.sentence()
            case Stage.TIGHTEN:
                return self.step.sentence()
        return self._page_said()

    def refresh(self) -> None:
        """Show the job as it is now."""
        if self._stage is Stage.ALIGN:
            self.align.refresh()
        elif self._stage is Stage.TIGHTEN:
            self.step.refresh()
        said = self.sentence()
        has_page = self._stage in _KEYS
        self.words.say(said[0] if has_page else "")
        self.detail.say(said[1] if has_page else "")
        caution = said[2] if len(said) > 2 else ""
        self.caution.say(say("Caution: {text}", text=caution) if caution else "")
        self.rest_words.say(said[0])
        self.rest_detail.say(said[1])
        self.rest.setAccessibleName(f"{said[0]} {said[1]}".strip())
        self.keys.setText(_unbroken(say(_KEYS.get(self._stage, _KEYS_OF_THE_REST))))

    def begin(self) -> None:
        """Put the keyboard where the work begins."""
        if self._page is self.rest:
            self.rest.setFocus(Qt.FocusReason.OtherFocusReason)
        else:
            self._page.begin()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)

    @property
    def _page(self) -> QWidget:
        return {Stage.ALIGN: self.align, Stage.TIGHTEN: self.step}.get(self._stage, self.rest)


def _unbroken(keys: str) -> str:
    """Keys and what each does, with a line's end between two of them alone."""
    between = " " * 4
    return between.join(each.replace(" ", "\u00a0") for each in keys.split(between))
