"""Rake, trail and wheelbase, and what becomes of them when both legs go up in the brackets.

The trap: raising the legs does not only drop the front. The axle also goes back along the
raked steering axis, and trail follows the *new* rake. So the bike is settled on both tyres
anew, never by adding rules of thumb.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.geometry.bounds import require_length, require_number
from aligner.language import say, written


@dataclass(frozen=True)
class SteeringGeometry:
    """The bike as its manual gives it, both tyres on level ground.

    Attributes:
        rake_deg: e, of the steering axis from the vertical, its top to the rear.
        offset_mm: o, of the axle ahead of the steering axis, square to it.
        front_radius_mm: R_f, over the tyre.
        rear_radius_mm: R_r, over the tyre.
        wheelbase_mm: b, between the two axles, level.
    """

    rake_deg: float
    offset_mm: float
    front_radius_mm: float
    rear_radius_mm: float
    wheelbase_mm: float


@dataclass(frozen=True)
class Handling:
    """What the legs' place in the brackets makes of the steering.

    Attributes:
        rake_deg: from the vertical.
        trail_mm: along the ground, positive with the contact behind the steering axis.
        normal_trail_mm: square to the steering axis.
        wheelbase_mm: between the axles, level.
        rake_change_deg: against the bike as given; negative with the nose down.
        trail_change_mm: against the bike as given.
    """

    rake_deg: float
    trail_mm: float
    normal_trail_mm: float
    wheelbase_mm: float
    rake_change_deg: float
    trail_change_mm: float


def trail_mm(rake_deg: float, offset_mm: float, front_radius_mm: float) -> float:
    """Trail along the ground, (R_f sin e - o) / cos e.

    Args:
        rake_deg: e, from the vertical, under 90 either way.
        offset_mm: o, of the axle ahead of the steering axis.
        front_radius_mm: R_f, over the tyre.

    Returns:
        The trail, positive with the tyre's contact behind the steering axis.

    Raises:
        AlignerError: no radius, no number, or a rake that never meets the ground.

    Source: Meijaard, Papadopoulos, Ruina, Schwab, Proc. R. Soc. A 463 (2007) 1955-1982;
    mathematics.md 6.
    """
    return normal_trail_mm(rake_deg, offset_mm, front_radius_mm) / math.cos(math.radians(rake_deg))


def normal_trail_mm(rake_deg: float, offset_mm: float, front_radius_mm: float) -> float:
    """Trail square to the steering axis, R_f sin e - o; arguments and errors as `trail_mm`."""
    require_number(say("offset"), offset_mm)
    require_length(say("front_radius"), front_radius_mm)
    require_number(say("rake"), rake_deg, "degrees")
    if abs(rake_deg) >= 90:
        raise AlignerError(
            say("rake"),
            say(
                "a steering axis {angle} degrees from the vertical never meets the ground",
                angle=written(rake_deg),
            ),
            say("give the angle from the vertical, usually 20 to 40 degrees"),
        )
    return front_radius_mm * math.sin(math.radians(rake_deg)) - offset_mm


def raised(geometry: SteeringGeometry, rise_mm: float) -> Handling:
    """The steering with both legs pushed up through the brackets.

    The front axle goes up the steering axis by the rise; the bike then pitches until both
    tyres touch again. Tyre squash and sag are left out.

    Args:
        geometry: the bike as given.
        rise_mm: m, the mean rise of both legs; negative lets them down.

    Raises:
        AlignerError: a value that no bike can have, or a rise that brings the tyres together.

    Derived: mathematics.md 6.
    """
    _check(geometry)
    require_number(say("rise"), rise_mm)
    rake = math.radians(geometry.rake_deg)
    step = geometry.front_radius_mm - geometry.rear_radius_mm
    ahead = geometry.wheelbase_mm - rise_mm * math.sin(rake)
    above = step + rise_mm * math.cos(rake)
    apart = math.hypot(ahead, above)
    closest = geometry.front_radius_mm + geometry.rear_radius_mm
    if ahead <= 0 or apart <= closest:
        raise AlignerError(
            say("rise"),
            say(
                "legs moved by {size} mm leave the front wheel no room ahead of the rear one",
                size=written(rise_mm),
            ),
            say("give the mean of both legs' moves in mm"),
        )
    slope = math.asin(step / apart)
    pitch = slope - math.atan2(above, ahead)
    rake_deg = geometry.rake_deg + math.degrees(pitch)
    as_given = trail_mm(geometry.rake_deg, geometry.offset_mm, geometry.front_radius_mm)
    trail = trail_mm(rake_deg, geometry.offset_mm, geometry.front_radius_mm)
    return Handling(
        rake_deg=rake_deg,
        trail_mm=trail,
        normal_trail_mm=normal_trail_mm(rake_deg, geometry.offset_mm, geometry.front_radius_mm),
        wheelbase_mm=apart * math.cos(slope),
        rake_change_deg=math.degrees(pitch),
        trail_change_mm=trail - as_given,
    )


def _check(geometry: SteeringGeometry) -> None:
    require_number(say("rake"), geometry.rake_deg, "degrees")
    if not 0 <= geometry.rake_deg < 90:
        raise AlignerError(
            say("rake"),
            say(
                "{angle} degrees from the vertical is no steering axis",
                angle=written(geometry.rake_deg),
            ),
            say(
                "give the angle from the vertical (90 less the head angle),"
                " usually 20 to 40 degrees"
            ),
        )
    require_number(say("offset"), geometry.offset_mm)
    require_length(say("front_radius"), geometry.front_radius_mm)
    require_length(say("rear_radius"), geometry.rear_radius_mm)
    require_length(say("wheelbase"), geometry.wheelbase_mm)
    touching = 2 * math.sqrt(geometry.front_radius_mm * geometry.rear_radius_mm)
    if geometry.wheelbase_mm <= touching:
        raise AlignerError(
            say("wheelbase"),
            say("at {size} mm the two tyres would overlap", size=written(geometry.wheelbase_mm)),
            say(
                "with these radii it is more than {size} mm; check that radii were not"
                " given as diameters",
                size=written(touching, ".4g"),
            ),
        )
