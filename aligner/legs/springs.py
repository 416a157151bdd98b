"""Fork spring and spacer: free length left, preload, and the spacer that gives it.

The trap: preload is what the spring is shortened by when the cap is home with the leg extended,
not what the spacer stands out of the tube; the cap's plug reaches in and adds to it. And every mm
of spacer comes off the room the spring has before its coils touch.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.language import marked, say, written
from aligner.legs.refusals import (
    ROUNDING_SLACK_MM,
    LegError,
    finite,
    not_negative,
    positive,
)


@dataclass(frozen=True)
class FreeLength:
    """A spring's free length against the limit in the manual.

    Attributes:
        margin_mm: measured less limit, mm (negative: shorter than allowed).
        settled_mm: the new spring's length less the measured one, mm; None where the new
            spring's length is not known.
    """

    margin_mm: float
    settled_mm: float | None


def free_length(measured_mm: float, limit_mm: float, new_mm: float | None = None) -> FreeLength:
    """A measured free length against the shortest one allowed and, if known, the new length.

    Raises:
        LegError: a length that is none, or a limit longer than the new spring.
    """
    measured = positive(marked("spring free length"), measured_mm, "mm")
    limit = positive(marked("spring free length limit"), limit_mm, "mm")
    if new_mm is None:
        return FreeLength(measured - limit, None)
    if positive(marked("new spring's free length"), new_mm, "mm") < limit:
        raise LegError(
            say("spring free length limit"),
            say(
                "{limit} mm is longer than the new spring ({length} mm)",
                limit=written(limit),
                length=written(new_mm),
            ),
            say("the limit is the shorter of the two"),
        )
    return FreeLength(measured - limit, new_mm - measured)


def free_length_difference_mm(left_mm: float, right_mm: float) -> float:
    """Free length of the left spring less that of the right one, mm."""
    left = positive(marked("left spring free length"), left_mm, "mm")
    return left - positive(marked("right spring free length"), right_mm, "mm")


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
        LegError: the stack is shorter than the room: the spring would be loose.
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
    return max(preload, 0.0)


def spacer_length_mm(
    free_length_mm: float, wanted_preload_mm: float, fitted_space_mm: float, washers_mm: float = 0.0
) -> float:
    """Length to cut a spacer to for a wanted preload, mm: `preload_mm` solved for the spacer.

    Raises:
        LegError: the spring alone gives more preload than is wanted.
    """
    wanted = not_negative(marked("wanted preload"), wanted_preload_mm, "mm")
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


def preload_from_stand_out_mm(stand_out_mm: float, cap_reach_mm: float) -> float:
    """Preload from how far the stack stands out of the tube before the cap goes on, mm.

    Args:
        stand_out_mm: top of the stack above the tube's top edge, leg extended, mm (negative: below
            it).
        cap_reach_mm: from the cap's shoulder that meets the tube's edge down to the face that
            meets the stack, mm.

    Raises:
        LegError: the cap does not reach the stack.
    """
    reach = not_negative(marked("cap's reach into the tube"), cap_reach_mm, "mm")
    preload = finite(marked("stack above the tube's edge"), stand_out_mm) + reach
    if preload < -ROUNDING_SLACK_MM:
        raise LegError(
            say("preload"),
            say("the cap stays {gap} mm short of the stack", gap=written(-preload)),
            say("a longer spacer is needed"),
        )
    return max(preload, 0.0)


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
