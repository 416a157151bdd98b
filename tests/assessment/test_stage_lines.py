"""Where a stage stands, in the words of the stage list."""

from aligner.assessment import Stage, StageState, assess
from aligner.job import Align, PlateReadings
from aligner.sheet.quantities import Length
from tests.assessment.bench_jobs import BEGUN, true_job


def test_align_is_begun_once_the_legs_were_checked_for_lying_in_line():
    gap = PlateReadings(method="plate", gauge="gauge", gap=(Length.typed("0 mm"),))
    job = true_job().with_changes(align=Align(begun=BEGUN, in_line=gap))
    (align,) = (each for each in assess(job).stages if each.stage is Stage.ALIGN)
    assert (align.state, align.line) == (StageState.IN_HAND, "0 of 3 within")
