"""What the wrench for a step is set to, what it delivers, and what is wrong with it, in words."""

from __future__ import annotations

from aligner.assessment import StepStanding
from aligner.assessment.wrenches import ToolForStep
from aligner.job import Job
from aligner.units.preferred import Preferred


def setting_words(standing: StepStanding) -> str:
    """The setting on the wrench's own scale: "Set 22.5 lbf·ft"; "" where there is none."""
    tool = standing.tool
    return f"Set {tool.setting_text}" if tool is not None and tool.can_be_set else ""


def tool_words(job: Job, standing: StepStanding) -> str:
    """The wrench and the adapter; or that none is at hand, and where to give one."""
    tool, step = standing.tool, standing.step
    if step.target_nm is None:
        return ""
    if not job.wrenches:
        return "No wrench on the list: open Wrenches to have the setting worked out."
    if tool is None or not tool.wrench:
        return "No wrench at hand can do this."
    fitted = f" with the {tool.adapter}" if tool.adapter else ""
    if not tool.can_be_set:
        return f"The {tool.wrench}{fitted} cannot be set to this."
    return f"on the {tool.wrench}{fitted}"


def delivered_words(standing: StepStanding, show: Preferred) -> str:
    """What that setting delivers, against what is specified."""
    tool, step = standing.tool, standing.step
    if tool is None or tool.delivered_low_nm is None or tool.delivered_high_nm is None:
        return ""
    said = f"Delivers {span_words(tool.delivered_low_nm, tool.delivered_high_nm, show)}"
    if step.low_nm is None or step.high_nm is None:
        return f"{said}; a part pass has no limits."
    if step.low_nm == step.high_nm:
        return f"{said}; the manual gives one value and no tolerance."
    inside = "inside" if tool.is_inside else "not inside"
    return f"{said}, {inside} {span_words(step.low_nm, step.high_nm, show)}."


def span_words(low_nm: float, high_nm: float, show: Preferred) -> str:
    """From where to where, the unit once: "20.7 to 25.3 N·m"."""
    return f"{show.show_torque(low_nm).split(' ', 1)[0]} to {show.show_torque(high_nm)}"


def problem_words(standing: StepStanding) -> str:
    """What is wrong with the choice of wrench, a line each."""
    tool: ToolForStep | None = standing.tool
    return "\n".join(tool.problems) if tool is not None else ""
