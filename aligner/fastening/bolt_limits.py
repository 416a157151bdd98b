"""What a steel bolt can take, as a check on a typed torque.

The trap: a value in lbf·in typed as N·m is nine times too much, one in kgf·m ten times too
little. Nothing here is ever a torque to use: a clamp bolt in an aluminium bracket is set by
the maker well under the bolt's own limit, and an aluminium cap has no such limit at all.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.fastening.thread import Thread
from aligner.fastening.torque import NEWTON_METRES_PER_UNIT, newton_metres_per
from aligner.language import say, with_decimal_sign, written

#: What the sheet writes in place of a strength class for an aluminium cap, nut or bolt.
ALUMINIUM = "aluminium"

#: Least yield strength by strength class, MPa: up to and with 16 mm, and above. ISO 898-1:2013
#: table 3, seen (secondary) at nfgab.se; 4.8 and 5.8 by the 0.0048 d proof strength, which
#: the standard prints in place of Rp0.2 for them.
_YIELD_STRENGTH_MPA = {
    "4.8": (340.0, 340.0),
    "5.8": (420.0, 420.0),
    "8.8": (640.0, 660.0),
    "10.9": (940.0, 940.0),
    "12.9": (1100.0, 1100.0),
}
_SPLIT_MM = 16.0

#: Least washer-face diameter dw (ISO 4014, grade A) and clearance hole dh (ISO 273, medium)
#: in mm, by nominal diameter. dw: M5 to M8 from memory, M10 to M24 seen (secondary) in a
#: printed table of EN ISO 4014; dh seen (secondary) at engineeringhardware.com up to M16,
#: above from memory.
_HEAD_MM = {
    5.0: (6.88, 5.5),
    6.0: (8.88, 6.6),
    8.0: (11.63, 9.0),
    10.0: (14.63, 11.0),
    12.0: (16.63, 13.5),
    14.0: (19.64, 15.5),
    16.0: (22.49, 17.5),
    18.0: (25.34, 20.0),
    20.0: (28.19, 22.0),
    22.0: (31.71, 24.0),
    24.0: (33.61, 26.0),
}

#: Friction from oiled to dry, the same in thread and under head. Chosen within the classes A
#: and B of VDI 2230 table A5 (from memory).
LEAST_FRICTION, GREATEST_FRICTION = 0.08, 0.16

#: A value is questioned above this many times the limit at the greatest friction. Chosen, no
#: source: a flanged head, wider than the hexagon reckoned with, takes about a tenth more.
OVER = 1.1
#: A value is questioned under this share of the limit at the least friction. Chosen, no
#: source: small clamp bolts into aluminium go down to a third of it, while a value in kgf·m
#: typed as N·m is a tenth of itself.
UNDER = 0.25
#: Above this diameter a low value is ordinary (stem head bolts, axles), so none is questioned
#: for being low. Chosen, no source.
LARGEST_QUESTIONED_AS_LOW_MM = 12.0


class NoBoltLimit(AlignerError):
    """The check on a bolt's strength does not apply to this fastener."""


@dataclass(frozen=True)
class BoltLimit:
    """The torque that brings a bolt to 90 % of its yield, from oiled to dry.

    A bound to hold a typed value against, never a torque to use.

    Attributes:
        low_nm: at the least friction (0.08), in N·m.
        high_nm: at the greatest friction (0.16), in N·m.
    """

    low_nm: float
    high_nm: float


@dataclass(frozen=True)
class OtherUnit:
    """The typed number read in another unit: the unit, and what it would then be in N·m."""

    unit: str
    value_nm: float


@dataclass(frozen=True)
class TorqueQuestion:
    """A typed torque that does not look right for its bolt.

    Attributes:
        typed_number: the number as typed.
        typed_unit: the unit it was typed in.
        bolt: the bolt in words: "M8 class 8.8", in the language spoken.
        limit_nm: what it is held against: the limit's upper end for a value that is too high,
            its lower end for one that is too low.
        times_limit: the value in multiples of `limit_nm`.
        ordinary_in: the units in which the same number would be ordinary, commoner ones first.
    """

    typed_number: float
    typed_unit: str
    bolt: str
    limit_nm: float
    times_limit: float
    ordinary_in: tuple[OtherUnit, ...]

    @property
    def is_over(self) -> bool:
        """Whether the value is too high; else it is too low."""
        return self.times_limit > 1

    def __str__(self) -> str:
        typed = f"{written(self.typed_number)} {self.typed_unit}"
        if self.is_over:
            said = say(
                "{torque} is {times} times what an {bolt} bolt takes",
                torque=typed,
                times=written(self.times_limit, ".1f"),
                bolt=self.bolt,
            )
        else:
            said = say("{torque} is very little for an {bolt} bolt", torque=typed, bolt=self.bolt)
        units = ""
        for other in self.ordinary_in:
            units = say("{a} or {b}", a=units, b=other.unit) if units else other.unit
        if units:
            return say("{doubt}: is it {units}?", doubt=said, units=units)
        return say("{doubt}: look at the manual again", doubt=said)


