"""What the window asks of a stage's page, and how each is made when it is first shown."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from typing import Protocol

from PySide6.QtWidgets import QWidget

from aligner.assessment import Stage
from aligner.drawing.theme import Theme
from aligner.units.preferred import Preferred
from aligner.window.open_job import OpenJob


@dataclass(frozen=True)
class Setting:
    """What every page is made with.

    Attributes:
        open_job: the job on the screen, and the one door for edits.
        theme: colours and sizes.
        show: the units a person prefers.
        now: the time, with the offset from UTC.
        go_to: shows another stage.
        save: saves the job, asking for a file where it has none; whether it is saved now.
        go_to_value: shows another stage with the keyboard in the box of a value, by its path.
    """

    open_job: OpenJob
    theme: Theme
    show: Preferred
    now: Callable[[], datetime]
    go_to: Callable[[Stage], None]
    save: Callable[[], bool] = lambda: False
    go_to_value: Callable[[Stage, str], None] = lambda _stage, _path: None


class StagePage(Protocol):
    """A page: it shows the open job, and says what to do now."""

    def sentence(self) -> tuple[str, ...]:
        """What to do now, its detail, and a caution where there is one."""
        ...

    def refresh(self) -> None:
        """Show the job as it is now."""
        ...

    def begin(self) -> None:
        """Put the keyboard where the work begins."""
        ...


def make_page(stage: Stage, setting: Setting) -> QWidget:
    """The page of a stage; each is imported only when it is first shown."""
    match stage:
        case Stage.BIKE:
            from aligner.window.bike.stage import BikeStage

            bike = BikeStage(setting.open_job, setting.theme, setting.show, setting.now)
            bike.finished.connect(lambda: setting.go_to(Stage.STRIP))
            bike.legs_wanted.connect(lambda path: setting.go_to_value(Stage.BUILD, path))
            return bike
        case Stage.STRIP:
            from aligner.window.strip.stage import StripStage

            strip = StripStage(setting.open_job, setting.theme, setting.show, setting.now)
            strip.finished.connect(lambda: setting.go_to(Stage.INSPECT))
            strip.sheet_wanted.connect(lambda: setting.go_to(Stage.BIKE))
            return strip
        case Stage.INSPECT:
            from aligner.window.inspect.stage import InspectStage

            inspect = InspectStage(
                setting.open_job, setting.theme, setting.show, setting.now, setting.save
            )
            inspect.finished.connect(lambda: setting.go_to(Stage.BUILD))
            return inspect
        case Stage.BUILD:
            from aligner.window.build.stage import BuildStage

            build = BuildStage(setting.open_job, setting.theme, setting.show, setting.now)
            build.finished.connect(lambda: setting.go_to(Stage.ALIGN))
            return build
        case Stage.ALIGN:
            from aligner.window.align.stage import AlignStage

            align = AlignStage(setting.open_job, setting.theme, setting.show, setting.now)
            align.finished.connect(lambda: setting.go_to(Stage.TIGHTEN))
            return align
        case Stage.TIGHTEN:
            from aligner.window.tighten.stage import TightenStage

            tighten = TightenStage(setting.open_job, setting.theme, setting.show, setting.now)
            tighten.finished.connect(lambda: setting.go_to(Stage.PROVE))
            tighten.heights_wanted.connect(lambda: setting.go_to(Stage.ALIGN))
            tighten.sheet_wanted.connect(lambda: setting.go_to(Stage.BIKE))
            return tighten
        case Stage.PROVE:
            from aligner.window.prove.stage import ProveStage

            return ProveStage(setting.open_job, setting.theme, setting.show, now=setting.now)
