"""Fork spring and spacer: preload, the spacer that gives it, and what is left before coils touch.

The trap: preload is what the spring is shortened by when the cap is home with the leg extended,
not what the spacer stands out of the tube; the cap's plug reaches in and adds to it. And every mm
of spacer comes off the room the spring has before its coils touch.
"""

from __future__ import annotations

from aligner.language import marked, say, written
from aligner.legs.refusals import (
    ROUNDING_SLACK_MM,
    LegError,
    not_negative,
    positive,
)


def preload_mm(
    free_length_mm: float, spacer_mm: float, fitted_space_mm: float, washers_mm: float = 0.0
) -> float:
    """What the spring is shortened by with the cap home and the leg extended, mm.

    preload = free length + spacer + washers - space. Derived: what is stacked less the room.

    Args:
        free_length_mm: the spring's free length, mm.
        spacer_mm: the spacer's length, mm (0: none).
        fitted_space_mm: from the spring's lower seat to the underside of the cap when home, leg
            extended, preload adjuster at its lowest, mm.
        washers_mm: thickness of all washers and seats between them, mm.

    Raises:
        LegError: the stack is shorter than the room, so that the spring would be loose, or so long
            that the spring would be pressed to nothing.
    """
    spacer = not_negative(marked("spacer length"), spacer_mm, "mm")
    preload = _stack_mm(free_length_mm, washers_mm) + spacer - _space_mm(fitted_space_mm)
    if preload < -ROUNDING_SLACK_MM:
        raise LegError(
            say("preload"),
            say(
                "spring, spacer and washers are {gap} mm shorter than the room for them",
                gap=written(-preload),
            ),
            say("a longer spacer is needed"),
        )
    return _shortened(marked("preload"), max(preload, 0.0), free_length_mm)


def spacer_length_mm(
    free_length_mm: float, wanted_preload_mm: float, fitted_space_mm: float, washers_mm: float = 0.0
) -> float:
    """Length to cut a spacer to for a wanted preload, mm: `preload_mm` solved for the spacer.

    Raises:
        LegError: the spring alone gives more preload than is wanted, or it is shorter than that.
    """
    wanted = not_negative(marked("wanted preload"), wanted_preload_mm, "mm")
    _shortened(marked("wanted preload"), wanted, free_length_mm)
    spacer = wanted + _space_mm(fitted_space_mm) - _stack_mm(free_length_mm, washers_mm)
    if spacer < -ROUNDING_SLACK_MM:
        raise LegError(
            say("wanted preload"),
            say(
                "the spring without a spacer already gives {preload} mm",
                preload=written(wanted - spacer),
            ),
            say("more preload or a shorter spring is needed"),
        )
    return max(spacer, 0.0)


def coil_bind_margin_mm(
    free_length_mm: float, solid_length_mm: float, preload_mm: float, travel_mm: float
) -> float:
    """What is left before the coils touch, at full travel, mm (negative: they touch first).

    Args:
        free_length_mm: the spring's free length, mm.
        solid_length_mm: its length with all coils touching, mm.
        preload_mm: preload with the leg extended, mm.
        travel_mm: the leg's whole travel, mm.
    """
    free = positive(marked("spring free length"), free_length_mm, "mm")
    solid = positive(marked("spring solid length"), solid_length_mm, "mm")
    if solid >= free:
        raise LegError(
            say("spring solid length"),
            say(
                "{solid} mm is not shorter than the free length of {free} mm",
                solid=written(solid),
                free=written(free),
            ),
            say("the length with all coils touching is needed"),
        )
    used = not_negative(marked("preload"), preload_mm, "mm") + positive(
        marked("travel"), travel_mm, "mm"
    )
    return free - solid - used


def _stack_mm(free_length_mm: float, washers_mm: float) -> float:
    return positive(marked("spring free length"), free_length_mm, "mm") + not_negative(
        marked("washers"), washers_mm, "mm"
    )


def _space_mm(fitted_space_mm: float) -> float:
    return positive(marked("room from spring seat to cap"), fitted_space_mm, "mm")


def _shortened(where: str, by_mm: float, free_length_mm: float) -> float:
    """What a spring is shortened by, given back where that is less than the whole of it."""
    if by_mm >= positive(marked("spring free length"), free_length_mm, "mm"):
        raise LegError(
            say(where),
            say(
                "a spring of {free} mm cannot be shortened by {preload} mm",
                free=written(free_length_mm),
                preload=written(by_mm),
            ),
            say("one of the lengths is misread"),
        )
    return by_mm
