"""The fasteners that are checked again after some distance on the road, and which have been."""

from __future__ import annotations

from dataclasses import dataclass

from aligner.assessment.tightening import TighteningAssessment
from aligner.assessment.wrenches import ToolForStep, tools_of
from aligner.fastening.joints import TorqueRange
from aligner.job import Job, LogEntry, ticked_steps
from aligner.job.log import recheck_key


@dataclass(frozen=True)
class RecheckStanding:
    """One fastener to check again.

    Attributes:
        key: names the row for good in the log of `job.prove.rechecks`.
        fastener: its name on the sheet.
        title: what is checked, with the numbers of its bolts.
        bolts: their numbers in the tightening list.
        after_km: the distance.
        torque: as specified; `None` where it is not known.
        entry: the log entry that ticked it; `None` while it is open.
        tool: what it is checked with; `None` without a torque or a wrench.
    """

    key: str
    fastener: str
    title: str
    bolts: tuple[int, ...]
    after_km: float
    torque: TorqueRange | None
    entry: LogEntry | None = None
    tool: ToolForStep | None = None

    @property
    def is_done(self) -> bool:
        """Whether it has been checked again."""
        return self.entry is not None


def assess_rechecks(job: Job, tightening: TighteningAssessment) -> tuple[RecheckStanding, ...]:
    """The rows, the nearest distance first; empty where nothing is to be checked again."""
    done = ticked_steps(job.prove.rechecks)
    tools = tools_of(job)
    titles: dict[str, str] = {}
    for each in tightening.steps:
        if each.step.joint and each.step.kind == "torque":
            titles.setdefault(each.step.joint, each.step.title)
    rows = []
    for recheck in tightening.rechecks:
        key = recheck_key(recheck.joint)
        torque = recheck.torque
        tool = None
        if torque is not None:
            tool = tools.for_torque(recheck.joint, torque.target_nm, torque.low_nm, torque.high_nm)
        rows.append(
            RecheckStanding(
                key=key,
                fastener=recheck.joint,
                title=titles.get(recheck.joint, recheck.joint),
                bolts=recheck.bolts,
                after_km=recheck.after_km,
                torque=torque,
                entry=done.get(key),
                tool=tool,
            )
        )
    return tuple(rows)
