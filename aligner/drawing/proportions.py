"""What the drawings of a job are drawn to: the sheet's dimensions, as far as they are known."""

from __future__ import annotations

from aligner.drawing.front_elevation import FrontProportions
from aligner.drawing.plan_view import PlanProportions
from aligner.drawing.side_bones import SideProportions
from aligner.job import Job
from aligner.sheet import ForkKind
from aligner.sheet.fasteners import Side
from aligner.sheet.quantities import Quantity


def front_proportions(job: Job) -> FrontProportions:
    """What the front elevation is drawn to."""
    fork = job.sheet.fork
    return FrontProportions(
        leg_spacing_mm=_value(fork.leg_spacing),
        bracket_spacing_mm=_value(fork.bracket_spacing),
        tube_mm=_value(fork.tube_diameter),
        is_upside_down=fork.kind is ForkKind.UPSIDE_DOWN,
        top_bolts=_bolts(job, "top_clamp"),
        lower_bolts=_bolts(job, "lower_clamp"),
    )


def plan_proportions(job: Job, place: int) -> PlanProportions:
    """What the plan view is drawn to, with the points of one pair of distances."""
    fork = job.sheet.fork
    pairs = job.align.squaring
    pair = pairs[place] if place < len(pairs) else None
    return PlanProportions(
        leg_spacing_mm=_value(fork.leg_spacing),
        bracket_offset_mm=_value(fork.bracket_offset),
        tube_mm=_value(fork.tube_diameter),
        bracket_reach_mm=_value(pair.bracket_reach) if pair else None,
        bracket_half_width_mm=_value(pair.bracket_half_width) if pair else None,
        frame_setback_mm=_value(pair.frame_setback) if pair else None,
        frame_half_width_mm=_value(pair.frame_half_width) if pair else None,
    )


def side_proportions(job: Job) -> SideProportions:
    """What the side view is drawn to."""
    fork, steering = job.sheet.fork, job.sheet.steering
    return SideProportions(
        rake_deg=_value(steering.rake),
        offset_mm=_value(steering.offset),
        front_radius_mm=_value(steering.front_radius),
        rear_radius_mm=_value(steering.rear_radius),
        wheelbase_mm=_value(steering.wheelbase),
        bracket_offset_mm=_value(fork.bracket_offset),
        bracket_to_axle_mm=_value(fork.lower_bracket_to_axle),
        bracket_spacing_mm=_value(fork.bracket_spacing),
        tube_mm=_value(fork.tube_diameter),
        is_upside_down=fork.kind is ForkKind.UPSIDE_DOWN,
    )


def _bolts(job: Job, kind: str) -> tuple[int, int]:
    """How many bolts the left and the right clamp of a kind have; 0 where the sheet has none."""
    counts = {Side.LEFT: 0, Side.RIGHT: 0}
    for fastener in job.sheet.fasteners:
        if fastener.kind == kind and fastener.side is not None:
            counts[fastener.side] += fastener.bolts
    return counts[Side.LEFT], counts[Side.RIGHT]


def _value(quantity: Quantity | None) -> float | None:
    return quantity.value if quantity else None
