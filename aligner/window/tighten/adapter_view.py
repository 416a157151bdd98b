"""The adapter's sketch on the screen, with what it does to the setting in words."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from aligner.drawing.adapter_sketch import AdapterSketch, paint_adapter_sketch
from aligner.drawing.theme import Theme
from aligner.job import Adapter, TorqueWrench
from aligner.language import say, written


def sketch_of(wrench: TorqueWrench | None, adapter: Adapter) -> AdapterSketch:
    """The sketch of an adapter on a wrench."""
    grip = wrench.grip_length.said if wrench is not None and wrench.grip_length else ""
    return AdapterSketch(
        grip_length=grip,
        effective_length=adapter.effective_length.said,
        angle_deg=adapter.angle.value,
        is_concentric=adapter.concentric,
    )


def adapter_words(wrench: TorqueWrench | None, adapter: Adapter) -> str:
    """What an adapter does to the setting."""
    angle = adapter.angle.value
    if adapter.concentric:
        return say("Concentric on the fastener: it changes nothing in the setting.")
    if round(angle, 3) == 90.0:
        return say("Square to the wrench: it changes nothing in the setting.")
    if wrench is None or wrench.grip_length is None:
        return say("Measure L, from drive to the middle of the grip, or set the adapter at 90°.")
    if angle < 90.0:
        return say("Set lower for it; pull at the middle of the grip.")
    return say("Set higher for it; pull at the middle of the grip.")


def sketch_words(sketch: AdapterSketch) -> str:
    """The sketch for one who does not see it."""
    grip = sketch.grip_length or say("not measured", meaning="length")
    if sketch.is_concentric:
        return say("sketch: L {grip}, E {adapter}.", grip=grip, adapter=sketch.effective_length)
    return say(
        "sketch: L {grip}, E {adapter} at {angle}.",
        grip=grip,
        adapter=sketch.effective_length,
        angle=f"{written(sketch.angle_deg)}°",
    )


class AdapterView(QWidget):
    """The sketch; it takes no height when there is no adapter."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        self._theme = theme
        self._sketch: AdapterSketch | None = None
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Maximum)
        self.hide()

    def show_adapter(self, wrench: TorqueWrench | None, adapter: Adapter | None) -> None:
        """Show an adapter on a wrench; hidden for a plain socket."""
        self._sketch = sketch_of(wrench, adapter) if adapter is not None else None
        self.setVisible(self._sketch is not None)
        if self._sketch is not None and adapter is not None:
            self.setAccessibleName(f"{sketch_words(self._sketch)} {adapter_words(wrench, adapter)}")
        self.updateGeometry()
        self.update()

    def sizeHint(self) -> QSize:
        is_high = self._sketch is not None and 20 < self._sketch.angle_deg < 160
        return QSize(self._theme.px(300), self._theme.px(122 if is_high else 92))

    def minimumSizeHint(self) -> QSize:
        return QSize(self._theme.px(200), round(self.sizeHint().height() * 0.7))

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._sketch is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        paint_adapter_sketch(painter, self._theme, QRectF(self.rect()), self._sketch)
