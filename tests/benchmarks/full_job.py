"""A full job: three pairs of distances, five attempts, twenty fasteners, every step ticked."""

from datetime import UTC, datetime, timedelta

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.geometry import Corner
from aligner.job import Attempt, Job, LogEntry
from aligner.job.align import PlateReadings
from aligner.sheet.fasteners import Side
from aligner.sheet.quantities import Angle, Length, SignedLength
from aligner.storage.document_file import load_job

_MORE_FASTENERS = (
    ("left hose guide", "hose_guide", "left"),
    ("right hose guide", "hose_guide", "right"),
    ("left axle clamp", "axle_clamp_cap", "left"),
    ("right axle clamp", "axle_clamp_cap", "right"),
)


def full_job() -> Job:
    """The demo job whose pairs disagree, grown to what a long evening leaves behind."""
    job, _ = load_job(demo("fellside-pairs-disagree.job.json"))
    model = next(f for f in job.sheet.fasteners if f.kind == "axle_pinch")
    more = tuple(
        model.with_changes(name=name, kind=kind, side=Side(side))
        for name, kind, side in _MORE_FASTENERS
    )
    limits = job.sheet.in_line.with_changes(tolerance=Angle.typed("0.3 deg"))
    sheet = job.sheet.with_changes(fasteners=(*job.sheet.fasteners, *more), in_line=limits)
    plate = PlateReadings(
        method="plate",
        gauge="caliper",
        gap=tuple(Length.typed(text) for text in ("0.3 mm", "0.3 mm", "0.4 mm")),
        corner=Corner.LOWER_LEFT,
        height=Length.typed("300 mm"),
    )
    align = job.align.with_changes(in_line=plate)
    begun = datetime(2026, 5, 1, 9, 0, tzinfo=UTC)
    attempts = []
    for number in range(5):
        left = tuple(SignedLength.typed(f"{8.0 - 0.6 * number + odd} mm") for odd in (0, 0.1, 0))
        heights = align.protrusion.with_changes(left=left)
        read = align.with_changes(protrusion=heights, begun=begun + timedelta(hours=number))
        attempts.append(Attempt(closed=begun + timedelta(hours=number, minutes=30), align=read))
    wrenches = load_job(demo("fellside-left-leg-high.job.json"))[0].wrenches
    job = job.with_changes(
        sheet=sheet,
        wrenches=wrenches,
        align=align.with_changes(begun=begun + timedelta(hours=6)),
        attempts=tuple(attempts),
    )
    log = tuple(
        LogEntry(step=standing.step.key, at=begun + timedelta(hours=7, minutes=standing.number))
        for standing in assess(job).tightening.steps
    )
    return job.with_changes(log=log)
