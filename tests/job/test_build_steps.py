"""The build list by kind of fork, its ticks with their times, and its table of steps."""

from datetime import UTC, datetime

import pytest

from aligner.errors import AlignerError
from aligner.job import Action, Job
from aligner.job.build_steps import BOTH, KINDS, PHASES, build_step_rows, build_steps
from aligner.job.edits_build import (
    with_adjustment,
    with_another_adjustment,
    with_build_tick,
    with_gap_gauge,
    with_gaps_to_read_again,
    with_leg_oil,
    without_adjustment,
)
from aligner.job.listed_gauges import gauge_choices
from aligner.sheet import Fork, ForkKind, Sheet
from aligner.sheet.legs import Legs, SpringSpecification, Way
from aligner.sheet.quantities import Length
from aligner.storage.document_file import load_job, save_job

GERMAN: dict[str, str] = {}
AT = datetime(2026, 5, 4, 9, 30, tzinfo=UTC)


def titles(kind: ForkKind, **spring: object) -> list[str]:
    sheet = Sheet(fork=Fork(kind=kind), legs=Legs(spring=SpringSpecification(**spring)))
    return [step.title for step in build_steps(Job(sheet=sheet))]


def test_every_row_has_its_reason_its_source_and_kinds_that_exist():
    rows = build_step_rows()
    assert len({row.key for row in rows}) == len(rows)
    assert all(row.reason and row.source for row in rows)
    assert all(set(row.kinds) <= KINDS for row in rows)
    order = [PHASES.index(row.phase) for row in rows]
    assert order == sorted(order)


def test_no_step_carries_a_value_of_its_own():
    digits = [row.title for row in build_step_rows() if any(c.isdigit() for c in row.title)]
    assert digits == []


@pytest.mark.usefixtures("german")
def test_a_length_of_the_sheet_has_the_decimal_sign_of_the_language():
    said = titles(ForkKind.DAMPER_ROD, spacer=Length("102.5 mm", 102.5))
    assert any("102,5 mm" in title for title in said)


@pytest.mark.parametrize(
    ("kind", "only_here"),
    [
        (ForkKind.AIR_ASSISTED, "Openings in the tube sealed"),
        (ForkKind.ANTI_DIVE, "Anti-dive unit tight, sealing rings new"),
        (ForkKind.CARTRIDGE, "Cartridge held and its bottom bolt tight"),
        (ForkKind.UPSIDE_DOWN, "Bush, oil seal, clip and dust seal home"),
    ],
    ids=["air assisted", "anti-dive", "cartridge", "upside down"],
)
def test_a_step_of_one_kind_of_fork_stands_on_no_other_list(kind, only_here):
    for each in ForkKind:
        assert (only_here in titles(each)) == (each is kind)


@pytest.mark.parametrize("kind", list(ForkKind), ids=[kind.value for kind in ForkKind])
def test_every_kind_is_pumped_or_bled_once_and_its_cap_turned_in_square(kind):
    found = titles(kind)
    assert sum("umped" in title or "bled" in title for title in found) == 1
    assert "Cap turned in slowly, square to its thread" in found
    assert "Left to settle, then fully compressed" in found


def test_what_the_sheet_says_of_the_spring_stands_in_the_steps():
    found = titles(
        ForkKind.DAMPER_ROD,
        closer_coils=Way.UP,
        order="spring, spacer",
        spacer=Length.typed("120 mm"),
        has_adjuster=True,
    )
    assert "Closer coils of the spring up" in found
    assert "In, from the bottom up: spring, spacer" in found
    assert "Spacer of 120 mm in, both alike" in found
    assert "Preload adjuster at its lowest" in found
    assert found.index("Preload adjuster at its lowest") < found.index(
        "Cap turned in slowly, square to its thread"
    )


def test_where_the_sheet_is_silent_no_way_up_and_no_spacer_is_made_up():
    found = titles(ForkKind.DAMPER_ROD)
    assert "Spring the manual's way up (not on the sheet)" in found
    assert not any("pacer" in title or "djuster" in title for title in found)


def test_a_tick_is_kept_with_its_time_and_an_untick_beside_it(tmp_path):
    job = with_build_tick(Job(), "left/filled", AT, is_done=True)
    assert with_build_tick(job, "left/filled", AT, is_done=True) == job
    path = tmp_path / "one.job.json"
    save_job(job, path)
    step = next(each for each in build_steps(load_job(path)[0]) if each.key == "filled")
    assert step.done["left"].at == AT
    assert step.open_sides == ("right",)
    job = with_build_tick(job, "left/filled", AT, is_done=False)
    assert [entry.action for entry in job.build.log] == [Action.TICKED, Action.UNTICKED]
    step = next(each for each in build_steps(job) if each.key == "filled")
    assert step.open_sides == BOTH


def test_a_step_without_a_name_is_refused():
    with pytest.raises(AlignerError, match="no name"):
        with_build_tick(Job(), "", AT, is_done=True)


def test_gaps_read_again_are_put_by_and_nothing_is_put_by_twice():
    job = with_leg_oil(Job(), "left", gap=(Length.typed("209 mm"),))
    again = with_gaps_to_read_again(job, AT)
    assert again.build.left.gap == ()
    assert again.build.earlier[0].left[0].text == "209 mm"
    assert with_gaps_to_read_again(again, AT) == again


def test_a_known_gauge_that_is_chosen_stands_on_the_jobs_list_with_its_source():
    job = with_gap_gauge(Job(), "steel rule")
    assert job.build.gauge == "steel rule"
    assert job.gauges["steel rule"].source
    names = [name for name, _ in gauge_choices(job, "a lost one")]
    assert names[:2] == [None, "steel rule"]
    assert "a lost one" in names


def test_adjustments_are_logged_with_day_what_and_why_and_can_be_taken_out():
    job = with_another_adjustment(Job(), AT.date())
    job = with_adjustment(job, 0, what="stem nut 1/16 turn tighter", why="knock on braking")
    made = job.build.bearing.adjustments[0]
    assert (made.on, made.what, made.why) == (
        AT.date(),
        "stem nut 1/16 turn tighter",
        "knock on braking",
    )
    assert without_adjustment(job, 0).build.bearing.adjustments == ()
