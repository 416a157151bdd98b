"""Jobs for the tests of ticking: a front end that is read and true, and ways to tick it."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

from aligner.assessment import StepStanding, assess
from aligner.assessment.ticks import with_tick
from aligner.job import Align, Gauge, Job, ProtrusionReadings, SquaringPair, TorqueWrench
from aligner.sheet import (
    Fastener,
    OrderRule,
    ProtrusionLimits,
    Sheet,
    Side,
    TorqueSpecification,
    TurnLimits,
)
from aligner.sheet.quantities import Angle, Length, SignedLength, Torque

#: Readings were begun at nine; ticks come after it, a minute apart.
BEGUN = datetime(2026, 5, 4, 9, 0, tzinfo=UTC)


def minute(number: int) -> datetime:
    return BEGUN + timedelta(minutes=number)


def torque(nominal: str = "23 N·m") -> TorqueSpecification:
    from aligner.sheet.printed_torque import printed_torque

    return printed_torque(f"{nominal} ± 10 %" if "±" not in nominal else nominal)


def fasteners(**more: Any) -> tuple[Fastener, ...]:
    found = [
        Fastener(
            name="stem nut",
            kind="stem_nut",
            torque=torque("14 N·m"),
            seating=torque("45 N·m"),
            back_off=Angle.typed("180 deg"),
        ),
        Fastener(name="stem head bolt", kind="stem_head_bolt", torque=torque("90 N·m")),
    ]
    for side in (Side.LEFT, Side.RIGHT):
        for kind, bolts in (("lower_clamp", 2), ("fork_cap", 1), ("top_clamp", 1)):
            name = f"{side.value} {kind.replace('_', ' ')}"
            found.append(
                Fastener(name=name, kind=kind, side=side, bolts=bolts, torque=torque(), **more)
            )
        found.append(
            Fastener(
                name=f"{side.value} bar", kind="handlebar_clamp_above", side=side, torque=torque()
            )
        )
    return tuple(found)


def lengths(*texts: str) -> tuple[SignedLength, ...]:
    return tuple(SignedLength.typed(text) for text in texts)


def true_job(
    parts: tuple[Fastener, ...] | None = None,
    *,
    rules: tuple[OrderRule, ...] = (),
    wrenches: dict[str, TorqueWrench] | None = None,
) -> Job:
    """A job whose readings are all within their limits, and nothing is ticked."""
    gauge = Gauge(
        resolution=Length.typed("0.02 mm"),
        limit_of_error=Length.typed("0.02 mm"),
        repeatability=Length.typed("0.02 mm"),
    )
    return Job(
        sheet=Sheet(
            name="an invented bike",
            protrusion=ProtrusionLimits(tolerance=Length.typed("0.5 mm")),
            squaring=TurnLimits(tolerance=Length.typed("0.5 mm")),
            fasteners=fasteners() if parts is None else parts,
            rules=rules,
        ),
        gauges={"gauge": gauge},
        wrenches=wrenches or {},
        align=Align(
            begun=BEGUN,
            protrusion=ProtrusionReadings(
                gauge="gauge", left=lengths("5.0 mm", "5.0 mm"), right=lengths("5.0 mm", "5.0 mm")
            ),
            squaring=(
                SquaringPair(
                    name="lugs",
                    gauge="gauge",
                    left=(Length.typed("180.0 mm"), Length.typed("180.0 mm")),
                    right=(Length.typed("180.0 mm"), Length.typed("180.0 mm")),
                ),
            ),
        ),
    )


def ticked(job: Job, standing: StepStanding, number: int, reason: str = "") -> Job:
    """The job with a step ticked as a person at the bench would."""
    step = standing.step
    seen = Torque.typed(f"{step.target_nm:.4g} N·m") if step.target_nm is not None else None
    if step.torque_missing:
        seen = Torque.typed("20 N·m")
    return with_tick(job, step.key, minute(number), torque=seen, reason=reason)


def ticked_as_far_as(job: Job, key: str, *, reason: str = "") -> Job:
    """The job ticked in its order up to and with a step; hold points must pass or have a reason."""
    number = 1
    while True:
        standing = assess(job).tightening.next_step
        assert standing is not None, f"{key} is not on the list"
        job = ticked(job, standing, number, reason if standing.waits_for else "")
        number += 1
        if standing.step.key == key:
            return job
