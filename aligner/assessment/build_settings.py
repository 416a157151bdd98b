"""What was set while building up, as rows of name, value, unit and words.

For the job card and for the charts of a bike's history: the same name every time, so that a row of
this job and one of two years ago can be laid side by side.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.build_bearing import BearingAssessment
from aligner.assessment.build_oil import OilAssessment
from aligner.assessment.build_sag import SagAssessment
from aligner.assessment.build_spring import SpringAssessment
from aligner.job import Job
from aligner.language import marked, say
from aligner.units.shown import rounded


@dataclass(frozen=True)
class BuildSetting:
    """One thing that was set.

    Attributes:
        name: the same in every job ("left air gap"), in the language spoken.
        value: in the unit; `None` where it is words alone (the oil's name).
        unit: "mm", "ml", "%", "N·m"; "" for words.
        words: as a person reads it.
    """

    name: str
    value: float | None
    unit: str
    words: str


_AIR_GAP = {"left": marked("left air gap"), "right": marked("right air gap")}
_OIL = {"left": marked("left oil"), "right": marked("right oil")}


def build_settings(
    job: Job,
    oil: OilAssessment,
    spring: SpringAssessment,
    sag: SagAssessment,
    bearing: BearingAssessment,
) -> tuple[BuildSetting, ...]:
    """The rows of a job; what was not read has none."""
    rows: list[BuildSetting] = []
    if job.build.oil:
        rows.append(BuildSetting(say("oil"), None, "", job.build.oil))
    for side in ("left", "right"):
        leg = oil.leg(side)
        if leg.gap is not None:
            rows.append(_row(say(_AIR_GAP[side]), leg.gap.value_mm, "mm", 1))
        if leg.volume_ml is not None:
            rows.append(_row(say(_OIL[side]), leg.volume_ml, "ml", 0))
    for name, share, under in (
        (say("static sag"), say("static sag, share of travel"), sag.static),
        (say("rider sag"), say("rider sag, share of travel"), sag.rider),
    ):
        if under.sag is not None:
            rows.append(_row(name, under.sag.sag_mm, "mm", 1))
            if under.share is not None:
                rows.append(_row(share, under.share * 100, "%", 0))
    spacer, preload = job.build.spring.fitted_spacer, job.sheet.legs.spring.preload
    if spacer is not None:
        rows.append(_row(say("spacer"), spacer.value, "mm", 1))
    if spring.fitted_preload_mm is not None:
        rows.append(_row(say("preload"), spring.fitted_preload_mm, "mm", 1))
    elif preload is not None and spacer is None:  # what a spacer gives is not always the sheet's
        rows.append(_row(say("preload"), preload.value, "mm", 1))
    if bearing.drag_nm is not None:
        rows.append(_row(say("head bearing drag"), bearing.drag_nm, "N·m", 2))
    if bearing.fall_away is not None:
        felt = say(bearing.fall_away.value)
        rows.append(BuildSetting(say("head bearing"), None, "", felt))
    return tuple(rows)


def _row(name: str, value: float, unit: str, decimals: int) -> BuildSetting:
    return BuildSetting(name, value, unit, f"{rounded(value, decimals)} {unit}")
