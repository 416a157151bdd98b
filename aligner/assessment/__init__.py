"""What a job amounts to: corrections, verdicts, the tightening list, where each stage stands."""

from aligner.assessment.assess import Assessment, assess
from aligner.assessment.correction import Correction, Subject
from aligner.assessment.notice import Level, Notice
from aligner.assessment.stages import Stage, StageStanding, StageState
from aligner.assessment.tightening import StepStanding, StepState

__all__ = [
    "Assessment",
    "Correction",
    "Level",
    "Notice",
    "Stage",
    "StageStanding",
    "StageState",
    "StepStanding",
    "StepState",
    "Subject",
    "assess",
]
