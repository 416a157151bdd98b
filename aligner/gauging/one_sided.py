"""A measured value held against a limit that lies on one side of it: at most, or at least.

The trap: a wear limit is not a tolerance either way. A spring longer than its least length is
well within, not out; and the room that counts is towards the limit alone.
"""

from __future__ import annotations

from math import isfinite

from aligner.gauging.student import student_distribution
from aligner.gauging.uncertainty import coverage_factor, whole_degrees_of_freedom
from aligner.gauging.verdict import Judgement, UnusableTolerance, Verdict
from aligner.language import marked, say, written

# A limit typed in inches and one typed in millimetres differ in the last digits only.
_ROUNDING = 1e-12
_GIVEN = (marked("value"), marked("standard uncertainty"), marked("limit"))


def judge_at_most(
    value: float | None,
    standard_uncertainty: float | None,
    degrees_of_freedom: float,
    most: float | None,
) -> Judgement:
    """The verdict on value <= most: within if value + U <= most, out if value - U > most.

    Args:
        value: either sign; `None` if not measured.
        standard_uncertainty: in the same unit; `None` if unknown, which settles nothing.
        degrees_of_freedom: of the uncertainty, cut to the whole number below here.
        most: the limit; `None` if the sheet has none.

    Raises:
        UnusableTolerance: something given is not a number, or the uncertainty is negative.

    Source: ISO 14253-1:2017 (within and out proven), with the same U for 95 % as everywhere
    else, which is on the safe side here; JCGM 106:2012 7.3 (probability for one limit).
    """
    return _judge(value, standard_uncertainty, degrees_of_freedom, most, is_most=True)


def judge_at_least(
    value: float | None,
    standard_uncertainty: float | None,
    degrees_of_freedom: float,
    least: float | None,
) -> Judgement:
    """The verdict on value >= least: within if value - U >= least, out if value + U < least.

    Arguments, refusals and source as for `judge_at_most`.
    """
    return _judge(value, standard_uncertainty, degrees_of_freedom, least, is_most=False)


def _judge(
    value: float | None, u: float | None, nu: float, limit: float | None, *, is_most: bool
) -> Judgement:
    for name, given in zip(_GIVEN, (value, u, limit), strict=True):
        if given is not None and not isfinite(given):
            raise UnusableTolerance(
                say(name),
                say("{value} is not a number", value=written(given, "")),
                say("check what was typed"),
            )
    if u is not None and u < 0:
        raise UnusableTolerance(
            say("standard uncertainty"),
            say("{value} cannot be", value=written(u, "")),
            say("it is zero or more"),
        )
    if value is None or u is None:
        unknown = Verdict.MISSING if value is None or limit is None else Verdict.UNSETTLED
        return Judgement(unknown, None, None, None)
    k = coverage_factor(nu)
    if limit is None:
        return Judgement(Verdict.MISSING, None, k * u, k)
    room = limit - value if is_most else value - limit
    slack = _ROUNDING * max(abs(value), abs(limit))
    return Judgement(_verdict(room, k * u, slack), _probability(room, u, nu, slack), k * u, k)


def _verdict(room: float, expanded: float, slack: float) -> Verdict:
    if room - expanded >= -slack:
        return Verdict.WITHIN
    return Verdict.OUT if room + expanded < -slack else Verdict.UNSETTLED


def _probability(room: float, u: float, nu: float, slack: float) -> float:
    if u == 0.0:
        return 1.0 if room >= -slack else 0.0
    return student_distribution(room / u, whole_degrees_of_freedom(nu))
