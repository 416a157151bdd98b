"""Spring and spacer: what to cut it to, the preload each one gives, what is left of the travel.

The trap: a length that was not measured counts as nothing in a sum. So no length is said before
all that it is made of is there; where there is no washer, 0 is typed.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial

from aligner.assessment.notice import Level, Notice, attention, refused
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.build import SpringFitting
from aligner.language import marked, say, written
from aligner.legs import coil_bind_margin_mm, preload_mm, spacer_length_mm
from aligner.legs.refusals import positive
from aligner.sheet.quantities import Length

WHERE = "build.spring"

#: Less than this left before the coils touch is no margin: five lengths are read for it, each
#: good to a millimetre or so. Common practice, no source.
LITTLE_MM = 5.0

#: A spacer as near as this is the one that was asked for: a saw and a file do no better.
CUT_TO_MM = 0.5

_ABOVE_NOTHING = (
    ("free_length", marked("free length of the spring")),
    ("room", marked("room for spring and spacer")),
    ("solid_length", marked("all coils touching")),
)


@dataclass(frozen=True)
class Stack:
    """What the preload is made of but for the spacer, mm.

    Attributes:
        free_mm: the spring's free length.
        room_mm: for spring, washers and spacer.
        washers_mm: all of them and the seats between.
    """

    free_mm: float
    room_mm: float
    washers_mm: float


@dataclass(frozen=True)
class SpringAssessment:
    """Spring and spacer of each leg.

    Attributes:
        stack: spring, room and washers; `None` where one is missing or cannot be.
        cut_mm: what to cut the spacer to for the wanted preload.
        is_cut: whether the spacer that went in is that one.
        wanted_mm: that preload.
        is_by_sheet: whether it is the sheet's.
        old_preload_mm: what the spacer as it was gave.
        fitted_preload_mm: what the spacer that went in gives.
        sheet_preload_mm: what the sheet's spacer would give.
        margin_mm: left before the coils touch at full travel, with the spacer that went in, else
            with the wanted preload; negative: they touch before.
        missing: for the spacer's length, in words; empty where nothing was begun.
        missing_for_margin: for what is left before the coils touch.
        notices: what to know.
    """

    stack: Stack | None = None
    cut_mm: float | None = None
    is_cut: bool = False
    wanted_mm: float | None = None
    is_by_sheet: bool = False
    old_preload_mm: float | None = None
    fitted_preload_mm: float | None = None
    sheet_preload_mm: float | None = None
    margin_mm: float | None = None
    missing: tuple[str, ...] = ()
    missing_for_margin: tuple[str, ...] = ()
    notices: tuple[Notice, ...] = ()


def assess_spring(job: Job) -> SpringAssessment:
    """Spring and spacer of a job."""
    given, sheet = job.build.spring, job.sheet.legs.spring
    if given == SpringFitting():
        return SpringAssessment()
    notices = _impossible(given)
    stack = None if notices else stack_of(given)
    of_the_past: list[Notice] = []
    old = preload_with(
        stack, given.old_spacer, (say("spacer as it was"), f"{WHERE}.old_spacer"), of_the_past
    )
    # How it came apart is to be known; it is not what will be ridden.
    notices += [replace(each, level=Level.NOTE) for each in of_the_past]
    fitted = preload_with(
        stack, given.fitted_spacer, (say("spacer that went in"), f"{WHERE}.fitted_spacer"), notices
    )
    wanted = given.wanted_preload or sheet.preload
    cut = _cut_mm(job, stack, wanted, notices)
    preload = fitted
    if preload is None and wanted is not None and cut is not None:
        preload = wanted.value
    margin = None
    if preload is not None:
        margin = margin_with(job, preload, notices)
        notices += about_margin(margin, WHERE)
    named = (say("the sheet's spacer"), "sheet.legs.spring.spacer")
    by_sheet = preload_with(stack, sheet.spacer, named, notices)
    return SpringAssessment(
        stack=stack,
        cut_mm=cut,
        is_cut=cut is not None and is_as_long(given.fitted_spacer, cut),
        wanted_mm=wanted.value if wanted else None,
        is_by_sheet=given.wanted_preload is None and wanted is not None,
        old_preload_mm=old,
        fitted_preload_mm=fitted,
        sheet_preload_mm=by_sheet,
        margin_mm=margin,
        missing=_missing(given, wanted),
        missing_for_margin=_missing_for_margin(job),
        notices=tuple(notices),
    )


def is_as_long(spacer: Length | None, length_mm: float) -> bool:
    """Whether a spacer is as long as was asked for, mm, as near as one can be cut."""
    return spacer is not None and abs(spacer.value - length_mm) <= CUT_TO_MM


def stack_of(given: SpringFitting) -> Stack | None:
    """Spring, room and washers where all three were measured."""
    if given.free_length is None or given.room is None or given.washers is None:
        return None
    return Stack(given.free_length.value, given.room.value, given.washers.value)


def preload_with(
    stack: Stack | None, spacer: Length | None, called: tuple[str, str], notices: list[Notice]
) -> float | None:
    """What a spacer gives, mm; one that leaves the spring loose is noticed.

    Args:
        stack: what is fitted with it.
        spacer: its length.
        called: its name in words, and its field's path.
        notices: to add to.
    """
    if stack is None or spacer is None:
        return None
    return preload_of(stack, spacer.value, called, notices)


def preload_of(
    stack: Stack, spacer_mm: float, called: tuple[str, str], notices: list[Notice]
) -> float | None:
    """The same of a spacer that is only worked out, mm."""
    name, where = called
    try:
        return preload_mm(stack.free_mm, spacer_mm, stack.room_mm, stack.washers_mm)
    except AlignerError as error:
        named = AlignerError(name, error.understood, error.wanted)
        notices.append(refused(where, named))
        return None


def margin_with(job: Job, preload: float, notices: list[Notice]) -> float | None:
    """What a preload leaves before the coils touch at full travel, mm; `None` if not known."""
    given, travel = job.build.spring, job.sheet.legs.travel
    free, solid = given.free_length, given.solid_length
    if free is None or solid is None or travel is None:
        return None
    return _tried(
        lambda: coil_bind_margin_mm(free.value, solid.value, preload, travel.value),
        "sheet.legs.travel" if travel.value <= 0 else f"{WHERE}.solid_length",
        notices,
    )


def about_margin(margin: float | None, where: str) -> list[Notice]:
    """What to say of little or nothing left before the coils touch."""
    if margin is None or margin >= LITTLE_MM:
        return []
    if margin < 0:
        text = say(
            "The coils touch {size} mm before the leg is right in: less preload or another spring "
            "is needed.",
            size=written(-margin, ".1f"),
        )
    else:
        text = say(
            "Only {size} mm is left at full travel before the coils touch: errors of measuring "
            "alone can use that up.",
            size=written(margin, ".1f"),
        )
    return [attention(where, text)]


def _cut_mm(
    job: Job, stack: Stack | None, wanted: Length | None, notices: list[Notice]
) -> float | None:
    if stack is None or wanted is None:
        return None
    is_typed = job.build.spring.wanted_preload is not None
    return _tried(
        lambda: spacer_length_mm(stack.free_mm, wanted.value, stack.room_mm, stack.washers_mm),
        f"{WHERE}.wanted_preload" if is_typed else "sheet.legs.spring.preload",
        notices,
    )


def _impossible(given: SpringFitting) -> list[Notice]:
    """Lengths that are none, and a spring that is no longer free than pressed together."""
    notices: list[Notice] = []
    for field, name in _ABOVE_NOTHING:
        value: Length | None = getattr(given, field)
        if value is not None:
            _tried(partial(positive, name, value.value, "mm"), f"{WHERE}.{field}", notices)
    free, solid = given.free_length, given.solid_length
    if not notices and free is not None and solid is not None:
        _tried(  # with any travel: which of the two is the longer does not depend on it
            lambda: coil_bind_margin_mm(free.value, solid.value, 0.0, free.value),
            f"{WHERE}.solid_length",
            notices,
        )
    return notices


def _missing(given: SpringFitting, wanted: Length | None) -> tuple[str, ...]:
    named = (
        (say("free length of the spring"), given.free_length),
        (say("room for spring and spacer"), given.room),
        (say("washers and seats (0 for none)"), given.washers),
        (say("wanted preload"), wanted),
    )
    return tuple(words for words, value in named if value is None)


def _missing_for_margin(job: Job) -> tuple[str, ...]:
    named = (
        (say("all coils touching"), job.build.spring.solid_length),
        (say("travel"), job.sheet.legs.travel),
    )
    return tuple(words for words, value in named if value is None)


def _tried(work: Callable[[], float], where: str, notices: list[Notice]) -> float | None:
    """What some work comes to; what it refuses is noticed on the field it concerns."""
    try:
        return work()
    except AlignerError as error:
        notices.append(refused(where, error))
        return None
