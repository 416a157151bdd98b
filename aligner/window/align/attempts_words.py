"""Attempts in words and as charts: which way each was out, how surely, and what it came to."""

from __future__ import annotations

from aligner.assessment.attempts import AttemptRow, AttemptSeries
from aligner.assessment.correction import Subject
from aligner.drawing.attempt_chart import ChartPicture, ChartPoint, chart_reach
from aligner.gauging import Verdict
from aligner.language import marked, say
from aligner.units.preferred import Preferred

_TITLES = {
    Subject.PROTRUSION: marked("Difference of heights"),
    Subject.SQUARING: marked("Lower bracket"),
    Subject.IN_LINE: marked("Legs in line"),
}


def series_title(series: AttemptSeries, show: Preferred) -> str:
    """What a chart is called, with its unit."""
    title, unit = say(_TITLES[series.subject]), say("degrees") if series.is_angle else show.length
    return f"{title}, {unit}"


def ways(series: AttemptSeries, *, is_convergence: bool) -> tuple[str, str]:
    """What a positive and a negative value mean."""
    if series.subject is Subject.PROTRUSION:
        return say("left high"), say("right high")
    if series.subject is Subject.SQUARING:
        if series.is_angle:
            return say("turned left"), say("turned right")
        return say("left longer"), say("right longer")
    if is_convergence:
        return say("wider below"), say("narrower below")
    return say("twisted left"), say("twisted right")


def attempt_name(row: AttemptRow) -> str:
    """What stands under an attempt."""
    return say("now") if row.is_in_hand else str(row.number)


def attempt_words(series: AttemptSeries, row: AttemptRow, show: Preferred) -> str:
    """An attempt in words: "1: out, left high 1.6 ± 0.1 mm"; what else is to know on a new line."""
    number = str(row.number)
    name = say("{number}, now", number=number) if row.is_in_hand else number
    if row.value is None:
        return say("{name}: not measured", name=name)
    size = _shown(abs(row.value), series, show)
    if row.expanded_uncertainty is not None:
        number = size.removesuffix("°").split(" ", 1)[0]
        sized = f"{number} ± {_shown(row.expanded_uncertainty, series, show)}"
    else:
        number, sized = size, size
    up, down = ways(series, is_convergence=row.is_convergence)
    way = up if row.value > 0 else down
    is_off = any(digit in number for digit in "123456789")
    what = f"{way} {sized}" if is_off else sized
    is_missing = row.verdict is Verdict.MISSING
    verdict = say("no limit to hold it to") if is_missing else say(row.verdict.value)
    return f"{name}: {verdict}, {what}" + (f"\n{row.remark}" if row.remark else "")


def allowed_words(series: AttemptSeries, show: Preferred) -> str:
    """What is allowed either way, in words."""
    tolerance = series.rows[-1].tolerance or next(
        (row.tolerance for row in series.rows if row.tolerance is not None), None
    )
    if tolerance is None:
        return say("no limit to hold it to")
    return say("± {size} allowed", size=_shown(tolerance, series, show))


def chart_of(series: AttemptSeries, show: Preferred) -> ChartPicture:
    """The chart of a series."""
    points = tuple(
        ChartPoint(attempt_name(row), row.value, row.expanded_uncertainty, row.verdict.value)
        for row in series.rows
    )
    tolerance = next((row.tolerance for row in series.rows if row.tolerance is not None), None)
    up, down = ways(series, is_convergence=series.is_convergence)
    edge = _shown(chart_reach(points, tolerance), series, show)
    return ChartPicture(points, tolerance, up, down, edge)


def _shown(value: float, series: AttemptSeries, show: Preferred) -> str:
    return show.show_angle(value) if series.is_angle else show.show_length(value)
