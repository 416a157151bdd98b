"""Which wrench a step is set on, and to what: against the adapter formula and a hand count."""

from __future__ import annotations

import math

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from aligner.assessment import assess
from aligner.assessment.wrenches import tools_of, wrench_of
from aligner.errors import AlignerError
from aligner.job import Adapter, Job, LogEntry, TorqueWrench
from aligner.job.edits_sheet import with_fastener
from aligner.job.edits_tighten import (
    with_adapter,
    with_wrench,
    with_wrench_choice,
    without_adapter,
    without_wrench,
)
from aligner.job.log import recheck_key
from aligner.sheet import Fastener, Side
from aligner.sheet.quantities import Angle, Length, Ratio, Torque
from tests.assessment.bench_jobs import BEGUN, fasteners, ticked, torque, true_job

#: NIST SP 811 (2008) appendix B.8, seen: 1 lbf·ft = 1.355 818 N·m.
LBF_FT_NM = 1.355818


def wrench(low: str, high: str, graduation: str, **more) -> TorqueWrench:
    return TorqueWrench(
        low=Torque.typed(low), high=Torque.typed(high), graduation=Torque.typed(graduation), **more
    )


SMALL = wrench("5 N·m", "25 N·m", "0.5 N·m", grip_length=Length.typed("240 mm"))
FEET = wrench("10 lbf·ft", "75 lbf·ft", "0.5 lbf·ft", grip_length=Length.typed("400 mm"))
LARGE = wrench("40 N·m", "200 N·m", "1 N·m")
HOOK = Adapter(effective_length=Length.typed("60 mm"))


def tool_of(job: Job, key: str):
    standings = {each.step.key: each for each in assess(job).tightening.steps}
    return standings[key].tool


HEAD = "stem_head_bolt/stem head bolt/pass 1"
LOWER = "lower_clamp/left lower clamp/pass {}"


def test_without_a_wrench_on_the_list_no_step_has_a_tool():
    steps = assess(true_job()).tightening.steps
    assert {each.tool for each in steps} == {None}


def test_the_setting_is_on_the_wrenchs_own_scale_rounded_to_its_marks():
    tool = tool_of(true_job(wrenches={"feet": FEET}), LOWER.format(2))
    assert tool.setting_text == "17.0 lbf·ft"  # 23 N·m is 16.96 lbf·ft
    assert tool.setting_nm == pytest.approx(17 * LBF_FT_NM, rel=1e-6)
    assert tool.delivered_low_nm == pytest.approx(17 * LBF_FT_NM / 1.04, rel=1e-6)
    assert tool.delivered_high_nm == pytest.approx(17 * LBF_FT_NM / 0.96, rel=1e-6)
    assert tool.is_inside is True
    assert tool.words == "feet"


def test_a_part_pass_is_set_to_its_share_on_the_wrench_of_the_full_pass():
    job = true_job(wrenches={"small": SMALL, "feet": FEET})
    half, full = tool_of(job, LOWER.format(1)), tool_of(job, LOWER.format(2))
    assert (half.wrench, half.setting_nm, half.is_inside) == (full.wrench, 11.5, None)


def test_a_part_pass_below_the_full_wrenchs_scale_goes_to_another_wrench():
    parts = (
        Fastener(
            name="left lower clamp",
            kind="lower_clamp",
            side=Side.LEFT,
            bolts=2,
            torque=torque("40 N·m"),
        ),
    )
    job = true_job(parts, wrenches={"small": SMALL, "large": LARGE})
    assert tool_of(job, LOWER.format(2)).wrench == "large"
    assert (tool_of(job, LOWER.format(1)).wrench, tool_of(job, LOWER.format(1)).setting_nm) == (
        "small",
        20.0,
    )


def test_a_part_pass_that_no_scale_reaches_is_a_note_and_not_a_fault():
    parts = (
        Fastener(
            name="left lower clamp",
            kind="lower_clamp",
            side=Side.LEFT,
            bolts=2,
            torque=torque("50 N·m"),
        ),
    )
    job = true_job(parts, wrenches={"large": LARGE})
    (notice,) = assess(job).tightening.notices
    assert notice.level.value == "note"
    assert "evenly by hand" in notice.text


