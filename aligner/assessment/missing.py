"""What a sheet lacks, each with the path of its place, so that a screen can lead there.

The trap: only what the job asks for is missing. A dimension that is not given leaves
something unsaid; a torque that is not given leaves a bolt that cannot be tightened.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import Sheet

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


def missing_on_sheet(job: Job) -> int:
    """How many values the sheet lacks that this job asks for."""
    return len(missing_values(job.sheet))


def _is_left_out(sheet: Sheet, path: str) -> bool:
    part, field = path.split(".")
    return getattr(getattr(sheet, part), field) is None
