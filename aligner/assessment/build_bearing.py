"""The head bearing's check: the pull that starts it turning, as a drag torque, and what was felt.

The trap: hoses and cables that still hang on the brackets pull too. The check counts only with
the steering free of all of them, front wheel off the ground.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.notice import Notice, attention, note, refused
from aligner.errors import AlignerError
from aligner.fastening.head_bearing import PullRange, pull_at_radius, pull_moment_nm
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.job.build import FallAway
from aligner.language import marked, say

WHERE = "build.bearing"
_METRE_MM = 1000.0

#: What to say of the steering where it does not fall away as it should.
_FELT = {
    FallAway.SLOW: marked("The steering falls slowly or stops on the way."),
    FallAway.NOTCH: marked("The steering catches in the middle."),
    FallAway.PLAY: marked("The head bearing knocks: it has play."),
}


@dataclass(frozen=True)
class BearingAssessment:
    """The head bearing.

    Attributes:
        pull_n: mean of the readings.
        radius_mm: at which they were taken.
        drag_nm: their moment about the steering axis.
        low_nm: least drag that is right, from the sheet.
        high_nm: greatest.
        wanted_pull: the same as a pull at the radius used.
        verdict: of the pull; unsettled where the readings lie on both sides of an end.
        fall_away: what was felt.
        missing: what the sheet lacks, in words.
        notices: what to know.
    """

    pull_n: float | None = None
    radius_mm: float | None = None
    drag_nm: float | None = None
    low_nm: float | None = None
    high_nm: float | None = None
    wanted_pull: PullRange | None = None
    verdict: Verdict = Verdict.MISSING
    fall_away: FallAway | None = None
    missing: tuple[str, ...] = ()
    notices: tuple[Notice, ...] = ()

    @property
    def has_band(self) -> bool:
        """Whether the sheet says what drag is right."""
        return self.high_nm is not None

    @property
    def is_settled(self) -> bool:
        """Whether the check is passed: by the scale where there is a band, and by feel."""
        by_scale = self.verdict is Verdict.WITHIN or not self.has_band
        return by_scale and self.fall_away is FallAway.FREE


def assess_bearing(job: Job) -> BearingAssessment:
    """The head bearing's check of a job."""
    read = job.build.bearing
    notices: list[Notice] = []
    low, high = _band_nm(job, notices)
    missing = () if high is not None else (say("drag of the head bearing"),)
    radius = _radius_mm(job)
    pulls = [reading.value for reading in read.pull]
    pull = sum(pulls) / len(pulls) if pulls else None
    drag: float | None = None
    wanted: PullRange | None = None
    verdict = Verdict.MISSING
    try:
        if radius is not None and low is not None and high is not None:
            wanted = pull_at_radius(PullRange(low, high, _METRE_MM), radius)
        if pull is not None and radius is not None:
            drag = pull_moment_nm(pull, radius)
            if wanted is not None:
                verdict = _verdict(pulls, wanted)
    except AlignerError as error:
        notices.append(refused(WHERE, error))
    if pull is not None:
        notices += _about_the_pull(radius, high)
    if read.fall_away in _FELT:
        notices.append(attention(f"{WHERE}.fall_away", say(_FELT[read.fall_away])))
    return BearingAssessment(
        pull_n=pull,
        radius_mm=radius,
        drag_nm=drag,
        low_nm=low,
        high_nm=high,
        wanted_pull=wanted,
        verdict=verdict,
        fall_away=read.fall_away,
        missing=missing,
        notices=tuple(notices),
    )


def _radius_mm(job: Job) -> float | None:
    """Where the scale was hooked on; where the manual pulls, if nothing else is said."""
    given = job.build.bearing.radius or job.sheet.legs.bearing.radius
    return given.value if given is not None else None


def _about_the_pull(radius_mm: float | None, high_nm: float | None) -> list[Notice]:
    """What a pull that was read lacks to be judged."""
    found = []
    if radius_mm is None:
        found.append(attention(f"{WHERE}.radius", say("The radius of the pull is missing.")))
    if high_nm is None:
        text = say("The sheet gives no drag for the head bearing: the pull is kept, not judged.")
        found.append(note("sheet.legs.bearing", text))
    return found


def _band_nm(job: Job, notices: list[Notice]) -> tuple[float | None, float | None]:
    """The drag that is right: as printed, or the printed pull times its radius."""
    given = job.sheet.legs.bearing
    if given.torque_high is not None:
        low = given.torque_low.value if given.torque_low else 0.0
        return _in_order(low, given.torque_high.value, notices)
    if given.pull_high is None:
        return None, None
    if given.radius is None or given.radius.value <= 0:
        text = say("The sheet gives a pull for the head bearing and no radius for it.")
        notices.append(attention("sheet.legs.bearing.radius", text))
        return None, None
    arm = given.radius.value
    low = pull_moment_nm(given.pull_low.value, arm) if given.pull_low else 0.0
    return _in_order(low, pull_moment_nm(given.pull_high.value, arm), notices)


def _in_order(low: float, high: float, notices: list[Notice]) -> tuple[float | None, float | None]:
    if low <= high:
        return low, high
    text = say(
        "The head bearing's drag runs from more to less on the sheet: put the lower one first."
    )
    notices.append(attention("sheet.legs.bearing", text))
    return None, None


def _verdict(pulls: list[float], wanted: PullRange) -> Verdict:
    """A plain comparison: the scale's own error is not described, and so is not counted."""
    if all(map(wanted.holds, pulls)):
        return Verdict.WITHIN
    is_mean_inside = wanted.holds(sum(pulls) / len(pulls))
    is_doubtful = is_mean_inside or any(map(wanted.holds, pulls))
    return Verdict.UNSETTLED if is_doubtful else Verdict.OUT
