"""The demo bikes' lists, read as a mechanic reads them: forwards and for taking apart.

Held against common practice, no source: lower clamps, caps, top clamps; the axle, the calipers,
the lever firm, the fork pumped with the brake held, and only then what pinches the axle.
"""

from __future__ import annotations

import json
from datetime import UTC, datetime

import pytest

from aligner.assessment import Assessment, StepState, assess
from aligner.assessment.ticks import with_loosened
from aligner.data_files import demo
from aligner.job import Job, ticked_steps
from aligner.job.edits_strip import without_loosened
from aligner.report.as_json import as_json
from aligner.storage.document_file import load_job

AT = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)

QUERNBECK = [
    "Left damper-rod bolt",
    "Right damper-rod bolt",
    "Stem nut: seat the bearing, then swing lock to lock",
    "Stem nut: back off by 180°",
    "Stem nut: set the bearing",
    "Top bracket on, its bolts in by hand, its clamps slack",
    "Legs in to their height, lower clamps nipped up",
    "Measure both heights: protrusion equal",
    "Measure both sides: lower bracket square to the frame",
    "Stem head nut",
    "Stem pinch",
    "Swing lock to lock: steering free, no play",
    "Left lower clamp, bolt 1",
    "Right lower clamp, bolt 2",
    "Preload adjusters, where fitted, at their lowest",
    "Left cap",
    "Right cap",
    "Left top clamp, bolts 5 and 6",
    "Right top clamp, bolts 7 and 8",
    "Left lower clamp, bolt 1, once more",
    "Right lower clamp, bolt 2, once more",
    "Measure both heights again",
    "Preload adjusters, where fitted, back to their setting, both alike",
    "Left handlebar clamp, bolts 9 and 10",
    "Right handlebar clamp, bolts 11 and 12",
    "Lamp bracket, bolts 13 and 14",
    "Mudguard, bolts 15 to 18",
    "Wheel in, axle hand-tight",
    "Axle",
    "Left brake caliper, bolts 20 and 21",
    "Right brake caliper, bolts 22 and 23",
    "Pump the brake lever until it is firm",
    "Pump the fork three times, wheel held by the brake",
    "Left axle clamp cap, nuts 24 and 25",
    "Right axle clamp cap, nuts 26 and 27",
    "Left hose guide, bolt 28",
    "Right hose guide, bolt 29",
    "Lock to lock: hoses and cables run free",
]
QUERNBECK_APART = [
    "Machine supported upright, its front wheel still on the ground",
    "Free left hose guide, bolt 28",
    "Free right hose guide, bolt 29",
    "Slacken left axle clamp cap, nuts 24 and 25",
    "Slacken right axle clamp cap, nuts 26 and 27",
    "Crack axle, wheel still on the ground",
    "Front wheel lifted clear of the ground",
    "Undo left brake caliper, bolts 20 and 21; hang it from a hook",
    "Undo right brake caliper, bolts 22 and 23; hang it from a hook",
    "A slip of wood between the pads of each hung caliper",
    "Undo axle",
    "Axle out, wheel out; spacers laid down in their order",
    "Undo mudguard, bolts 15 to 18",
    "Crack left damper-rod bolt, a quarter turn",
    "Crack right damper-rod bolt, a quarter turn",
    "Undo lamp bracket, bolts 13 and 14",
    "Slacken left handlebar clamp, bolts 9 and 10",
    "Slacken right handlebar clamp, bolts 11 and 12",
    "Handlebars aside, tied up level",
    "Measure and write down both heights as found",
    "Measure and write down both sides of the lower bracket as found",
    "Slacken stem pinch",
    "Crack stem head nut, a quarter turn",
    "Slacken left top clamp, bolts 5 and 6",
    "Slacken right top clamp, bolts 7 and 8",
    "Preload adjusters, where fitted, noted and wound to their lowest",
    "Crack left cap",
    "Crack right cap",
    "Slacken left lower clamp, bolt 1; draw its leg out",
    "Slacken right lower clamp, bolt 2; draw its leg out",
    "Legs stood upright, caps up, marked left and right",
    "Undo stem head nut",
    "Top bracket up and off the stem",
    "Undo stem nut",
    "Each leg on the bench: cap off, spring out, oil drained",
    "Undo left damper-rod bolt",
    "Undo right damper-rod bolt",
]


@pytest.fixture(scope="module")
def quernbeck() -> Assessment:
    return assess(load_job(demo("quernbeck-upside-down.job.json"))[0])


@pytest.fixture(scope="module")
def fellside() -> Assessment:
    return assess(load_job(demo("fellside-left-leg-high.job.json"))[0])


def without_ticks(name: str) -> Job:
    """A demo job of which nothing is loosened yet."""
    job = load_job(demo(f"{name}.job.json"))[0]
    return job.with_changes(strip=job.strip.with_changes(log=()))


def fresh(name: str) -> Assessment:
    return assess(without_ticks(name))


def titles(steps) -> list[str]:
    return list(dict.fromkeys(each.step.title for each in steps))


def test_the_second_bike_is_done_up_in_its_own_order(quernbeck):
    assert titles(quernbeck.tightening.steps) == QUERNBECK


def test_the_second_bike_is_taken_apart_in_its_own_order():
    assert titles(fresh("quernbeck-upside-down").strip.steps) == QUERNBECK_APART


def test_handlebars_between_the_brackets_are_tied_up_and_not_moved_aside(fellside):
    apart = titles(fellside.strip.steps)
    held = apart.index("Handlebars tied up level, so that the tubes can slide out of them")
    assert apart[held + 1].startswith("Slacken left lower clamp")
    assert "Handlebars aside, tied up level" not in apart


