"""The list's steps folded into lines: one for a group that is done, one for a clamp's passes.

The trap: a fold must never hide the step in hand, a hold point, or which step Space would act
on. A line therefore always stands for one step by name, and a hold point always has its own.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby

from aligner.assessment import StepStanding, StepState
from aligner.fastening.joints import joint_kinds
from aligner.fastening.steps import Step
from aligner.language import begun, listed, say
from aligner.units.preferred import Preferred
from aligner.window.steps.step_words import beside_words, pass_name, spoken_words, state_words

Run = tuple[StepStanding, ...]


@dataclass(frozen=True)
class Line:
    """One line of the list.

    Attributes:
        steps: the steps it stands for, in their order.
        stands_for: the one that is chosen with it: the first not done, or else the first.
        title: what is done.
        beside: at its right: the torque, or the kind of step.
        state: done, next (one of its steps is in hand) or later.
        is_hold: whether it is a hold point.
        passes: where each pass stands, if the line is one clamp in several passes.
        spoken: all of it for a screen reader.
    """

    steps: Run
    stands_for: StepStanding
    title: str
    beside: str
    state: StepState
    is_hold: bool
    passes: tuple[StepState, ...]
    spoken: str

    @property
    def is_folded(self) -> bool:
        """Whether it stands for several steps that are all done."""
        return self.state is StepState.DONE and len(self.steps) > 1


def step_lines(
    steps: Sequence[StepStanding], chosen: str, opened: str, show: Preferred
) -> tuple[Line, ...]:
    """The lines of a list.

    Args:
        steps: the whole list.
        chosen: key of the step on the screen, which is never folded away.
        opened: key of a step whose line was opened; "" if none is.
        show: the units a person prefers.
    """
    found: list[Line] = []
    for _, group in groupby(_runs(steps), _fold):
        runs = list(group)
        together = tuple(each for run in runs for each in run)
        keys = [each.step.key for each in together]
        if opened in keys or (chosen in keys and chosen != _first_open(together).step.key):
            found += [_line((each,), show) for each in together]
        else:
            found.append(_line(together, show))
    return tuple(found)


def _runs(steps: Sequence[StepStanding]) -> list[Run]:
    """The passes of one joint together, every other step alone."""
    return [tuple(run) for _, run in groupby(steps, _pass_group)]


def _pass_group(standing: StepStanding) -> str:
    step = standing.step
    return f"{step.joint}/{step.kind}" if step.passes > 1 else step.key


def _fold(run: Run) -> str:
    """What folds together: done joints of one kind; nothing else with another."""
    step = run[0].step
    if step.joint is None or any(each.state is not StepState.DONE for each in run):
        return step.key
    return f"done {step.joint_kind}"


def _first_open(steps: Run) -> StepStanding:
    return next((each for each in steps if each.state is not StepState.DONE), steps[0])


def _line(steps: Run, show: Preferred) -> Line:
    stands_for = _first_open(steps)
    step = stands_for.step
    is_one_clamp = len({each.step.joint for each in steps}) == 1 and step.passes > 1
    states = tuple(each.state for each in steps)
    if all(state is StepState.DONE for state in states):
        state = StepState.DONE
    else:
        state = StepState.NEXT if StepState.NEXT in states else StepState.LATER
    folded = state is StepState.DONE and len(steps) > 1
    title = _folded_title(steps) if folded else step.title
    if len(steps) == 1 and step.passes > 1:
        title = f"{title}, {pass_name(step)}"
    aimed = step if state is StepState.NEXT else steps[-1].step  # to come: the full torque
    beside = say("{count} done", count=len(steps)) if folded else beside_words(aimed, show)
    return Line(
        steps=steps,
        stands_for=stands_for,
        title=title,
        beside=beside,
        state=state,
        is_hold=step.kind == "hold",
        passes=states if is_one_clamp and len(steps) > 1 and not folded else (),
        spoken=_spoken(steps, title, beside, state, show),
    )


def _folded_title(steps: Run) -> str:
    step = steps[0].step
    joints = list(dict.fromkeys(each.step.joint or "" for each in steps))
    without_sides = {re.sub(r"^(left|right) ", "", joint) for joint in joints}
    if len(joints) == 1:
        name = joints[0]
    elif len(without_sides) == 1:
        # Of two sides of one thing; only a name in English is taken apart like this.
        name = say("{name}s", meaning="more than one", name=without_sides.pop())
    else:
        name = _kind_title(step)
    title = begun(name)
    bolts = sorted({bolt for each in steps for bolt in each.step.bolts})
    if not bolts:
        return title
    if len(bolts) == 1:
        return say("{joint}, bolt {number}", joint=title, number=bolts[0])
    if bolts[-1] - bolts[0] == len(bolts) - 1 and len(bolts) > 2:
        return say("{joint}, bolts {first} to {last}", joint=title, first=bolts[0], last=bolts[-1])
    return say("{joint}, bolts {numbers}", joint=title, numbers=listed(map(str, bolts)))


def _kind_title(step: Step) -> str:
    kind = joint_kinds().get(step.joint_kind)
    return say(kind.title) if kind else step.joint_kind.replace("_", " ")


def _spoken(steps: Run, title: str, beside: str, state: StepState, show: Preferred) -> str:
    if state is StepState.DONE and len(steps) > 1:
        return say("{title}: all {count} steps done, folded", title=title, count=len(steps))
    if len(steps) == 1:
        return spoken_words(steps[0], show)
    done = sum(each.state is StepState.DONE for each in steps)
    ticked = say("{done} of {all} passes done", done=done, all=len(steps))
    return f"{title}, {beside}, {state_words(state)}, {ticked}"
