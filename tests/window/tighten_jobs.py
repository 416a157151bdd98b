"""Jobs for the tests of the Tighten stage; every value is invented."""

from datetime import UTC, datetime, timedelta

from aligner.assessment import assess
from aligner.assessment.ticks import with_tick
from aligner.data_files import demo
from aligner.job import Adapter, TorqueWrench
from aligner.sheet.quantities import Angle, Length, Torque
from aligner.storage.document_file import load_job

START = datetime(2026, 5, 2, 8, 0, tzinfo=UTC)


def a_wrench(low="5 N·m", high="25 N·m", graduation="0.5 N·m", grip="215 mm"):
    return TorqueWrench(
        low=Torque.typed(low),
        high=Torque.typed(high),
        graduation=Torque.typed(graduation),
        grip_length=Length.typed(grip) if grip else None,
    )


SMALL = a_wrench()
LARGE = a_wrench("10 lbf·ft", "80 lbf·ft", "0.5 lbf·ft", "380 mm")
HOOK = Adapter(effective_length=Length.typed("45 mm"), angle=Angle.typed("60 deg"))
SOCKET = Adapter(concentric=True)


def demo_job(**changes):
    """The demo job with two invented wrenches."""
    job = load_job(demo("fellside-left-leg-high.job.json"))[0]
    tools = {"wrenches": {"small": SMALL, "large": LARGE}, "adapters": {}, "wrench_choices": {}}
    return job.with_changes(**{**tools, **changes})


def true_job(**changes):
    """The same with readings that are within."""
    return demo_job(align=load_job(demo("fellside-true.job.json"))[0].align, **changes)


def without_torque(job, name):
    fasteners = tuple(
        each.with_changes(torque=None) if each.name == name else each
        for each in job.sheet.fasteners
    )
    return job.with_changes(sheet=job.sheet.with_changes(fasteners=fasteners))


def ticked_until(job, is_reached):
    """The job with the list ticked in its order up to the first step of which it is true."""
    at = START
    for _ in range(100):
        standing = assess(job).tightening.next_step
        if standing is None or is_reached(standing):
            return job
        at += timedelta(seconds=1)
        step = standing.step
        torque = Torque.typed(f"{step.target_nm:g} N·m") if step.target_nm else None
        reason = "invented" if standing.waits_for else ""
        job = with_tick(job, step.key, at, torque=torque, reason=reason)
    raise AssertionError("the list has no end")


def at_joint(name, number=1):
    """Whether a pass of a joint is in hand."""
    return lambda standing: standing.step.joint == name and standing.step.pass_number == number


def at_kind(kind):
    return lambda standing: standing.step.kind == kind


def never(_):
    return False
