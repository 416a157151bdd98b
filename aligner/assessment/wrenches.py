"""Which wrench a step is set on, and to what on its own scale.

The trap: a part pass has no range to be inside of, and a wrench changed between two passes of
one clamp is a setting that is forgotten. So a part pass is set on the wrench of the full one
wherever its scale goes down that far.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from functools import lru_cache

from aligner.errors import AlignerError
from aligner.fastening.torque import NEWTON_METRES_PER_UNIT
from aligner.fastening.wrench import Adapter, Wrench
from aligner.fastening.wrench_choice import NoWrench, WrenchFit, best_wrench, fit
from aligner.job import Adapter as DescribedAdapter
from aligner.job import Job, TorqueWrench, WrenchChoice
from aligner.language import begun, marked, say, spoken

_LOST_WRENCH = marked("The chosen wrench “{name}” is not on the list any more: choose again.")
_LOST_ADAPTER = marked("The chosen adapter “{name}” is not on the list any more: choose again.")
_REFUSED_WRENCH = marked(
    "The chosen wrench “{name}” cannot be trusted with a setting: {why}. Put it right, or choose "
    "again."
)


@dataclass(frozen=True)
class ToolForStep:
    """What one step is tightened with.

    Attributes:
        wrench: its name; "" where none on hand can do it.
        adapter: its name; "" for a plain socket.
        setting_nm: the mark to set, in N·m; `None` where it cannot be done with this wrench.
        setting_text: the same on the wrench's own scale ("17.5 lbf·ft"); "" likewise.
        delivered_low_nm: least torque at the fastener for that mark.
        delivered_high_nm: greatest torque at the fastener for that mark.
        is_inside: whether all that can be delivered lies within the specified range; `None`
            for a part pass and for a bare nominal, which have no range.
        problems: what is wrong or worth knowing, in sentences; where none on hand can do it,
            one for each wrench.
        grip_length_mm: L of the sketch, from the drive to the middle of the grip.
        effective_length_mm: E of the sketch, from the drive to the fastener; `None` without
            an adapter.
        angle_deg: of the sketch, between adapter and wrench.
        is_concentric: whether the adapter stands in line with the fastener and so changes
            nothing.
        is_chosen: whether a person chose the wrench or the adapter.
        lost: what was chosen and is not on the list any more, in sentences; "" if nothing is.
    """

    wrench: str
    adapter: str = ""
    setting_nm: float | None = None
    setting_text: str = ""
    delivered_low_nm: float | None = None
    delivered_high_nm: float | None = None
    is_inside: bool | None = None
    problems: tuple[str, ...] = ()
    grip_length_mm: float | None = None
    effective_length_mm: float | None = None
    angle_deg: float = 0.0
    is_concentric: bool = False
    is_chosen: bool = False
    lost: str = ""

    @property
    def words(self) -> str:
        """Wrench and adapter in words, as the log keeps them; "" where there is none."""
        if self.wrench and self.adapter:
            return say("{wrench} with {adapter}", wrench=self.wrench, adapter=self.adapter)
        return self.wrench

    @property
    def can_be_set(self) -> bool:
        """Whether there is a mark to set."""
        return self.setting_nm is not None


@dataclass(frozen=True)
class Tools:
    """The wrenches and adapters of a job, as the computations take them.

    Attributes:
        wrenches: those a setting can be trusted to.
        adapters: all of them.
        choices: what a person chose, by the joint's name.
        refused: why a wrench of the list is not among them, by its name.
    """

    wrenches: tuple[Wrench, ...]
    adapters: Mapping[str, Adapter]
    choices: Mapping[str, WrenchChoice]
    refused: Mapping[str, str] = field(default_factory=dict)

    def for_torque(
        self, joint: str, target_nm: float, low_nm: float, high_nm: float, share: float = 1.0
    ) -> ToolForStep | None:
        """What a joint is tightened with in one pass; `None` if the job lists no wrench.

        Args:
            joint: its name, for which a wrench may have been chosen.
            target_nm: the full torque aimed for; the same as the bounds for a bare nominal.
            low_nm: least that is right in the full pass.
            high_nm: greatest that is right in the full pass.
            share: of the torque in this pass.
        """
        choice = self.choices.get(joint)
        if not self.wrenches:
            problems = tuple(_sentence(f"{name}: {why}") for name, why in self.refused.items())
            return ToolForStep(wrench="", problems=problems) if problems else None
        adapter = self.adapters.get(choice.adapter) if choice and choice.adapter else None
        named = choice.wrench if choice else None
        named_one = next((each for each in self.wrenches if each.name == named), None)
        wrenches = (named_one,) if named_one else self.wrenches
        specified_nm = (target_nm, low_nm, high_nm)
        is_named = named_one is not None
        found = _found(wrenches, adapter, specified_nm, share, spoken(), is_named=is_named)
        if choice is None:
            return found
        why = self.refused.get(choice.wrench or "")
        lost = [say(_REFUSED_WRENCH, name=choice.wrench, why=why)] if why else []
        known_wrenches = [*(each.name for each in self.wrenches), *self.refused]
        lost += [
            say(text, name=name)
            for text, name, known in (
                (_LOST_WRENCH, choice.wrench, known_wrenches),
                (_LOST_ADAPTER, choice.adapter, self.adapters),
            )
            if name and name not in known
        ]
        problems = (*lost, *found.problems)
        return replace(found, is_chosen=True, problems=problems, lost=" ".join(lost))


def tools_of(job: Job) -> Tools:
    """The job's wrenches, adapters and choices."""
    refused = {name: why for name, each in job.wrenches.items() if (why := why_refused(each))}
    return Tools(
        tuple(wrench_of(name, each) for name, each in job.wrenches.items() if name not in refused),
        {name: adapter_of(name, each) for name, each in job.adapters.items()},
        job.wrench_choices,
        refused,
    )


