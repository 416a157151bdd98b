"""What each card of the Align page sends through the one door for edits."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from aligner.job.edits_align import (
    with_another_pair,
    with_distances,
    with_in_line,
    with_in_line_method,
    with_policy,
    with_protrusion,
)
from aligner.language import marked, say
from aligner.window.align.height_card import HeightCard
from aligner.window.align.in_line_card import InLineCard
from aligner.window.align.square_card import SquareCard
from aligner.window.open_job import OpenJob

Clock = Callable[[], datetime]

_HEIGHTS = {
    "left": marked("height of the left leg"),
    "right": marked("height of the right leg"),
}
_DISTANCES = {
    "left": marked("distance on the left"),
    "right": marked("distance on the right"),
}


def connect_heights(card: HeightCard, open_job: OpenJob, now: Clock) -> None:
    """Send the heights and their policy."""
    card.typed.connect(
        lambda side, r: open_job.draft(lambda job: with_protrusion(job, side, r, now()))
    )
    card.kept.connect(
        lambda side, r: open_job.edit(
            say(_HEIGHTS[side]), lambda job: with_protrusion(job, side, r, now())
        )
    )
    card.policy_tried.connect(lambda policy: open_job.draft(lambda job: with_policy(job, policy)))
    card.policy_kept.connect(
        lambda policy: open_job.edit(
            say("which leg goes where"), lambda job: with_policy(job, policy)
        )
    )


def connect_square(card: SquareCard, open_job: OpenJob, now: Clock) -> None:
    """Send the distances to the frame."""
    card.typed.connect(
        lambda place, side, r: open_job.draft(
            lambda job: with_distances(job, place, side, r, now())
        )
    )
    card.kept.connect(
        lambda place, side, r: open_job.edit(
            say(_DISTANCES[side]), lambda job: with_distances(job, place, side, r, now())
        )
    )
    card.pair_wanted.connect(lambda: open_job.edit(say("pair of distances"), with_another_pair))


def connect_in_line(card: InLineCard, open_job: OpenJob, now: Clock) -> None:
    """Send what a plate, bars or widths read."""
    card.typed.connect(
        lambda method, changes: open_job.draft(
            lambda job: with_in_line(job, method, now(), **changes)
        )
    )
    card.kept.connect(
        lambda name, method, changes: open_job.edit(
            name, lambda job: with_in_line(job, method, now(), **changes)
        )
    )
    card.method_tried.connect(
        lambda method: open_job.draft(lambda job: with_in_line_method(job, method))
    )
    card.method_kept.connect(
        lambda method: open_job.edit(
            say("how the legs' plane is read"), lambda job: with_in_line_method(job, method)
        )
    )
