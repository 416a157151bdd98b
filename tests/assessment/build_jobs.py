"""Jobs for the tests of what is built up: an invented fork with round dimensions."""

from __future__ import annotations

from typing import Any

from aligner.job import Gauge, Job
from aligner.job.edits_build import (
    with_bearing,
    with_build,
    with_leg_oil,
    with_sag_lengths,
)
from aligner.sheet import Fork, Sheet
from aligner.sheet.legs import (
    BearingDrag,
    Legs,
    OilSpecification,
    SagBand,
    SpringSpecification,
)
from aligner.sheet.quantities import (
    Force,
    Length,
    Ratio,
    Stiffness,
    Torque,
    Volume,
)

RULE = Gauge(
    resolution=Length.typed("0.5 mm"),
    limit_of_error=Length.typed("0.3 mm"),
    repeatability=Length.typed("0.2 mm"),
)


def lengths(*texts: str) -> tuple[Length, ...]:
    return tuple(Length.typed(text, "mm") for text in texts)


def legs(**changes: Any) -> Legs:
    made = Legs(
        bore=Length.typed("36 mm"),
        travel=Length.typed("150 mm"),
        oil=OilSpecification(
            air_gap=Length.typed("221 mm"),
            air_gap_tolerance=Length.typed("2 mm"),
            volume=Volume.typed("260 ml"),
        ),
        spring=SpringSpecification(
            preload=Length.typed("18 mm"),
            rate=Stiffness.typed("5.5 N/mm"),
            second_rate=Stiffness.typed("8 N/mm"),
            rate_changes_at=Length.typed("50 mm"),
        ),
        sag=SagBand(rider_low=Ratio.typed("25 %"), rider_high=Ratio.typed("33 %")),
        bearing=BearingDrag(
            pull_low=Force.typed("10 N"),
            pull_high=Force.typed("16 N"),
            radius=Length.typed("350 mm"),
        ),
    )
    return made.with_changes(**changes)


def job(**changes: Any) -> Job:
    return Job(
        sheet=Sheet(
            name="an invented bike",
            fork=Fork(tube_diameter=Length.typed("40 mm")),
            legs=legs(**changes),
        ),
        gauges={"steel rule": RULE},
    )


def job_with_gaps(left: tuple[str, ...], right: tuple[str, ...], **changes: Any) -> Job:
    made = with_build(job(**changes), gauge="steel rule")
    made = with_leg_oil(made, "left", gap=lengths(*left))
    return with_leg_oil(made, "right", gap=lengths(*right))


def job_with_sag(extended: str, down: str, up: str, made: Job | None = None) -> Job:
    made = with_build(made or job())
    made = made.with_changes(
        build=made.build.with_changes(sag=made.build.sag.with_changes(gauge="steel rule"))
    )
    for which, text in (("extended", extended), ("rider_down", down), ("rider_up", up)):
        made = with_sag_lengths(made, which, lengths(text, text, text))
    return made


def job_with_pull(*texts: str, radius: str | None = None, **changes: Any) -> Job:
    pulls = tuple(Force.typed(text, "N") for text in texts)
    fields: dict[str, Any] = {"pull": pulls}
    if radius:
        fields["radius"] = Length.typed(radius)
    return with_bearing(job(**changes), **fields)


def drag(low: str, high: str) -> BearingDrag:
    return BearingDrag(torque_low=Torque.typed(low), torque_high=Torque.typed(high))
