"""What there is to do next while building up, in its order, and what is offered of it."""

from datetime import UTC, datetime

import pytest

from aligner.assessment import Level, Stage, StageState, assess
from aligner.assessment.build import BuildSubject, assess_build
from aligner.data_files import demo
from aligner.job import Job
from aligner.job.build import FallAway
from aligner.job.build_steps import build_steps, log_key
from aligner.job.edits_build import (
    with_bearing,
    with_blend,
    with_build,
    with_build_tick,
    with_leg_oil,
    with_legs_value,
)
from aligner.legs import blend_viscosity_cst
from aligner.sheet.legs import OilSpecification
from aligner.sheet.quantities import Force, Length, Viscosity, Volume
from aligner.storage.document_file import load_job
from tests.assessment.build_jobs import job, job_with_gaps, job_with_sag, lengths

AT = datetime(2026, 5, 4, 9, 30, tzinfo=UTC)
WANTED = ("221",) * 3


def with_ticks(made: Job, *phases: str) -> Job:
    for step in build_steps(made):
        if step.phase in phases:
            for side in step.sides:
                made = with_build_tick(made, log_key(step.key, side), AT, is_done=True)
    return made


def with_bearing_right(made: Job) -> Job:
    pull = (Force.typed("12 N"), Force.typed("13 N"))
    return with_bearing(made, pull=pull, fall_away=FallAway.FREE)


def subject(made: Job) -> BuildSubject:
    return assess_build(made).next.subject


def test_nothing_entered_is_not_begun_and_says_nothing():
    found = assess_build(job())
    assert not found.is_begun
    assert found.line == "not begun"
    assert found.notices == ()
    assert found.settings[0].name == "preload"


def test_the_work_is_walked_in_its_order():
    made = job()
    seen = [subject(made)]
    made = with_ticks(made, "leg", "oil")
    seen.append(subject(made))
    made = with_build(made, gauge="steel rule")
    made = with_leg_oil(made, "left", gap=lengths(*WANTED))
    assert assess_build(made).next.side == "right"
    made = with_leg_oil(made, "right", gap=lengths(*WANTED))
    seen.append(subject(made))
    made = with_ticks(made, "spring", "cap", "bearing")
    seen.append(subject(made))
    made = with_bearing_right(made)
    seen.append(subject(made))
    assert seen == [
        BuildSubject.STEP,
        BuildSubject.READ_GAP,
        BuildSubject.STEP,
        BuildSubject.BEARING_READ,
        BuildSubject.NOTHING,
    ]
    standing = next(each for each in assess(made).stages if each.stage is Stage.BUILD)
    assert standing.state is StageState.DONE


def test_a_leg_that_is_out_comes_before_steps_that_are_open():
    found = assess_build(job_with_gaps(("209",) * 3, WANTED))
    assert (found.next.subject, found.next.side) == (BuildSubject.SET_OIL, "left")
    assert found.line == "draw 12 ml off left"
    assert assess_build(job_with_gaps(WANTED, ("226",) * 3)).line == "add 5 ml to right"


def test_a_step_done_on_one_leg_is_asked_for_on_the_other():
    made = with_build_tick(job(), "left/leg_clean", AT, is_done=True)
    found = assess_build(made).next
    assert (found.step.key, found.side) == ("leg_clean", "right")


def test_a_sheet_without_oil_values_is_asked_for():
    made = with_ticks(job(oil=OilSpecification()), "leg", "oil")
    assert subject(made) is BuildSubject.SHEET


def test_a_sheet_without_an_air_gap_asks_to_pour_by_volume():
    oil = OilSpecification(volume=Volume.typed("260 ml"), volume_tolerance=Volume.typed("3 ml"))
    made = with_ticks(job(oil=oil), "leg", "oil")
    assert subject(made) is BuildSubject.POUR
    made = with_leg_oil(made, "left", volume=Volume.typed("280 ml"))
    assert (subject(made), assess_build(made).next.side) == (BuildSubject.SET_OIL, "left")


def test_a_bearing_that_catches_is_to_be_set_again_whatever_the_scale_says():
    made = with_ticks(job_with_gaps(WANTED, WANTED), "leg", "oil", "spring", "cap", "bearing")
    made = with_bearing(with_bearing_right(made), fall_away=FallAway.NOTCH)
    assert subject(made) is BuildSubject.BEARING_SET