def reason_unchecked(thread: Thread, strength_class: str | None) -> str | None:
    """Why the check does not apply, in words; `None` where it does.

    Args:
        thread: the bolt's thread.
        strength_class: as on the sheet: "8.8", "aluminium", or `None` if not known.
    """
    if strength_class is None or not strength_class.strip():
        return say("no strength class is given, so the bolt's own limit is not known")
    if strength_class.strip().casefold() in (ALUMINIUM, "aluminum", "alloy"):
        return say("an aluminium part has no strength class: only the manual's torque counts")
    if _class_name(strength_class) not in _YIELD_STRENGTH_MPA:
        known = ", ".join(_YIELD_STRENGTH_MPA)
        return say(
            "“{name}” is no strength class known here ({known})",
            name=strength_class.strip(),
            known=known,
        )
    if thread.diameter_mm not in _HEAD_MM:
        return say(
            "{size} is no size of hexagon bolt: nuts and caps have no limit",
            size=f"M{written(thread.diameter_mm)}",
        )
    return None


def yield_preload_n(thread: Thread, strength_class: str, friction: float) -> float:
    """The preload in N at which pull and twist together make 90 % of yield.

    F = sigma As, with sigma = 0.9 Rp02 / sqrt(1 + 3 [3/2 d2/ds (P/(pi d2) + 1.155 mu)]^2).
    Source: VDI 2230 part 1 (2001), tables A1 and A3.

    Raises:
        NoBoltLimit: the check does not apply: the reason in words.
    """
    reason = reason_unchecked(thread, strength_class)
    if reason is not None:
        raise NoBoltLimit("", reason)
    d2, ds, pitch = thread.pitch_diameter_mm, thread.stress_diameter_mm, thread.pitch_mm
    up_to_split, above_split = _YIELD_STRENGTH_MPA[_class_name(strength_class)]
    yield_strength_mpa = up_to_split if thread.diameter_mm <= _SPLIT_MM else above_split
    twist = 3 / 2 * d2 / ds * (pitch / (math.pi * d2) + 1.155 * friction)
    sigma_mpa = 0.9 * yield_strength_mpa / math.sqrt(1 + 3 * twist**2)
    return sigma_mpa * thread.stress_area_mm2


def yield_torque_nm(thread: Thread, strength_class: str, friction: float) -> float:
    """The torque in N·m that makes 90 % of yield: the bolt's limit, never a torque to use.

    M = F (0.159 P + 0.577 mu d2 + mu D_km / 2), D_km = (dw + dh) / 2, with the head of
    ISO 4014 over the hole of ISO 273. Source: VDI 2230 part 1 (2001).

    Raises:
        NoBoltLimit: the check does not apply: the reason in words.
    """
    preload_n = yield_preload_n(thread, strength_class, friction)
    washer_face_mm, hole_mm = _HEAD_MM[thread.diameter_mm]
    head_diameter_mm = (washer_face_mm + hole_mm) / 2
    lever_mm = (
        0.159 * thread.pitch_mm
        + 0.577 * friction * thread.pitch_diameter_mm
        + friction * head_diameter_mm / 2
    )
    return preload_n * lever_mm / 1000


def bolt_limit(thread: Thread, strength_class: str) -> BoltLimit:
    """The bolt's limit from the least to the greatest friction.

    Raises:
        NoBoltLimit: the check does not apply: the reason in words.
    """
    return BoltLimit(
        yield_torque_nm(thread, strength_class, LEAST_FRICTION),
        yield_torque_nm(thread, strength_class, GREATEST_FRICTION),
    )


def question_torque(
    value_nm: float, typed_unit: str, thread: Thread, strength_class: str | None
) -> TorqueQuestion | None:
    """What there is to ask about a typed torque; `None` if it is ordinary or cannot be judged.

    Where it cannot be judged (aluminium, no class, no bolt) `reason_unchecked` says why.

    Args:
        value_nm: the typed value in N·m; zero or less is not a torque and raises no question.
        typed_unit: the unit it was typed in, a key of `NEWTON_METRES_PER_UNIT`.
        thread: the bolt's thread.
        strength_class: as on the sheet.

    Raises:
        aligner.fastening.torque.UnreadableTorque: the unit is not known here.
    """
    typed_number = value_nm / newton_metres_per(typed_unit)
    if strength_class is None or reason_unchecked(thread, strength_class) or value_nm <= 0:
        return None
    limit = bolt_limit(thread, strength_class)
    lowest_nm, highest_nm = UNDER * limit.low_nm, OVER * limit.high_nm
    is_questioned_as_low = thread.diameter_mm <= LARGEST_QUESTIONED_AS_LOW_MM
    if value_nm > highest_nm:
        limit_nm = limit.high_nm
    elif value_nm < lowest_nm and is_questioned_as_low:
        limit_nm = limit.low_nm
    else:
        return None
    ordinary_in = tuple(
        OtherUnit(unit, typed_number * factor)
        for unit, factor in NEWTON_METRES_PER_UNIT.items()
        if lowest_nm <= typed_number * factor <= highest_nm
    )
    bolt = say(
        "{thread} class {strength_class}",
        thread=with_decimal_sign(thread.designation),
        strength_class=_class_name(strength_class),
    )
    return TorqueQuestion(
        typed_number, typed_unit, bolt, limit_nm, value_nm / limit_nm, ordinary_in
    )


def _class_name(strength_class: str) -> str:
    return strength_class.strip().replace(",", ".")
