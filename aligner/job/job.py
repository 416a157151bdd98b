"""A job: one piece of work on one bike, from the sheet it was done by to the sign-off.

The trap: a job carries a copy of its sheet, so that it reads the same in ten years. To
change the bike's sheet is therefore another act than to change a job.
"""

from __future__ import annotations

from datetime import date, datetime
from typing import Literal

from pydantic import Field

from aligner.job.align import Align
from aligner.job.as_found import AsFound
from aligner.job.build import Build
from aligner.job.gauges import Gauge
from aligner.job.inspect import Inspect
from aligner.job.log import LogEntry
from aligner.job.strip import Strip
from aligner.job.wrenches import Adapter, TorqueWrench, WrenchChoice
from aligner.sheet import Sheet
from aligner.sheet.model import Part


class Attempt(Part):
    """Readings that were acted on or taken again, kept as they were."""

    closed: datetime
    align: Align


class Check(Part):
    """One of the final checks, done or not, with what was noticed."""

    name: str
    done: bool = False
    note: str = ""


class SignOff(Part):
    """Who says that the job is done, and when."""

    name: str
    on: date


class Prove(Part):
    """The proof of the job: final checks, road test, fasteners checked again, sign-off.

    Attributes:
        checks: the final checks.
        road_test: what was noticed on it.
        rechecks: ticks of the fasteners that are checked again after some distance.
        sign_off: who says that the job is done.
    """

    checks: tuple[Check, ...] = ()
    road_test: str = ""
    rechecks: tuple[LogEntry, ...] = ()
    sign_off: SignOff | None = None


class Job(Part):
    """One piece of work on one bike.

    Attributes:
        title: of the job ("front end refit").
        sheet: the bike as it was described when the job was begun.
        gauges: by name.
        wrenches: the owner's torque wrenches, by name.
        adapters: what fits between a wrench and a fastener, by name.
        wrench_choices: by the joint's name, what a person chose; the best where left out.
        as_found: readings taken before anything was loosened.
        strip: what was taken off, and how it stood.
        inspect: what was found.
        build: what went into each leg, and how it was set.
        align: the attempt at the alignment now in hand.
        attempts: the earlier ones, oldest first.
        log: ticks of the tightening list.
        prove: final checks and sign-off.
        note: anything else.
    """

    document: Literal["job"] = "job"
    version: Literal[1] = 1
    title: str = ""
    sheet: Sheet = Sheet()
    gauges: dict[str, Gauge] = Field(default_factory=dict)
    wrenches: dict[str, TorqueWrench] = Field(default_factory=dict)
    adapters: dict[str, Adapter] = Field(default_factory=dict)
    wrench_choices: dict[str, WrenchChoice] = Field(default_factory=dict)
    as_found: AsFound = AsFound()
    strip: Strip = Strip()
    inspect: Inspect = Inspect()
    build: Build = Build()
    align: Align = Align()
    attempts: tuple[Attempt, ...] = ()
    log: tuple[LogEntry, ...] = ()
    prove: Prove = Prove()
    note: str = ""

    @property
    def is_strip_begun(self) -> bool:
        """Whether anything was read before, loosened or taken off."""
        return bool(self.strip.log or self.strip.removed) or self.as_found != AsFound()
