"""An assessment as one JSON object: plain numbers, the unit in each key.

The trap: a program that reads this must find every key every time, and JSON knows no NaN. So
what is missing is `null` or an empty list, and never left out.
"""

from __future__ import annotations

import json
from math import isfinite
from typing import Any

from aligner.assessment import Assessment, StepStanding
from aligner.assessment.in_line import InLineAssessment
from aligner.assessment.protrusion import ProtrusionAssessment
from aligner.assessment.squaring import SquaringAssessment
from aligner.assessment.steering import SteeringAssessment

Fields = dict[str, Any]


def as_json(assessment: Assessment) -> str:
    """The object as indented JSON text, without a line break at its end."""
    return json.dumps(as_fields(assessment), ensure_ascii=False, allow_nan=False, indent=2)


def as_fields(assessment: Assessment) -> Fields:
    """The object; lengths in mm, angles in degrees, torques in N·m."""
    return {
        "protrusion": _protrusion(assessment.protrusion),
        "squaring": _squaring(assessment.squaring),
        "in_line": _in_line(assessment.in_line),
        "steering": _steering(assessment.steering),
        "tightening": [_step(standing) for standing in assessment.tightening.steps],
        "notices": [
            {"level": notice.level.value, "where": notice.where, "text": notice.text}
            for notice in assessment.notices
        ],
    }


def _protrusion(found: ProtrusionAssessment) -> Fields:
    judged, moves = found.difference, found.moves
    judgement = judged.judgement if judged else None
    return {
        "left_mm": _number(found.left.value_mm if found.left else None),
        "right_mm": _number(found.right.value_mm if found.right else None),
        "difference_mm": _number(judged.value if judged else None),
        "standard_uncertainty_mm": _number(judged.standard_uncertainty if judged else None),
        "expanded_uncertainty_mm": _number(judgement.expanded_uncertainty if judgement else None),
        "verdict": found.verdict.value,
        "probability_within": _number(judgement.probability_within if judgement else None),
        "move_left_mm": _number(moves.left_mm if moves else None),
        "move_right_mm": _number(moves.right_mm if moves else None),
    }


def _squaring(found: SquaringAssessment) -> Fields:
    turn, leading = found.turn, found.leading_pair
    change = leading.change if leading else None
    return {
        "turn_deg": _number(turn.value if turn else None),
        "turn_uncertainty_deg": _number(turn.standard_uncertainty if turn else None),
        "verdict": found.verdict.value,
        "left_change_mm": _number(change.left_mm if change else None),
        "right_change_mm": _number(change.right_mm if change else None),
        "target_mm": _number(leading.target_mm if leading else None),
        "pairs": [
            {
                "name": pair.name,
                "turn_deg": _number(pair.turn_deg),
                "residual_mm": _number(pair.residual_mm),
                "normalized_residual": _number(pair.normalized_residual),
            }
            for pair in found.pairs
        ],
        "consistency_p": _number(found.consistency_p),
    }


def _in_line(found: InLineAssessment) -> Fields:
    geometry = found.geometry
    return {
        "skew_deg": _number(geometry.skew_deg if geometry else None),
        "twist_deg": _number(geometry.twist_deg if geometry else None),
        "axle_turn_deg": _number(geometry.axle_turn_deg if geometry else None),
        "top_bracket_rim_mm": _number(geometry.top_bracket_rim_mm if geometry else None),
        "convergence_deg": _number(geometry.convergence_deg if geometry else None),
        "verdict": found.verdict.value,
    }


def _steering(found: SteeringAssessment) -> Fields:
    now = found.now
    return {
        "rake_deg": _number(now.rake_deg if now else None),
        "trail_mm": _number(now.trail_mm if now else None),
        "normal_trail_mm": _number(now.normal_trail_mm if now else None),
        "wheelbase_mm": _number(now.wheelbase_mm if now else None),
        "rake_change_deg": _number(now.rake_change_deg if now else None),
        "trail_change_mm": _number(now.trail_change_mm if now else None),
        "axle_lean_deg": _number(found.axle_lean_deg),
        "patch_shift_mm": _number(found.patch_shift_mm),
    }


def _step(standing: StepStanding) -> Fields:
    step, tool = standing.step, standing.tool
    return {
        "step": standing.number,
        "kind": step.kind,
        "joint": step.joint or None,
        "bolts": list(step.bolts),
        "pass": step.pass_number,
        "fraction": _number(step.fraction),
        "target_nm": _number(step.target_nm),
        "low_nm": _number(step.low_nm),
        "high_nm": _number(step.high_nm),
        "wrench": (tool.words or None) if tool else None,
        "setting_nm": _number(tool.setting_nm if tool else None),
        "reason": step.reason,
    }


def _number(value: float | None) -> float | None:
    """A number that JSON can hold; adding nought turns -0.0 into 0.0."""
    return value + 0.0 if value is not None and isfinite(value) else None
