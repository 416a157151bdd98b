"""The alignment readings of a job: heights, squareness, and whether the legs are in line."""

from __future__ import annotations

from datetime import datetime
from typing import Annotated, Literal

from pydantic import Field

from aligner.geometry import Corner, Face, Policy
from aligner.sheet.model import Part
from aligner.sheet.quantities import Length, SignedLength


class ProtrusionReadings(Part):
    """How far each tube stands above the top bracket's upper face.

    Attributes:
        gauge: name of the gauge on the job's list.
        left: readings of the left leg; negative where the tube stands below the face.
        right: readings of the right leg.
        policy: which leg moves to where; left out, to the target if the sheet has one,
            else each goes half way.
    """

    gauge: str | None = None
    left: tuple[SignedLength, ...] = ()
    right: tuple[SignedLength, ...] = ()
    policy: Policy | None = None


class SquaringPair(Part):
    """One pair of distances from the frame to the lower bracket.

    Attributes:
        name: of the pair ("crash bar lugs").
        gauge: name of the gauge on the job's list.
        left: distances on the left, frame point to bracket point.
        right: distances on the right.
        frame_asymmetry: left minus right when truly straight, where it is known.
        frame_asymmetry_uncertainty: standard uncertainty of that.
        bracket_reach: bracket points ahead of the steering axis, when straight.
        bracket_half_width: bracket points either side of the middle.
        frame_setback: frame points behind the steering axis.
        frame_half_width: frame points either side of the middle.
    """

    name: str = "pair"
    gauge: str | None = None
    left: tuple[Length, ...] = ()
    right: tuple[Length, ...] = ()
    frame_asymmetry: SignedLength | None = None
    frame_asymmetry_uncertainty: Length | None = None
    bracket_reach: SignedLength | None = None
    bracket_half_width: Length | None = None
    frame_setback: SignedLength | None = None
    frame_half_width: Length | None = None


class PlateReadings(Part):
    """A flat plate on both tubes: it touches three of four places, the fourth has a gap.

    Attributes:
        gap: readings of the gap.
        corner: which corner stands off.
        face: whether the plate lies on the front or the rear of the tubes.
        height: between the plate's upper and lower contact lines.
    """

    method: Literal["plate"]
    gauge: str | None = None
    gap: tuple[Length, ...] = ()
    corner: Corner | None = None
    face: Face = Face.FRONT
    height: Length | None = None


class BarReadings(Part):
    """Two straight bars across the tubes, one above the other, seen end on.

    Attributes:
        end_difference: how far the lower bar's left end stands ahead of the upper bar's.
        half_length: from the middle line to the bar's end where that is read.
        height: between the bars.
    """

    method: Literal["bars"]
    gauge: str | None = None
    end_difference: tuple[SignedLength, ...] = ()
    half_length: Length | None = None
    height: Length | None = None


class SpreadReadings(Part):
    """Widths over the tubes at two heights.

    Attributes:
        upper: widths at the upper height.
        lower: widths at the lower height.
        height: between the two.
    """

    method: Literal["spread"]
    gauge: str | None = None
    upper: tuple[Length, ...] = ()
    lower: tuple[Length, ...] = ()
    height: Length | None = None


InLineReadings = Annotated[
    PlateReadings | BarReadings | SpreadReadings, Field(discriminator="method")
]


class Align(Part):
    """One attempt at the alignment: everything read before something is moved.

    Attributes:
        begun: when its first reading was taken; a measurement that must follow the
            tightening of a clamp is held against this.
        protrusion: the legs' heights.
        squaring: pairs of distances to the frame.
        in_line: by plate, bars or widths.
        in_line_others: readings by the methods not now in use, kept as they were.
    """

    begun: datetime | None = None
    protrusion: ProtrusionReadings = ProtrusionReadings()
    squaring: tuple[SquaringPair, ...] = ()
    in_line: InLineReadings | None = None
    in_line_others: tuple[InLineReadings, ...] = ()
