"""All pairs of distances together: the turn they make likely, and whether they agree on it.

The trap: the mean of pairs that contradict each other. Each is weighed by what it knows, and
what is left of it is held against its own uncertainty.
"""

from __future__ import annotations

from dataclasses import replace

from aligner.assessment.notice import Notice, attention
from aligner.assessment.squaring_pair import WHERE, PairAssessment, reference_pair
from aligner.geometry import WeightedTurn, distances_at, weighted_turn
from aligner.job import Job
from aligner.language import say


def turn_of(
    turned: list[PairAssessment], notices: list[Notice]
) -> tuple[tuple[float, float | None] | None, WeightedTurn | None, float]:
    """The turn with its uncertainty, how the pairs agree, and the degrees of freedom."""
    if not turned:
        return None, None, 0.0
    first = turned[0]
    if first.turn_deg is None:
        return None, None, 0.0
    known = [pair for pair in turned if pair.turn_uncertainty_deg]
    if len(turned) == 1 or len(known) < len(turned):
        if len(turned) > 1:
            notices.append(
                attention(
                    WHERE,
                    say(
                        "A pair's uncertainty is not known, so the pairs cannot be weighed "
                        "against each other: name the gauge of each."
                    ),
                )
            )
            return (first.turn_deg, None), None, 0.0
        return (first.turn_deg, first.turn_uncertainty_deg), None, first.degrees_of_freedom
    together = weighted_turn(
        [pair.turn_deg or 0.0 for pair in known],
        [pair.turn_uncertainty_deg or 0.0 for pair in known],
        [pair.name for pair in known],
    )
    dof = _pooled_degrees_of_freedom(known, together.uncertainty_deg)
    return (together.turn_deg, together.uncertainty_deg), together, dof


def _pooled_degrees_of_freedom(pairs: list[PairAssessment], u: float) -> float:
    """Welch-Satterthwaite over the pairs: each part of the weighted mean is u^2 / u_i (GUM G.4)."""
    parts = 0.0
    for pair in pairs:
        part = u * u / (pair.turn_uncertainty_deg or 1.0)
        parts += part**4 / pair.degrees_of_freedom
    return u**4 / parts if parts else float("inf")


def with_residuals(
    job: Job, pairs: tuple[PairAssessment, ...], together: WeightedTurn
) -> tuple[PairAssessment, ...]:
    """The pairs, each with what it measures beside the turn that all of them make likely."""
    normalized = iter(together.normalized_residuals)
    done = []
    for pair, typed in zip(pairs, job.align.squaring, strict=True):
        points = reference_pair(typed)
        if pair.turn_deg is None or points is None or pair.left is None or pair.right is None:
            done.append(pair)
            continue
        asymmetry = typed.frame_asymmetry.value if typed.frame_asymmetry else 0.0
        likely = distances_at(
            together.turn_deg, pair.left.value_mm, pair.right.value_mm, points, asymmetry
        )
        residual = pair.left.value_mm - pair.right.value_mm - likely.difference_mm
        done.append(replace(pair, residual_mm=residual, normalized_residual=next(normalized)))
    return tuple(done)


def disagreement(together: WeightedTurn) -> Notice:
    """What to say of pairs that contradict each other."""
    text = say(
        "The pairs of distances disagree by more than their uncertainty: something is bent, "
        "unlike left and right, or misread."
    )
    odd = (
        say("“{pair}” stands out.", pair=together.odd_pair)
        if together.odd_pair
        else say("Of two pairs neither can be called the odd one: measure a third.")
    )
    return attention(WHERE, f"{text} {odd}")
