"""How things stood before anything was loosened, as rows of a name and words.

For the job card and for Align. A height carries the uncertainty of its gauge: read before
stripping, it is no more exact than one read afterwards.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from aligner.assessment.readings import gauge_of, judged, mean_mm, mean_of
from aligner.gauging import Estimate, difference
from aligner.job import Job
from aligner.language import marked, say
from aligner.sheet import ForkKind
from aligner.sheet.quantities import Quantity
from aligner.units.preferred import Preferred

SIDES = ("left", "right")

_HEIGHTS = (marked("left height"), marked("right height"))
_BRACKET = (marked("left, bracket to frame"), marked("right, bracket to frame"))
_PRELOAD = {"left": marked("left preload"), "right": marked("right preload")}
_OIL = {"left": marked("left oil"), "right": marked("right oil")}
_SAG = {"static": marked("static sag"), "rider": marked("rider sag")}
_SAG_MISREAD = {
    "static": marked("static length longer than extended: one of them is misread"),
    "rider": marked("rider length longer than extended: one of them is misread"),
}


@dataclass(frozen=True)
class AsFoundRow:
    """One thing that was read or noted.

    Attributes:
        name: the same in every job ("left height"), in the language spoken.
        words: as a person reads it, with ± where the gauge is known.
    """

    name: str
    words: str


def has_heights_as_found(job: Job) -> bool:
    """Whether both heights were read before anything was loosened."""
    heights = job.as_found.protrusion
    return bool(heights.left and heights.right)


def has_air(job: Job) -> bool:
    """Whether an air pressure is asked for: the fork holds air, or one was written down."""
    return (
        job.sheet.fork.kind is ForkKind.AIR_ASSISTED
        or job.sheet.legs.oil.air_pressure is not None
        or bool(job.as_found.air_pressure)
    )


def as_found_rows(job: Job, show: Preferred) -> tuple[AsFoundRow, ...]:
    """Everything that was read or noted; what was not has no row."""
    found = job.as_found
    rows = [
        *_pair_rows(job, found.protrusion, _HEIGHTS, say("heights, difference"), show),
        *_pair_rows(job, found.bracket, _BRACKET, say("bracket to frame, difference"), show),
        AsFoundRow(say("handlebars"), found.handlebars),
        AsFoundRow(say("air pressure"), found.air_pressure),
        AsFoundRow(say("steering"), found.steering),
    ]
    for side in SIDES:
        leg = getattr(found, side)
        oil = ", ".join(part for part in (leg.oil.said if leg.oil else "", leg.oil_look) if part)
        rows += [AsFoundRow(say(_PRELOAD[side]), leg.preload), AsFoundRow(say(_OIL[side]), oil)]
    for load, name in _SAG.items():
        rows.append(AsFoundRow(say(name), sag_words(job, load, show)))
    return tuple(row for row in rows if row.words)


def mean_words(job: Job, readings: Sequence[Quantity], gauge: str | None, show: Preferred) -> str:
    """The mean of some readings with its uncertainty; "" where there is none."""
    estimate = mean_of(readings, gauge_of(job, gauge))
    return estimate_words(estimate, show) if estimate else ""


def difference_words(
    job: Job,
    left: Sequence[Quantity],
    right: Sequence[Quantity],
    gauge: str | None,
    show: Preferred,
) -> str:
    """Left less right with its uncertainty, and which is the greater; "" unless both are read.

    The part of the uncertainty that one gauge brings to both readings alike falls out of it.
    """
    described = gauge_of(job, gauge)
    one, other = mean_of(left, described), mean_of(right, described)
    if one is None or other is None:
        return ""
    unlike = difference(one, other, same_gauge=described is not None)
    found = judged(unlike.value_mm, unlike.standard_uncertainty_mm, unlike.degrees_of_freedom, None)
    size = _sized(abs(unlike.value_mm), found.judgement.expanded_uncertainty, show)
    if unlike.value_mm == 0:
        return say("left and right alike, {size}", size=size)
    if unlike.value_mm > 0:
        return say("left {size} more than right", size=size)
    return say("left {size} less than right", size=size)


def sag_words(job: Job, load: str, show: Preferred) -> str:
    """The sag as found ("static", "rider"); "" until its two lengths are read.

    Extended length less the length under the load: common practice, no source.
    """
    sag = job.as_found.sag
    loaded = getattr(sag, load)
    if not (sag.extended and loaded):
        return ""
    size = mean_mm(sag.extended) - mean_mm(loaded)
    if size < 0:
        return say(_SAG_MISREAD[load])
    return show.show_length(size)


def _pair_rows(
    job: Job, pair: object, names: tuple[str, str], unlike: str, show: Preferred
) -> list[AsFoundRow]:
    gauge: str | None = getattr(pair, "gauge", None)
    left, right = (getattr(pair, side) for side in SIDES)
    rows = [
        AsFoundRow(say(name), mean_words(job, readings, gauge, show))
        for name, readings in zip(names, (left, right), strict=True)
    ]
    return [*rows, AsFoundRow(unlike, difference_words(job, left, right, gauge, show))]


def estimate_words(estimate: Estimate, show: Preferred) -> str:
    """A mean with its expanded uncertainty (95 %), where that is known."""
    found = judged(
        estimate.value_mm, estimate.standard_uncertainty_mm, estimate.degrees_of_freedom, None
    )
    return _sized(estimate.value_mm, found.judgement.expanded_uncertainty, show)


def _sized(value_mm: float, expanded_mm: float | None, show: Preferred) -> str:
    shown = show.show_length(value_mm, fine=1)
    if expanded_mm is None:
        return shown
    return f"{shown.split(' ', 1)[0]} ± {show.show_length(expanded_mm, fine=1)}"
