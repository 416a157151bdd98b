"""The spacer that the sag asks for: the one that was in while it was read, and its change.

The trap: the readings are of the spacer that was in then. Reckoned from one that was fitted
afterwards, the same change would be made twice.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.build_sag import SagAssessment
from aligner.assessment.build_spring import (
    CUT_TO_MM,
    SpringAssessment,
    about_margin,
    is_as_long,
    margin_with,
    preload_of,
)
from aligner.assessment.notice import Notice, attention
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.language import say, written

WHERE = "build.sag.spacer"


@dataclass(frozen=True)
class SpacerChange:
    """What the sag asks of the spacer.

    Attributes:
        was_mm: the spacer that was in while the sag was read; `None` where it was not given.
        change_mm: of it (positive: longer).
        length_mm: the new one; `None` where it is not known or cannot be.
        margin_mm: what it leaves at full travel before the coils touch.
        is_in: whether the spacer that went in is that one already.
        not_counted_mm: the spacer that went in, where it is neither of the two; else `None`.
        notices: what to know.
    """

    was_mm: float | None
    change_mm: float
    length_mm: float | None = None
    margin_mm: float | None = None
    is_in: bool = False
    not_counted_mm: float | None = None
    notices: tuple[Notice, ...] = ()


def spacer_change(job: Job, spring: SpringAssessment, sag: SagAssessment) -> SpacerChange | None:
    """What a job's sag asks of the spacer; `None` where it asks for nothing."""
    change = sag.leading.change_mm
    if change is None or sag.leading.verdict is not Verdict.OUT:
        return None
    spacer = job.build.sag.spacer
    if spacer is None:
        return SpacerChange(None, change)
    length = spacer.value + change
    if -CUT_TO_MM <= length < 0:
        length = 0.0  # as near to none as one can be cut
    fitted = job.build.spring.fitted_spacer
    if is_as_long(fitted, length) and not is_as_long(spacer, length):
        return SpacerChange(spacer.value, change, length, is_in=True)
    if length < 0:
        text = say(
            "The spacer of {spacer} mm is too short to be cut by {size} mm: a shorter or a softer "
            "spring is needed.",
            spacer=written(spacer.value),
            size=written(-change, ".1f"),
        )
        return SpacerChange(spacer.value, change, notices=(attention(WHERE, text),))
    notices: list[Notice] = []
    margin = None
    if spring.stack is not None:
        called = (say("new spacer"), WHERE)
        preload = preload_of(spring.stack, length, called, notices)
        if preload is not None:
            margin = margin_with(job, preload, notices)
            notices += about_margin(margin, WHERE)
    since = None if fitted is None or is_as_long(fitted, spacer.value) else fitted.value
    return SpacerChange(
        spacer.value,
        change,
        length_mm=length,
        margin_mm=margin,
        not_counted_mm=since,
        notices=tuple(notices),
    )