def test_a_sag_that_is_out_is_the_last_thing_and_keeps_the_stage_in_hand():
    made = job_with_sag("200 mm", "135 mm", "145 mm", job_with_gaps(WANTED, WANTED))
    made = with_ticks(made, "leg", "oil", "spring", "cap", "bearing")
    assert subject(with_bearing_right(made)) is BuildSubject.SAG


def test_the_blends_millilitres_make_the_wanted_viscosity():
    made = with_blend(
        job(),
        first=Viscosity.typed("22 cSt"),
        second=Viscosity.typed("46 cSt"),
        wanted=Viscosity.typed("32 cSt"),
        amount=Volume.typed("520 ml"),
    )
    blend = assess_build(made).blend.blend
    assert blend.first_ml + blend.second_ml == pytest.approx(520)
    assert blend_viscosity_cst(22, 46, blend.first_ml / 520) == pytest.approx(32)


def test_a_blend_out_of_reach_says_so_and_one_half_entered_says_what_is_missing():
    made = with_blend(job(), first=Viscosity.typed("22 cSt"), wanted=Viscosity.typed("60 cSt"))
    assert assess_build(made).blend.missing == ("the second oil's viscosity", "the amount")
    made = with_blend(made, second=Viscosity.typed("46 cSt"), amount=Volume.typed("520 ml"))
    assert "60 cSt cannot be mixed" in assess_build(made).blend.refusal
    assert assess_build(job()).blend.missing == ()


def test_the_settings_are_rows_for_the_history():
    made = job_with_sag("200 mm", "150 mm", "160 mm", job_with_gaps(WANTED, ("220",) * 3))
    made = with_bearing_right(with_build(made, oil="an invented oil"))
    made = with_leg_oil(made, "left", volume=Volume.typed("260 ml"))
    rows = {row.name: (row.value, row.unit, row.words) for row in assess_build(made).settings}
    assert rows["oil"] == (None, "", "an invented oil")
    assert rows["left air gap"] == (221.0, "mm", "221.0 mm")
    assert rows["right air gap"] == (220.0, "mm", "220.0 mm")
    assert rows["left oil"] == (260.0, "ml", "260 ml")
    assert rows["rider sag, share of travel"] == (pytest.approx(30.0), "%", "30 %")
    assert rows["preload"] == (18.0, "mm", "18.0 mm")
    assert rows["head bearing drag"] == (pytest.approx(4.375), "N·m", "4.38 N·m")
    assert rows["head bearing"][2] == "falls freely to both sides"


def test_what_is_wrong_while_building_is_a_notice_of_the_whole_job():
    made = with_leg_oil(job(), "left", gap=lengths("221"))
    notices = assess(made).notices
    assert any(n.where == "build.gauge" and n.level is Level.ATTENTION for n in notices)


def test_a_value_typed_from_the_manual_keeps_its_source_and_taken_out_loses_it():
    bore = Length.typed("36 mm")
    made = with_legs_value(Job(), "bore", bore, " manual p. 13-4 ")
    assert made.sheet.legs.bore == bore
    assert made.sheet.sources == {"legs.bore": "manual p. 13-4"}
    made = with_legs_value(made, "oil.air_gap", Length.typed("221 mm"), "")
    assert "legs.oil.air_gap" not in made.sheet.sources
    assert with_legs_value(made, "bore", None, "x").sheet.sources == {}


@pytest.mark.parametrize(
    ("name", "kind", "subject_now"),
    [
        ("fellside-air-assist.job.json", "air_assisted", BuildSubject.SET_OIL),
        ("fellside-anti-dive.job.json", "anti_dive", BuildSubject.STEP),
    ],
    ids=["air assist", "anti-dive"],
)
def test_the_demo_jobs_are_partly_built_and_say_that_they_are_invented(name, kind, subject_now):
    made, _ = load_job(demo(name))
    assert made.sheet.fork.kind.value == kind
    assert subject(made) is subject_now
    assert set(made.sheet.sources.values()) == {"invented for the demo"}
    assert "nvented" in made.sheet.note
    assert not [n for n in assess(made).notices if n.level is Level.ATTENTION]
