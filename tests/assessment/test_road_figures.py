"""The road figures: each state against a bike settled on both tyres by a numerical solver.

The second way: the front axle is carried up the steering axis in coordinates and the pitch at
which both tyres touch is found with scipy; nothing of the closed form is used.
"""

import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import brentq

from aligner.assessment import assess
from aligner.assessment.road_figures import (
    MOST_RISE_MM,
    RoadState,
    RoadSubject,
    road_table,
    what_if,
)
from aligner.assessment.steering import lean_words, missing_for_steering
from aligner.data_files import demo
from aligner.job import Job
from aligner.sheet.quantities import SignedLength
from aligner.storage.document_file import load_job

RAKE, OFFSET, FRONT, REAR, WHEELBASE, SPACING = 27.0, 40.0, 320.0, 310.0, 1450.0, 200.0


def load(name):
    return load_job(demo(f"fellside-{name}.job.json"))[0]


def settled(rise_mm):
    """Rake, trail and wheelbase with the axle carried up the axis, by coordinates."""
    e = math.radians(RAKE)
    axle = (WHEELBASE - rise_mm * math.sin(e), FRONT + rise_mm * math.cos(e))
    rear = (0.0, REAR)

    def gap(pitch):
        c, s = math.cos(pitch), math.sin(pitch)
        heights = [s * x + c * y for x, y in (axle, rear)]
        return (heights[0] - FRONT) - (heights[1] - REAR)

    pitch = brentq(gap, -0.2, 0.2, xtol=1e-15)
    rake = e + pitch
    wheelbase = (axle[0] - rear[0]) * math.cos(pitch) - (axle[1] - rear[1]) * math.sin(pitch)
    # The axis through the axle's foot, met with the ground.
    foot = (-OFFSET * math.cos(rake), FRONT - OFFSET * math.sin(rake))
    return math.degrees(rake), foot[0] + foot[1] * math.tan(rake), wheelbase


@settings(max_examples=40)
@given(st.floats(-MOST_RISE_MM, MOST_RISE_MM))
def test_raised_in_thought_it_settles_where_the_solver_finds_it(rise):
    found = what_if(load("true"), rise)
    rake, trail, wheelbase = settled(rise)
    assert found.refusal == ""
    assert found.handling.rake_deg == pytest.approx(rake, abs=1e-9)
    assert found.handling.trail_mm == pytest.approx(trail, abs=1e-6)
    assert found.handling.wheelbase_mm == pytest.approx(wheelbase, abs=1e-6)


def table(job, rise=0.0):
    return road_table(job, assess(job).steering, what_if(job, rise))


def test_every_state_is_told_from_the_height_as_found():
    """As found 5.05 and 5.0; now 6.6333 and 5.0333; after the correction both at 5.0333."""
    found = table(load("left-leg-high"), 4.0)
    standard = 5.025
    for state, rise in (
        (RoadState.SHEET, 0.0),
        (RoadState.AS_FOUND, 0.0),
        (RoadState.NOW, (6.6 * 2 + 6.7 + 5.0 * 2 + 5.1) / 6 - standard),
        (RoadState.CORRECTED, (5.0 * 2 + 5.1) / 3 - standard),
        (RoadState.WHAT_IF, 4.0),
    ):
        rake, trail, wheelbase = settled(rise)
        figures = {s: found.figures[s, state] for s in RoadSubject}
        assert figures[RoadSubject.RAKE].value == pytest.approx(rake, abs=1e-9), state
        assert figures[RoadSubject.TRAIL].value == pytest.approx(trail, abs=1e-6)
        normal = trail * math.cos(math.radians(rake))
        assert figures[RoadSubject.NORMAL_TRAIL].value == pytest.approx(normal, abs=1e-6)
        assert figures[RoadSubject.WHEELBASE].value == pytest.approx(wheelbase, abs=1e-6)
        if state is not RoadState.SHEET:
            change = figures[RoadSubject.RAKE].change
            assert change == pytest.approx(rake - RAKE, abs=1e-9)
    assert (found.reference, found.reference_mm) == ("the height as found", pytest.approx(standard))