def why_refused(described: TorqueWrench) -> str:
    """Why a wrench of the list is not chosen, in words; "" if it can be."""
    return str(described.doubt[1]) if described.doubt is not None else ""


def wrench_of(name: str, described: TorqueWrench) -> Wrench:
    """A wrench of the job's list as the computations take it."""
    share = described.lowest_share
    return Wrench(
        name=name,
        low_nm=described.low.value,
        high_nm=described.high.value,
        graduation_nm=described.graduation.value,
        scale_unit_nm=scale_unit_nm(described),
        permissible_deviation=described.permissible_deviation.value / 100,
        drive=described.drive.strip(),
        grip_length_mm=described.grip_length.value if described.grip_length else None,
        own_lower_bound_nm=described.high.value * share.value / 100 if share else None,
    )


def scale_unit_nm(described: TorqueWrench) -> float:
    """N·m in one unit of a wrench's own scale: the unit its lowest mark is typed in."""
    return NEWTON_METRES_PER_UNIT.get(described.low.unit, 1.0)


def adapter_of(name: str, described: DescribedAdapter) -> Adapter:
    """An adapter of the job's list as the computations take it."""
    return Adapter(
        name,
        described.effective_length.value,
        described.angle.value,
        described.concentric,
        described.drive.strip(),
    )


@lru_cache(maxsize=512)
def _found(
    wrenches: tuple[Wrench, ...],
    adapter: Adapter | None,
    specified_nm: tuple[float, float, float],
    share: float,
    _language: str,
    *,
    is_named: bool,
) -> ToolForStep:
    """The tool with its problems in the language spoken, which is what the language is for."""
    part_nm = (specified_nm[0] * share,) * 3
    try:
        full = _best(wrenches, adapter, specified_nm, is_named=is_named)
        if share == 1:
            return _tool(full, adapter)
        if isinstance(full, WrenchFit):
            same = fit(full.wrench, adapter, *part_nm)
            if same.is_in_range:
                return _tool(same, adapter)
        return _tool(_best(wrenches, adapter, part_nm, is_named=is_named), adapter)
    except AlignerError as error:
        return ToolForStep(wrench="", problems=(_sentence(str(error)),))


def _best(
    wrenches: tuple[Wrench, ...],
    adapter: Adapter | None,
    specified_nm: tuple[float, float, float],
    *,
    is_named: bool,
) -> WrenchFit | NoWrench:
    """The best of several; of one that a person named what it does, be it outside."""
    if is_named:
        only = fit(wrenches[0], adapter, *specified_nm)
        return only if only.is_in_range else NoWrench((only,))
    return best_wrench(wrenches, (adapter,), *specified_nm)


def _tool(found: WrenchFit | NoWrench, adapter: Adapter | None) -> ToolForStep:
    if isinstance(found, NoWrench):
        only = found.refused[0] if len(found.refused) == 1 else None
        sketched = ToolForStep(
            wrench=only.wrench.name if only else "",
            adapter=adapter.name if adapter else "",
            problems=tuple(_sentence(reason) for reason in found.reasons),
            grip_length_mm=only.wrench.grip_length_mm if only else None,
        )
    else:
        mark_nm = (found.setting_on_scale or 0.0) * found.wrench.scale_unit_nm
        sketched = ToolForStep(
            wrench=found.wrench.name,
            adapter=adapter.name if adapter else "",
            setting_nm=mark_nm,
            setting_text=found.setting_text,
            delivered_low_nm=found.delivered_low_nm,
            delivered_high_nm=found.delivered_high_nm,
            is_inside=found.is_inside_specification,
            problems=tuple(
                _sentence(f"{found.wrench.name}: {problem}") for problem in found.problems
            ),
            grip_length_mm=found.wrench.grip_length_mm,
        )
    if adapter is None:
        return sketched
    return replace(
        sketched,
        effective_length_mm=adapter.effective_length_mm,
        angle_deg=adapter.angle_deg,
        is_concentric=adapter.concentric,
    )


def _sentence(text: str) -> str:
    return begun(text) + ("" if text.endswith(".") else ".")
