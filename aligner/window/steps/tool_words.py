"""What the wrench for a step is set to, what it delivers, and what is wrong with it, in words."""

from __future__ import annotations

from aligner.assessment import StepStanding
from aligner.assessment.wrenches import ToolForStep
from aligner.job import Job
from aligner.language import marked, say
from aligner.units.preferred import Preferred


def setting_words(standing: StepStanding) -> str:
    """The setting on the wrench's own scale: "Set 22.5 lbf·ft"; "" where there is none."""
    tool = standing.tool
    if tool is None or not tool.can_be_set:
        return ""
    return say("Set {setting}", setting=tool.setting_text)


def tool_words(job: Job, standing: StepStanding) -> str:
    """The wrench and the adapter; or that none is at hand, and where to give one."""
    tool, step = standing.tool, standing.step
    if step.target_nm is None:
        return ""
    if not job.wrenches:
        return say("No wrench on the list: open Wrenches to have the setting worked out.")
    if tool is None or not tool.wrench:
        return say("No wrench at hand can do this.")
    if tool.adapter:
        text = (
            marked("on the {wrench} with the {adapter}")
            if tool.can_be_set
            else marked("The {wrench} with the {adapter} cannot be set to this.")
        )
        return say(text, wrench=tool.wrench, adapter=tool.adapter)
    if not tool.can_be_set:
        return say("The {wrench} cannot be set to this.", wrench=tool.wrench)
    return say("on the {wrench}", wrench=tool.wrench)


def delivered_words(standing: StepStanding, show: Preferred) -> str:
    """What that setting delivers, against what is specified."""
    tool, step = standing.tool, standing.step
    if tool is None or tool.delivered_low_nm is None or tool.delivered_high_nm is None:
        return ""
    span = show.show_torques(tool.delivered_low_nm, tool.delivered_high_nm)
    if step.low_nm is None or step.high_nm is None:
        return say("Delivers {span}; a part pass has no limits.", span=span)
    if step.low_nm == step.high_nm:
        return say("Delivers {span}; the manual gives one value and no tolerance.", span=span)
    limits = show.show_torques(step.low_nm, step.high_nm)
    if tool.is_inside:
        return say("Delivers {span}, inside {limits}.", span=span, limits=limits)
    return say("Delivers {span}, not inside {limits}.", span=span, limits=limits)


def problem_words(standing: StepStanding) -> str:
    """What is wrong with the choice of wrench, a line each."""
    tool: ToolForStep | None = standing.tool
    return "\n".join(tool.problems) if tool is not None else ""
