"""What every page is made with."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime

from aligner.assessment import Stage
from aligner.drawing.theme import Theme
from aligner.job.stamps import now_here
from aligner.units.preferred import Preferred
from aligner.window.open_job import OpenJob


@dataclass(frozen=True)
class Setting:
    """The job on the screen, how it is shown, and what the window does for a page.

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
    now: Callable[[], datetime] = now_here
    go_to: Callable[[Stage], None] = lambda _stage: None
    save: Callable[[], bool] = lambda: False
    go_to_value: Callable[[Stage, str], None] = lambda _stage, _path: None
