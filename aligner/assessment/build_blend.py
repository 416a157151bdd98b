"""Two oils mixed to a wanted viscosity: how much of each, or why they cannot make it.

The trap: the millilitres of a blend that is half entered. Nothing is said before all four values
are there, and what is still to be entered is named.
"""

from __future__ import annotations

from dataclasses import dataclass

from aligner.errors import AlignerError
from aligner.job import Job
from aligner.language import say
from aligner.legs import Blend, blend_for_target


@dataclass(frozen=True)
class BlendAssessment:
    """Two oils mixed.

    Attributes:
        blend: how much of each; `None` where it cannot be said.
        missing: what is still to be entered, in words; empty where nothing was begun.
        refusal: why the oils cannot make it; "" if they can.
    """

    blend: Blend | None = None
    missing: tuple[str, ...] = ()
    refusal: str = ""


def assess_blend(job: Job) -> BlendAssessment:
    """The blend of a job's two oils."""
    given = job.build.blend
    named = (
        (say("the first oil's viscosity"), given.first),
        (say("the second oil's viscosity"), given.second),
        (say("the wanted viscosity"), given.wanted),
        (say("the amount"), given.amount),
    )
    missing = tuple(words for words, value in named if value is None)
    first, second, wanted, amount = given.first, given.second, given.wanted, given.amount
    if first is None or second is None or wanted is None or amount is None:
        return BlendAssessment(missing=missing if len(missing) < len(named) else ())
    try:
        made = blend_for_target(first.value, second.value, wanted.value, amount.value)
    except AlignerError as error:
        return BlendAssessment(refusal=f"{error}.")
    return BlendAssessment(made)
