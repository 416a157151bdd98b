"""What would settle a verdict that the readings cannot tell yet, in words."""

from __future__ import annotations

from collections.abc import Iterable

from aligner.assessment.correction import Correction, Subject
from aligner.assessment.notice import Notice
from aligner.assessment.readings import odd_reading_said
from aligner.gauging import Advice, Remedy, Verdict
from aligner.language import say, say_count

#: More readings than this nobody takes: one of those there is wrong, or the value lies too near
#: the limit. Chosen, no source.
_TOO_MANY = 50


def unsettled(
    subject: Subject, what: str, advice: Advice | None, notices: Iterable[Notice] = ()
) -> Correction:
    """What to do where the readings cannot tell.

    A reading that stands off comes before any finer gauge: with it among them, no gauge helps.

    Args:
        subject: what is read.
        what: that it is not settled, as the beginning of a sentence.
        advice: what would settle it; `None` if nothing is known of that.
        notices: what is to be known of the readings.
    """
    odd = odd_reading_said(notices)
    if odd:
        return Correction(subject, _look_for_a_wrong_one(what), odd)
    if advice is None:
        how = say("Measure again, with a finer gauge if you have one.")
        return Correction(subject, f"{what}.", how)
    if advice.remedy is Remedy.MORE_READINGS and (advice.readings_needed or 0) > _TOO_MANY:
        return Correction(
            subject,
            _look_for_a_wrong_one(what),
            say(
                "More than {most} readings would be needed. Type over one that was misread or "
                "mistyped; if there is none, use a finer gauge.",
                most=_TOO_MANY,
            ),
        )
    match advice.remedy:
        case Remedy.MORE_READINGS:
            if advice.expected_verdict is Verdict.WITHIN:
                how = say(
                    "If they come out as they are now, that many would settle it: within the "
                    "limit. Do not move anything for a difference that is not there."
                )
            else:
                how = say(
                    "If they come out as they are now, that many would settle it: out. Do not "
                    "move anything for a difference that is not there."
                )
            return Correction(subject, _more_readings(subject, what, advice), how)
        case Remedy.ANOTHER_GAUGE:
            gauge = advice.gauge_name
            return Correction(
                subject,
                say("{what}: use the {gauge}.", what=what, gauge=gauge),
                _with_another_gauge(subject, advice),
            )
        case Remedy.NAME_THE_GAUGE:
            return Correction(
                subject,
                say("{what}: name the gauge.", what=what),
                say(
                    "Choose it under Gauges: without its limit of error a reading settles nothing."
                ),
            )
        case Remedy.NOTHING_LISTED:
            return Correction(
                subject,
                say("{what}, and no gauge on the list can settle it.", what=what),
                say(
                    "The difference is too near the limit for the gauges listed. Add a finer "
                    "gauge, or bring the legs nearer to equal and measure again."
                ),
            )


def _look_for_a_wrong_one(what: str) -> str:
    return say("{what}: look for a reading that is wrong.", what=what)


def _more_readings(subject: Subject, what: str, advice: Advice) -> str:
    count = advice.readings_needed or 0
    match subject:
        case Subject.PROTRUSION:
            return say_count(
                "{what}: take {count} reading of each leg.",
                "{what}: take {count} readings of each leg.",
                count,
                what=what,
            )
        case Subject.SQUARING:
            return say_count(
                "{what}: take {count} reading of each side.",
                "{what}: take {count} readings of each side.",
                count,
                what=what,
            )
        case _:
            return say_count(
                "{what}: take {count} reading.",
                "{what}: take {count} readings.",
                count,
                what=what,
            )


def _with_another_gauge(subject: Subject, advice: Advice) -> str:
    count, gauge = advice.gauge_readings or 0, advice.gauge_name
    match subject:
        case Subject.PROTRUSION:
            return say_count(
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, one reading of each leg would.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, {count} readings of each leg would.",
                count,
                gauge=gauge,
            )
        case Subject.SQUARING:
            return say_count(
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, one reading of each side would.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, {count} readings of each side would.",
                count,
                gauge=gauge,
            )
        case _:
            return say_count(
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, one reading would.",
                "The gauge in use cannot settle it in a reasonable number of readings; with the "
                "{gauge}, {count} readings would.",
                count,
                gauge=gauge,
            )