def test_where_none_can_do_it_each_wrench_says_why():
    job = true_job(wrenches={"small": SMALL, "feet": FEET})
    parts = (Fastener(name="axle", kind="axle", torque=torque("150 N·m")),)
    job = job.with_changes(sheet=job.sheet.with_changes(fasteners=parts))
    tool = tool_of(job, "axle/axle/pass 1")
    assert (tool.wrench, tool.setting_nm, tool.can_be_set, tool.is_inside) == (
        "",
        None,
        False,
        None,
    )
    assert len(tool.problems) == 2
    assert any(problem.startswith("Small: a setting of 150.0 N·m") for problem in tool.problems)
    (notice,) = [n for n in assess(job).notices if n.where == "wrench_choices.axle"]
    assert notice.level.value == "attention"
    assert notice.text.startswith("No wrench on the list can do the axle.")


def test_a_step_that_is_done_asks_for_no_wrench():
    parts = (Fastener(name="axle", kind="axle", torque=torque("150 N·m")),)
    job = true_job(parts, wrenches={"small": SMALL})
    for number in (1, 2):
        job = ticked(job, assess(job).tightening.next_step, number)
    assert not [n for n in assess(job).notices if n.where.startswith("wrench")]


@example(nm=8.0, grip=169.0, length=169.0, angle=169.0)
@given(
    st.floats(8, 24),
    st.floats(150, 600),
    st.floats(10, 300),
    st.floats(0, 180),
)
def test_an_adapter_changes_the_setting_by_its_length_along_the_wrench(nm, grip, length, angle):
    """S = T L / (L + E cos a): US Navy and Army training manuals, seen; TM 9-254 for the angle."""
    adapter = Adapter(
        effective_length=Length(f"{length} mm", length), angle=Angle(f"{angle} deg", angle)
    )
    fine = wrench("1 N·m", "400 N·m", "0.001 N·m", grip_length=Length(f"{grip} mm", grip))
    job = Job(wrenches={"w": fine}, adapters={"a": adapter})
    job = job.with_changes(
        sheet=job.sheet.with_changes(fasteners=fasteners()),
        wrench_choices={"stem head bolt": {"adapter": "a"}},
    )
    tool = tools_of(job).for_torque("stem head bolt", nm, nm * 0.8, nm * 1.2)
    reach = length * math.cos(math.radians(angle))
    if grip + reach <= 0 or not 1 <= nm * grip / (grip + reach) <= 400:
        # Past its scale a wrench is set only to its end mark, and only where that will do.
        if tool.setting_nm is not None:
            assert tool.setting_nm in (1.0, 400.0)
            assert 0.8 * nm <= tool.setting_nm * (grip + reach) / grip <= 1.2 * nm
        return
    assert tool.setting_nm == pytest.approx(nm * grip / (grip + reach), abs=0.0006)
    assert (tool.grip_length_mm, tool.effective_length_mm, tool.angle_deg) == (grip, length, angle)


def test_a_concentric_socket_changes_nothing_and_the_sketch_says_so():
    job = true_job(wrenches={"small": SMALL})
    plain = tool_of(job, "stem_nut/stem nut/set")
    socket = HOOK.with_changes(concentric=True)
    job = with_adapter(job, None, "home-made socket", socket)
    job = with_wrench_choice(job, "stem nut", None, "home-made socket")
    found = tool_of(job, "stem_nut/stem nut/set")
    assert (found.setting_nm, found.is_concentric) == (plain.setting_nm, True)
    assert found.words == "small with home-made socket"


def test_a_chosen_wrench_is_kept_and_told_when_it_delivers_outside():
    job = with_wrench(
        true_job(wrenches={"small": SMALL}),
        None,
        "worn",
        wrench("5 N·m", "60 N·m", "1 N·m", permissible_deviation=Ratio.typed("15 %")),
    )
    assert tool_of(job, LOWER.format(2)).wrench == "small"
    job = with_wrench_choice(job, "left lower clamp", "worn")
    tool = tool_of(job, LOWER.format(2))
    assert (tool.wrench, tool.is_inside, tool.is_chosen) == ("worn", False, True)
    assert "where 20.7 to 25.3 N·m is specified" in tool.problems[0]
    (notice,) = [n for n in assess(job).notices if n.where == "wrench_choices.left lower clamp"]
    assert "outside what is specified" in notice.text