def test_the_axle_leans_as_found_and_now_and_no_more_after_the_correction():
    found = table(load("left-leg-high"))
    lean = {state: found.figures[RoadSubject.AXLE_LEAN, state].value for state in RoadState}
    now = (6.6 * 2 + 6.7) / 3 - (5.0 * 2 + 5.1) / 3
    assert lean[RoadState.NOW] == pytest.approx(math.degrees(math.atan(now / SPACING)))
    assert lean[RoadState.AS_FOUND] == pytest.approx(math.degrees(math.atan(0.05 / SPACING)))
    assert lean[RoadState.CORRECTED] == pytest.approx(0.0, abs=1e-12)
    assert lean[RoadState.SHEET] is None
    shift = found.figures[RoadSubject.PATCH_SHIFT, RoadState.NOW].value
    assert shift == pytest.approx(FRONT * math.sin(math.atan(now / SPACING)))


def test_without_readings_nothing_is_said_to_stand_anywhere():
    job = load("true")
    found = table(job.with_changes(align=type(job.align)()))
    for subject in RoadSubject:
        assert found.figures[subject, RoadState.NOW].value is None
        assert found.figures[subject, RoadState.CORRECTED].value is None
    assert found.figures[RoadSubject.RAKE, RoadState.SHEET].value == pytest.approx(RAKE)


def test_a_target_on_the_sheet_is_where_its_figures_hold():
    job = load("true")
    limits = job.sheet.protrusion.with_changes(target=SignedLength.typed("3 mm"))
    job = job.with_changes(sheet=job.sheet.with_changes(protrusion=limits))
    found = table(job)
    assert (found.reference, found.reference_mm) == ("the sheet's target", 3.0)
    rake = found.figures[RoadSubject.RAKE, RoadState.NOW].value
    assert rake == pytest.approx(settled(5.0333333333 - 3.0)[0], abs=1e-6)


def test_with_no_height_to_go_by_the_corrections_change_still_shows():
    job = load("left-leg-high")
    job = job.with_changes(as_found=type(job.as_found)())
    found = table(job)
    assert found.reference == "the heights as they stand"
    assert found.figures[RoadSubject.RAKE, RoadState.NOW].change == pytest.approx(0.0)
    move = -(6.6 * 2 + 6.7 - 5.0 * 2 - 5.1) / 3 / 2
    corrected = found.figures[RoadSubject.RAKE, RoadState.CORRECTED].value
    assert corrected == pytest.approx(settled(move)[0], abs=1e-9)


@pytest.mark.parametrize("rise", [20.5, -21.0, float("nan"), float("inf"), 1e9])
def test_a_raise_that_cannot_be_is_refused_in_words(rise):
    found = what_if(load("true"), rise)
    assert found.handling is None
    assert "between" in found.refusal


def test_what_the_sheet_lacks_is_named_and_no_figure_is_guessed():
    job = load("true")
    steering = job.sheet.steering.with_changes(rake=None, rear_radius=None)
    job = job.with_changes(sheet=job.sheet.with_changes(steering=steering))
    assert missing_for_steering(job) == ("rake", "rear wheel radius")
    found = table(job)
    assert found.figures[RoadSubject.TRAIL, RoadState.SHEET].value is None
    assert found.figures[RoadSubject.WHEELBASE, RoadState.SHEET].value == WHEELBASE
    assert found.figures[RoadSubject.AXLE_LEAN, RoadState.NOW].value is not None


def test_an_empty_job_has_a_table_of_nothing():
    found = table(Job())
    assert {figure.value for figure in found.figures.values()} == {None}


def test_nothing_is_edited_by_supposing():
    job = load("true")
    before = job.model_dump_json()
    table(job, 12.0)
    assert job.model_dump_json() == before


@pytest.mark.parametrize(
    ("lean", "words"),
    [
        (0.46, "axle leans 0.46°, left end high"),
        (-0.46, "axle leans 0.46°, right end high"),
        (0.004, "axle level"),
    ],
)
def test_the_lean_says_which_end_is_high(lean, words):
    assert lean_words(lean) == words
