"""What is missing is what the job asks for; a dimension left out is only not given."""

import pytest

from aligner.assessment import Stage, StageState, assess
from aligner.assessment.missing import (
    DIMENSIONS,
    missing_for,
    missing_on_sheet,
    missing_values,
    not_given,
    still_to_come,
)
from aligner.assessment.stages import missing_on_sheet as counted_by_the_stages
from aligner.data_files import demo
from aligner.fastening.joints import joint_kinds
from aligner.job import Align, Job
from aligner.job.edits_build import with_build, with_legs_value
from aligner.sheet import Fastener, Fork, Sheet, Steering
from aligner.sheet.legs import Legs
from aligner.sheet.patterns import composed
from aligner.sheet.quantities import Force, Length, Ratio, Volume
from aligner.storage.document_file import load_job
from tests.assessment.bench_jobs import BEGUN, ticked_as_far_as, true_job


def test_nothing_is_missing_on_a_complete_sheet():
    sheet = load_job(demo("fellside-true.job.json"))[0].sheet
    assert missing_values(sheet) == not_given(sheet) == ()


def test_a_pattern_lacks_each_torque_the_tolerance_and_how_the_bearing_is_set():
    sheet = composed({})
    paths = [value.path for value in missing_values(sheet)]
    assert paths[0] == "protrusion.tolerance"
    torques = [f"fasteners.{fastener.name}.torque" for fastener in sheet.fasteners]
    assert sorted(paths[1:]) == sorted(
        [*torques, "fasteners.stem nut.seating", "fasteners.stem nut.back_off"]
    )
    assert missing_on_sheet(Job(sheet=sheet)) == len(torques) + 3
    assert counted_by_the_stages is missing_on_sheet


def test_only_the_stem_nut_is_seated_and_backed_off():
    for kind in joint_kinds():
        paths = [
            value.path
            for value in missing_values(Sheet(fasteners=(Fastener(name="it", kind=kind),)))
        ]
        for part in ("seating", "back_off"):
            assert (f"fasteners.it.{part}" in paths) is (kind == "stem_nut")


def test_every_dimension_of_fork_and_steering_is_asked_for():
    asked = {path.partition(".")[2] for path in DIMENSIONS}
    assert asked == (set(Fork.model_fields) - {"kind", "handlebars"}) | set(Steering.model_fields)
    assert [value.path for value in not_given(Sheet())] == list(DIMENSIONS)


def on_the_bench() -> Job:
    """A job whose sheet is complete but for the legs, and that has begun to build them up."""
    return with_build(load_job(demo("fellside-true.job.json"))[0], oil="fork oil")


def legs_missing(job: Job) -> list[str]:
    return [value.path for value in missing_for(job) if value.path.startswith("legs.")]


def given(job: Job, **values) -> Job:
    for path, value in values.items():
        job = with_legs_value(job, path.replace("__", "."), value, "invented")
    return job


@pytest.mark.parametrize(
    ("values", "lacks"),
    [
        pytest.param({}, ["legs.oil.air_gap"], id="neither gap nor volume"),
        pytest.param(
            {"oil__air_gap": Length.typed("200 mm")}, ["legs.oil.air_gap_tolerance"], id="gap"
        ),
        pytest.param(
            {"oil__volume": Volume.typed("250 ml")}, ["legs.oil.volume_tolerance"], id="volume"
        ),
        pytest.param(
            {
                "oil__air_gap": Length.typed("200 mm"),
                "oil__air_gap_tolerance": Length.typed("2 mm"),
            },
            [],
            id="a gap is enough; no spring, sag or bore is asked for",
        ),
    ],
)
def test_of_the_oil_only_what_it_is_judged_by_is_asked_for(values, lacks):
    job = given(on_the_bench(), **values)
    assert legs_missing(job) == lacks
    line = next(each for each in assess(job).stages if each.stage is Stage.BIKE)
    wanted = (StageState.IN_HAND, "1 missing") if lacks else (StageState.DONE, "sheet complete")
    assert (line.state, line.line) == wanted


def test_a_sag_in_shares_asks_for_the_travel_and_a_pull_for_its_radius():
    oil = {
        "oil__air_gap": Length.typed("200 mm"),
        "oil__air_gap_tolerance": Length.typed("2 mm"),
    }
    job = given(on_the_bench(), **oil, sag__rider_low=Ratio.typed("25 %"))
    assert legs_missing(job) == ["legs.travel"]
    job = given(on_the_bench(), **oil, bearing__pull_high=Force.typed("16 N"))
    assert legs_missing(job) == ["legs.bearing.radius"]


def test_before_the_legs_are_built_up_their_oil_is_only_announced():
    sheet = load_job(demo("fellside-true.job.json"))[0].sheet
    job = Job(sheet=sheet.with_changes(legs=Legs()))
    assert missing_for(job) == ()
    assert [value.path for value in still_to_come(job)] == ["legs.oil.air_gap"]
    (line,) = [each for each in assess(job).stages if each.stage is Stage.BIKE]
    assert (line.state, line.line) == (StageState.DONE, "complete but for oil")


def test_a_job_that_leaves_the_legs_in_their_brackets_is_asked_for_no_oil():
    job = load_job(demo("fellside-true.job.json"))[0]
    assert job.sheet.legs == Legs()
    assert missing_for(job) == still_to_come(job) == ()


def test_the_oil_is_announced_until_the_legs_are_in_their_brackets():
    job = true_job().with_changes(align=Align(begun=BEGUN))
    first = assess(job).tightening.steps[0].step.key
    assert first != "act/legs_in"
    for reached, is_announced in ((first, True), ("act/legs_in", False)):
        found = still_to_come(ticked_as_far_as(job, reached))
        assert [value.path for value in found] == (["legs.oil.air_gap"] if is_announced else [])
    assert still_to_come(true_job()) == ()  # the heights are read: they stand in them
