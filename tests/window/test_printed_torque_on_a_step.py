"""Under a step's torque stands what the manual prints, where that is in another unit."""

from __future__ import annotations

import pytest

from aligner.assessment import assess
from aligner.job import Job
from aligner.sheet import Fastener, Sheet, Side
from aligner.sheet.printed_torque import printed_torque
from aligner.units.preferred import Preferred
from aligner.window.steps.step_words import range_words


def under_the_torque(printed: str, show: Preferred) -> str:
    torque = printed_torque(printed, source="manual p. 112")
    fastener = Fastener(name="left top clamp", kind="top_clamp", side=Side.LEFT, torque=torque)
    job = Job(sheet=Sheet(name="an invented bike", fasteners=(fastener,)))
    steps = (standing.step for standing in assess(job).tightening.steps)
    return range_words(job, next(step for step in steps if step.joint == fastener.name), show)


@pytest.mark.parametrize(
    ("printed", "unit", "words"),
    [
        pytest.param("9 lbf·ft", "N·m", "printed as 9 lbf·ft, manual p. 112", id="other unit"),
        pytest.param("9 lbf·ft", "lbf·ft", "manual p. 112", id="the unit shown"),
        pytest.param("12 N·m", "N·m", "manual p. 112", id="as printed"),
        pytest.param(
            "1.2 to 1.4 kgf·m",
            "N·m",
            "11.8 to 13.7 N·m, printed as 1.2 to 1.4 kgf·m, manual p. 112",
            id="a range",
        ),
    ],
)
def test_a_torque_is_shown_beside_the_one_in_the_manual(printed: str, unit: str, words: str):
    assert under_the_torque(printed, Preferred(torque=unit)) == words
