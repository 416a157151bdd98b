"""What the window asks of a stage's page, and how each is made when it is first shown."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtWidgets import QWidget

from aligner.assessment import Stage
from aligner.window.setting import Setting


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

            bike = BikeStage(setting)
            bike.finished.connect(lambda: setting.go_to(Stage.STRIP))
            bike.legs_wanted.connect(lambda path: setting.go_to_value(Stage.BUILD, path))
            return bike
        case Stage.STRIP:
            from aligner.window.strip.stage import StripStage

            strip = StripStage(setting)
            strip.finished.connect(lambda: setting.go_to(Stage.INSPECT))
            strip.sheet_wanted.connect(lambda: setting.go_to(Stage.BIKE))
            return strip
        case Stage.INSPECT:
            from aligner.window.inspect.stage import InspectStage

            inspect = InspectStage(setting)
            inspect.finished.connect(lambda: setting.go_to(Stage.BUILD))
            return inspect
        case Stage.BUILD:
            from aligner.window.build.stage import BuildStage

            build = BuildStage(setting)
            build.finished.connect(lambda: setting.go_to(Stage.ALIGN))
            return build
        case Stage.ALIGN:
            from aligner.window.align.stage import AlignStage

            align = AlignStage(setting)
            align.finished.connect(lambda: setting.go_to(Stage.TIGHTEN))
            return align
        case Stage.TIGHTEN:
            from aligner.window.tighten.stage import TightenStage

            tighten = TightenStage(setting)
            tighten.finished.connect(lambda: setting.go_to(Stage.PROVE))
            tighten.heights_wanted.connect(lambda: setting.go_to(Stage.ALIGN))
            tighten.sheet_wanted.connect(lambda: setting.go_to(Stage.BIKE))
            return tighten
        case Stage.PROVE:
            from aligner.window.prove.stage import ProveStage

            return ProveStage(setting)
