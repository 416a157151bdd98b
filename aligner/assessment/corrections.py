"""The sentence that says what to correct now, what must be slack for it, and what must hold.

One correction disturbs another, so they come in a fixed order: heights first, because moving
a leg turns the brackets; then the lower bracket square, because the top bracket is set
against it; then the legs in line; then everything is measured once more.
"""

from __future__ import annotations

from aligner.assessment.correction import Correction, Subject, first_attention
from aligner.assessment.correction_heights import heights_correction
from aligner.assessment.correction_in_line import in_line_correction
from aligner.assessment.correction_square import pair_not_read, square_correction
from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.squaring import SquaringAssessment
from aligner.gauging import Verdict
from aligner.job import Job
from aligner.language import say
from aligner.units.preferred import Preferred


def next_correction(
    job: Job,
    protrusion: ProtrusionAssessment,
    squaring: SquaringAssessment,
    in_line: InLineAssessment,
    show: Preferred,
) -> Correction:
    """The one correction to make first."""
    if protrusion.verdict is not Verdict.WITHIN:
        return heights_correction(protrusion, show)
    if asks_for_squaring(job) and squaring.verdict is not Verdict.WITHIN:
        return square_correction(job, squaring, show)
    if squaring.not_read:
        return pair_not_read(squaring)
    if asks_for_in_line(job) and in_line.verdict is not Verdict.WITHIN:
        return in_line_correction(job, in_line, show)
    return Correction(
        Subject.NOTHING,
        say("Nothing left to correct."),
        say("Every reading is within its limit. Go on to the tightening list."),
        first_attention(protrusion.notices),
    )


def asks_for_squaring(job: Job) -> bool:
    """Whether the lower bracket is to be squared on this job."""
    return bool(job.align.squaring) or job.sheet.squaring.tolerance is not None


def asks_for_in_line(job: Job) -> bool:
    """Whether the legs are to be checked for lying in line on this job."""
    return job.align.in_line is not None or job.sheet.in_line.tolerance is not None