@pytest.mark.parametrize(
    "key", [HEAD, "lower_clamp/left lower clamp/pass 2"], ids=["above its scale", "below it"]
)
def test_a_chosen_wrench_that_does_not_reach_gives_no_mark_to_set(key):
    # The small one ends at 25 N·m and the bolt wants 90; the large one begins at 40 for 23 N·m.
    job = true_job(wrenches={"small": SMALL, "feet": FEET, "large": LARGE})
    name, joint = ("small", "stem head bolt") if key == HEAD else ("large", "left lower clamp")
    tool = tool_of(with_wrench_choice(job, joint, name), key)
    assert (tool.wrench, tool.is_chosen, tool.can_be_set) == (name, True, False)
    assert (tool.setting_nm, tool.setting_text) == (None, "")
    assert tool.problems
    assert all(text.endswith(".") and not text.endswith("..") for text in tool.problems)


def test_the_older_rule_of_twenty_per_cent_is_the_wrenchs_own_entry():
    old = SMALL.with_changes(low=Torque.typed("2 N·m"), lowest_share=Ratio.typed("20 %"))
    assert wrench_of("old", old).usable_low_nm == 5.0
    assert wrench_of("old", old.with_changes(lowest_share=None)).usable_low_nm == 2.0


@pytest.mark.parametrize(
    ("low", "high", "graduation", "more", "said"),
    [
        ("30 N·m", "20 N·m", "1 N·m", {}, "its scale runs from 30 N·m to 20 N·m"),
        ("0 N·m", "20 N·m", "1 N·m", {}, "its scale runs from 0 N·m"),
        ("5 N·m", "20 N·m", "0 N·m", {}, "graduation is not above zero"),
        ("5 N·m", "20 N·m", "1 N·m", {"grip_length": Length.typed("0 mm")}, "grip length"),
        ("5 N·m", "20 N·m", "1 N·m", {"permissible_deviation": Ratio.typed("100 %")}, "deviation"),
        ("5 N·m", "20 N·m", "1 N·m", {"lowest_share": Ratio.typed("120 %")}, "lowest share"),
    ],
    ids=["falling", "from nought", "no graduation", "no grip", "no certificate", "share"],
)
def test_a_scale_that_cannot_be_is_refused(low, high, graduation, more, said):
    with pytest.raises(ValueError, match=said):
        wrench(low, high, graduation, **more)


DOUBTFUL = {
    "exact": wrench("5 N·m", "60 N·m", "1 N·m", permissible_deviation=Ratio.typed("0 %")),
    "two units": wrench("10 lbf·ft", "80 N·m", "1 N·m"),
    "coarse": wrench("20 N·m", "30 N·m", "10.5 N·m"),
}


@pytest.mark.parametrize(
    ("name", "field", "said"),
    [
        ("exact", "permissible_deviation", "its deviation is 0 %; no wrench is exact"),
        ("two units", "high", "from 10 lbf·ft to 80 N·m, in two units"),
        ("coarse", "graduation", "its marks are 10.5 N·m apart, more than"),
    ],
)
def test_a_wrench_that_cannot_be_trusted_is_opened_with_its_job_and_not_chosen(name, field, said):
    doubtful = DOUBTFUL[name]
    assert doubtful.doubt[0] == field
    job = Job.model_validate(true_job(wrenches={name: doubtful, "small": SMALL}).model_dump())
    assert job.wrenches[name] == doubtful, "the document opens with it"
    assert tool_of(job, LOWER.format(2)).wrench == "small"
    (notice,) = [n for n in assess(job).notices if n.where == "wrenches"]
    assert f"“{name}” is not chosen" in notice.text
    assert said in notice.text

    chosen = with_wrench_choice(job, "left lower clamp", name)
    tool = tool_of(chosen, LOWER.format(2))
    assert (tool.wrench, tool.setting_text) == ("small", "23.0 N·m")
    assert said in tool.lost
    assert "choose again" in tool.lost

    alone = true_job(wrenches={name: doubtful})
    tool = tool_of(alone, LOWER.format(2))
    assert (tool.wrench, tool.can_be_set) == ("", False)
    assert said in tool.problems[0]


