"""What a sheet lacks, each with the path of its place, so that a screen can lead there.

The trap: only what the job asks for is missing. A dimension that is not given leaves
something unsaid; a torque that is not given leaves a bolt that cannot be tightened.

Of the legs' inside only that is missing without which what the job builds up cannot be judged:
an air gap or a volume, its plus or minus, the travel of a sag that is printed as a share of it,
the radius of a pull. A spring's rate, a sag, a bore that the manual does not print are not asked
for: the Build stage judges the legs without them. And a job that never opens its legs is not
asked at all; before they are built up it is told only that these values are still to come.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.job import Job
from aligner.job.build import Build
from aligner.language import marked, say
from aligner.sheet import Sheet
from aligner.sheet.quantities import Ratio

#: Dimensions, in the order they are asked for, with their names, to be said where they are shown.
DIMENSIONS = {
    "fork.leg_spacing": marked("leg spacing, centre to centre"),
    "fork.bracket_spacing": marked("bracket spacing"),
    "fork.lower_bracket_to_axle": marked("lower bracket to axle"),
    "fork.bracket_offset": marked("bracket offset"),
    "fork.tube_diameter": marked("tube diameter at the brackets"),
    "steering.rake": marked("rake"),
    "steering.offset": marked("axle offset"),
    "steering.front_radius": marked("front wheel radius, loaded"),
    "steering.rear_radius": marked("rear wheel radius, loaded"),
    "steering.wheelbase": marked("wheelbase"),
}


@dataclass(frozen=True)
class MissingValue:
    """A value that is not on the sheet.

    Attributes:
        path: "protrusion.tolerance", or "fasteners.NAME.torque".
        name: of the value, as a person calls it.
    """

    path: str
    name: str


def missing_values(sheet: Sheet) -> tuple[MissingValue, ...]:
    """What the sheet lacks that the job asks for: the height's tolerance, the torques."""
    found = []
    if sheet.protrusion.tolerance is None:
        name = say("tolerance of the tubes' height")
        found.append(MissingValue("protrusion.tolerance", name))
    for fastener in sheet.fasteners:
        if fastener.torque is None:
            found.append(MissingValue(f"fasteners.{fastener.name}.torque", fastener.name))
        if fastener.kind == "stem_nut":
            if fastener.seating is None:
                name = say("{fastener}: seating torque", fastener=fastener.name)
                found.append(MissingValue(f"fasteners.{fastener.name}.seating", name))
            if fastener.back_off is None:
                name = say("{fastener}: back off", fastener=fastener.name)
                found.append(MissingValue(f"fasteners.{fastener.name}.back_off", name))
    return tuple(found)


def not_given(sheet: Sheet) -> tuple[MissingValue, ...]:
    """Dimensions that are not on the sheet: what follows from them is not worked out."""
    return tuple(
        MissingValue(path, say(name))
        for path, name in DIMENSIONS.items()
        if _is_left_out(sheet, path)
    )


def missing_for(job: Job) -> tuple[MissingValue, ...]:
    """What the sheet lacks that this job asks for, the legs' inside once they are built up."""
    legs = _missing_in_the_legs(job.sheet) if job.build != Build() else ()
    return (*missing_values(job.sheet), *legs)


def still_to_come(job: Job) -> tuple[MissingValue, ...]:
    """What of the legs' inside the job will ask for once they are built up.

    Nothing where the building up has begun and asks for it, or where the legs already stand in
    their brackets: what is in them is not this job's work.
    """
    stand = job.align.protrusion.left or job.align.protrusion.right or job.attempts
    is_in = stand or any(entry.step == "act/legs_in" for entry in job.log)
    return () if is_in or job.build != Build() else _missing_in_the_legs(job.sheet)


def missing_on_sheet(job: Job) -> int:
    """How many values the sheet lacks that this job asks for."""
    return len(missing_for(job))


def _missing_in_the_legs(sheet: Sheet) -> tuple[MissingValue, ...]:
    oil, sag, bearing = sheet.legs.oil, sheet.legs.sag, sheet.legs.bearing
    shares = (sag.static_low, sag.static_high, sag.rider_low, sag.rider_high)
    named = (
        (
            "oil.air_gap",
            say("air gap or volume of oil"),
            oil.air_gap is None and oil.volume is None,
        ),
        (
            "oil.air_gap_tolerance",
            say("tolerance of the air gap"),
            oil.air_gap is not None and oil.air_gap_tolerance is None,
        ),
        (
            "oil.volume_tolerance",
            say("tolerance of the volume"),
            oil.air_gap is None and oil.volume is not None and oil.volume_tolerance is None,
        ),
        (
            "travel",
            say("travel"),
            sheet.legs.travel is None and any(isinstance(each, Ratio) for each in shares),
        ),
        (
            "bearing.radius",
            say("radius of the head bearing's pull"),
            bearing.torque_high is None and bearing.pull_high is not None and not bearing.radius,
        ),
    )
    return tuple(MissingValue(f"legs.{path}", name) for path, name, is_out in named if is_out)


def _is_left_out(sheet: Sheet, path: str) -> bool:
    part, field = path.split(".")
    return getattr(getattr(sheet, part), field) is None
