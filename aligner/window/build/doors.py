"""Each entry of the Build stage's cards led to the one door through which a job is edited.

What is being typed is a draft, what is left is one undoable step with a name of its own.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime
from typing import Any

from aligner.job import Job
from aligner.job.edits_build import (
    with_adjustment,
    with_another_adjustment,
    with_bearing,
    with_blend,
    with_build,
    with_gap_gauge,
    with_leg_oil,
    with_legs_value,
    with_sag_gauge,
    with_sag_lengths,
    with_sag_spacer,
    with_spring,
    without_adjustment,
)
from aligner.language import marked, say
from aligner.window.build.bearing_card import BearingCard
from aligner.window.build.blend_card import BlendCard
from aligner.window.build.fill_card import FillCard
from aligner.window.build.oil_card import OilCard
from aligner.window.build.sag_card import SagCard
from aligner.window.build.sheet_card import SheetCard
from aligner.window.build.spring_card import SpringCard
from aligner.window.open_job import OpenJob

_GAP = {"left": marked("air gap of the left leg"), "right": marked("air gap of the right leg")}
_OIL = {"left": marked("oil of the left leg"), "right": marked("oil of the right leg")}


def connect_oil(door: OpenJob, oil: OilCard, fill: FillCard, blend: BlendCard) -> None:
    """Air gaps, what was poured in, and the blend."""
    oil.typed.connect(
        lambda side, found: door.draft(lambda job: with_leg_oil(job, side, gap=found))
    )
    oil.kept.connect(
        lambda side, found: door.edit(
            say(_GAP[side]), lambda job: with_leg_oil(job, side, gap=found)
        )
    )
    fill.volume_typed.connect(
        lambda side, found: door.draft(lambda job: with_leg_oil(job, side, volume=found))
    )
    fill.volume_kept.connect(
        lambda side, found: door.edit(
            say(_OIL[side]), lambda job: with_leg_oil(job, side, volume=found)
        )
    )
    fill.oil_typed.connect(lambda text: door.draft(lambda job: with_build(job, oil=text)))
    fill.oil_kept.connect(
        lambda text: door.edit(say("name of the oil"), lambda job: with_build(job, oil=text))
    )
    fill.gauge_chosen.connect(
        lambda name: door.edit(say("gauge"), lambda job: with_gap_gauge(job, name))
    )
    _connect_fields(door, blend, marked("blend of oils"), with_blend)


def connect_bearing(door: OpenJob, bearing: BearingCard, now: Callable[[], datetime]) -> None:
    """The head bearing's check and its later adjustments."""
    _connect_fields(door, bearing, marked("head bearing"), with_bearing)
    made, name = bearing.adjustments, marked("adjustment of the bearing")
    made.typed.connect(
        lambda place, field, text: door.draft(
            lambda job: with_adjustment(job, place, **{field: text})
        )
    )
    made.kept.connect(
        lambda place, field, text: door.edit(
            say(name), lambda job: with_adjustment(job, place, **{field: text})
        )
    )
    made.wanted.connect(
        lambda: door.edit(say(name), lambda job: with_another_adjustment(job, now().date()))
    )
    made.unwanted.connect(
        lambda place: door.edit(
            say("take out an adjustment"), lambda job: without_adjustment(job, place)
        )
    )


def connect_springs(door: OpenJob, spring: SpringCard, sag: SagCard) -> None:
    """Spring and spacer, and the sag's lengths."""
    _connect_fields(door, spring, marked("spring and spacer"), with_spring)
    sag.typed.connect(
        lambda which, found: door.draft(lambda job: with_sag_lengths(job, which, found))
    )
    sag.kept.connect(
        lambda which, found: door.edit(
            say("length for the sag"), lambda job: with_sag_lengths(job, which, found)
        )
    )
    sag.gauge_chosen.connect(
        lambda name: door.edit(say("gauge"), lambda job: with_sag_gauge(job, name))
    )
    sag.spacer_typed.connect(lambda found: door.draft(lambda job: with_sag_spacer(job, found)))
    sag.spacer_kept.connect(
        lambda found: door.edit(
            say("spacer while the sag was read"), lambda job: with_sag_spacer(job, found)
        )
    )


def connect_sheet(door: OpenJob, sheet: SheetCard) -> None:
    """What the manual says."""
    sheet.typed.connect(
        lambda path, value, source: door.draft(
            lambda job: with_legs_value(job, path, value, source)
        )
    )
    sheet.kept.connect(
        lambda path, value, source: door.edit(
            say("value of the sheet"), lambda job: with_legs_value(job, path, value, source)
        )
    )


def _connect_fields(door: OpenJob, card: Any, name: str, change: Callable[..., Job]) -> None:
    card.typed.connect(lambda fields: door.draft(lambda job: change(job, **fields)))
    card.kept.connect(lambda fields: door.edit(say(name), lambda job: change(job, **fields)))