@pytest.mark.parametrize(
    "trusted",
    [
        wrench("25 N·m", "25 N·m", "1 N·m"),
        wrench("20 N·m", "30 N·m", "10 N·m"),
        wrench("10 lbf·ft", "80 lbf·ft", "70 lbf·ft"),
        wrench("10 lbf·ft", "80 lbf·ft", "0.5 N·m"),
        wrench("5 N·m", "60 N·m", "1 N·m", permissible_deviation=Ratio.typed("0.1 %")),
    ],
    ids=["one torque only", "two marks", "two marks in lbf·ft", "marks apart in N·m", "fine"],
)
def test_a_wrench_with_little_on_its_scale_is_trusted_all_the_same(trusted):
    assert trusted.doubt is None
    assert wrench_of("it", trusted).name == "it"


def test_a_wrench_keeps_its_place_and_its_choices_under_a_new_name():
    job = true_job(wrenches={"small": SMALL, "feet": FEET})
    job = with_wrench_choice(job, "stem head bolt", "small")
    job = with_wrench(job, "small", " click wrench ", SMALL)
    assert list(job.wrenches) == ["click wrench", "feet"]
    assert job.wrench_choices["stem head bolt"].wrench == "click wrench"
    with pytest.raises(AlignerError, match="another wrench has that name"):
        with_wrench(job, None, "feet", SMALL)
    with pytest.raises(AlignerError, match="no name"):
        with_wrench(job, None, " ", SMALL)
    job = without_wrench(job, "click wrench")
    assert (list(job.wrenches), job.wrench_choices) == (["feet"], {})


def test_an_adapter_keeps_its_place_and_its_choices_under_a_new_name():
    job = with_adapter(true_job(wrenches={"small": SMALL}), None, "hook", HOOK)
    job = with_wrench_choice(job, "stem nut", "small", "hook")
    job = with_adapter(job, "hook", "hook spanner", HOOK)
    assert job.wrench_choices["stem nut"].adapter == "hook spanner"
    job = without_adapter(job, "hook spanner")
    choice = job.wrench_choices["stem nut"]
    assert (choice.wrench, choice.adapter) == ("small", None)
    assert with_wrench_choice(job, "stem nut", None).wrench_choices == {}


@pytest.mark.parametrize(
    ("joint", "named", "adapter"),
    [("nothing", None, None), ("stem nut", "nothing", None), ("stem nut", None, "nothing")],
    ids=["fastener", "wrench", "adapter"],
)
def test_a_choice_of_what_is_on_no_list_is_refused(joint, named, adapter):
    job = true_job(wrenches={"small": SMALL})
    with pytest.raises(AlignerError, match="nothing: there is no such"):
        with_wrench_choice(job, joint, named, adapter)


def test_a_choice_that_has_lost_its_wrench_says_so_and_the_best_stands_in():
    job = true_job(wrenches={"small": SMALL})
    job = job.with_changes(wrench_choices={"left lower clamp": {"wrench": "lent out"}})
    tool = tool_of(job, LOWER.format(2))
    assert tool.wrench == "small"
    assert "“lent out” is not on the list any more" in tool.problems[0]


def test_a_choice_and_a_tick_of_the_road_follow_a_fasteners_new_name():
    job = with_wrench_choice(true_job(wrenches={"small": SMALL}), "stem nut", "small")
    entry = LogEntry(step=recheck_key("stem nut"), at=BEGUN)
    job = job.with_changes(prove=job.prove.with_changes(rechecks=(entry,)))
    job = with_fastener(job, 0, BEGUN, name="slotted nut")
    assert list(job.wrench_choices) == ["slotted nut"]
    assert job.prove.rechecks[0].step == recheck_key("slotted nut")