LINES = {
    "fellside-air-assist": (
        ["act/air_let_out", "act/air_line_parted", "act/legs_out"],
        ["act/legs_in", "act/air_line_joined", "act/air_in"],
    ),
    "fellside-anti-dive": (
        ["act/anti_dive_lines_parted", "act/legs_out"],
        ["act/legs_in", "act/anti_dive_lines_joined", "act/brake_bled", "act/lever_firm"],
    ),
}


@pytest.mark.parametrize("name", LINES)
def test_air_and_brake_fluid_are_let_out_first_and_come_back_where_they_belong(name):
    found = fresh(name)
    for steps, wanted in zip((found.strip.steps, found.tightening.steps), LINES[name], strict=True):
        assert [each.step.key for each in steps if each.step.key in wanted] == wanted


DEMOS = sorted(demo("quernbeck-upside-down.job.json").parent.rglob("*.job.json"))


@pytest.mark.parametrize("path", DEMOS, ids=lambda path: path.name.removesuffix(".job.json"))
def test_every_tick_of_a_saved_job_still_has_its_step(path):
    job = load_job(path)[0]
    found = assess(job)
    for steps, log in (
        (found.strip.steps, job.strip.log),
        (found.tightening.steps, job.log),
    ):
        done = {each.step.key for each in steps if each.state is StepState.DONE}
        assert done == set(ticked_steps(log))


@pytest.mark.parametrize(
    ("path", "count"),
    [pytest.param(path, 25, id=path.name[:4]) for path in DEMOS if path.name[:2] == "20"]
    + [pytest.param(demo("quernbeck-upside-down.job.json"), 31, id="quernbeck")],
)
def test_a_list_ticked_before_cracking_was_a_step_stays_whole(path, count):
    found = assess(load_job(path)[0]).strip
    assert found.is_finished
    assert (found.done_count, len(found.steps)) == (count, count)


def test_what_is_to_be_cracked_is_asked_for_until_it_is_off():
    job = without_ticks("quernbeck-upside-down")
    cracked, undone = "axle_in_clamp_caps/axle/cracked", "axle_in_clamp_caps/axle/loosen"
    assert cracked in {each.step.key for each in assess(job).strip.steps}
    job = with_loosened(job, undone, AT, "it was loose already")
    assert cracked not in {each.step.key for each in assess(job).strip.steps}
    job = without_loosened(job, undone, AT)
    assert cracked in {each.step.key for each in assess(job).strip.steps}


def test_the_kind_of_the_fork_lets_the_air_out_where_no_fitting_is_listed():
    job = without_ticks("fellside-air-assist")
    rest = tuple(one for one in job.sheet.fasteners if one.kind != "air_manifold_fitting")
    found = assess(job.with_changes(sheet=job.sheet.with_changes(fasteners=rest))).strip
    assert found.steps[1].step.key == "act/air_let_out"


def test_one_bolt_goes_in_one_pass_and_two_bolts_in_three(quernbeck, fellside):
    def passes(found: Assessment, joint: str) -> list[float]:
        return [each.step.fraction for each in found.tightening.steps if each.step.joint == joint]

    assert passes(quernbeck, "left lower clamp") == [1.0, 1.0]  # once, and once more
    assert passes(quernbeck, "left top clamp") == [0.5, 1.0, 1.0]
    assert passes(fellside, "left lower clamp") == [0.5, 1.0, 1.0]
    assert passes(fellside, "left top clamp") == [1.0]


def test_the_second_bike_stands_at_its_first_top_clamp_with_nothing_out_of_order(quernbeck):
    step = quernbeck.tightening.next_step
    assert (step.step.title, step.waits_for) == ("Left top clamp, bolts 5 and 6", "")
    done = [each for each in quernbeck.tightening.steps if each.state is StepState.DONE]
    assert len(done) == step.number - 1
    assert not any(each.entry.reason for each in done)
    times = [each.entry.at for each in done]
    assert times == sorted(times)


def test_the_reason_of_a_repeated_clamp_is_told_where_it_is_repeated_only(quernbeck):
    eased = "Closing the two bolts above eases the single bolt below, so it is gone over once more."
    told = [each.step.title for each in quernbeck.tightening.steps if each.step.reason == eased]
    assert told == ["Left lower clamp, bolt 1, once more", "Right lower clamp, bolt 2, once more"]


def test_the_hook_spanner_is_corrected_for_and_the_plain_socket_is_not(quernbeck):
    tools = {each.step.key: each.tool for each in quernbeck.tightening.steps}
    seated = tools["stem_nut/stem nut/seated"]
    # 40 N·m x 430 / (430 + 60) is 35.1 N·m, 25.9 lbf·ft: by hand.
    assert (seated.adapter, seated.setting_text) == ("hook spanner", "26 lbf·ft")
    assert tools["stem_pinch/stem pinch/pass 1"].setting_text == "22.0 N·m"


@pytest.mark.parametrize("name", ["quernbeck", "fellside"])
def test_every_key_of_a_step_stands_in_the_json(name, request):
    fields = json.loads(as_json(request.getfixturevalue(name)))
    keys = "step kind joint bolts pass fraction target_nm low_nm high_nm wrench setting_nm reason"
    for step in fields["tightening"]:
        assert set(step) == set(keys.split())
        assert step["reason"]
        has_torque = step["target_nm"] is not None
        assert (step["wrench"] is not None) == has_torque
        assert (step["setting_nm"] is not None) == has_torque


def test_the_notices_in_the_json_name_their_places(quernbeck):
    places = [notice["where"] for notice in json.loads(as_json(quernbeck))["notices"]]
    assert "sheet.fasteners.lamp bracket.torque" in places
    assert "sheet.fasteners.stem nut.seating.also_printed" in places
