"""Twist and convergence told apart, by every method and where two of them were used."""

import json
import math

import pytest

from aligner.assessment import assess
from aligner.assessment.in_line import assess_in_line
from aligner.gauging import Verdict
from aligner.geometry import Corner, Face
from aligner.job import (
    Align,
    BarReadings,
    Gauge,
    Job,
    PlateReadings,
    ProtrusionReadings,
    SpreadReadings,
)
from aligner.report.as_json import as_json
from aligner.sheet.dimensions import Fork, ProtrusionLimits, TurnLimits
from aligner.sheet.quantities import Angle, Length, SignedLength
from aligner.sheet.sheet import Sheet
from aligner.units.preferred import Preferred

SPACING, BRACKETS, DROP = 200.0, 190.0, 560.0


def mm(value):
    return Length.typed(f"{value:.9f} mm")


def job_with(in_line, *others, tolerance="0.3 deg", spacing=SPACING):
    fork = Fork(
        leg_spacing=mm(spacing), bracket_spacing=mm(BRACKETS), lower_bracket_to_axle=mm(DROP)
    )
    kind = Angle if "deg" in tolerance else Length
    sheet = Sheet(
        fork=fork,
        protrusion=ProtrusionLimits(tolerance=mm(0.5)),
        in_line=TurnLimits(tolerance=kind.typed(tolerance)),
    )
    gauge = Gauge(resolution=mm(0.01), limit_of_error=mm(0.01), repeatability=mm(0.01))
    equal = (SignedLength.typed("5.00 mm"),) * 3
    heights = ProtrusionReadings(gauge="fine", left=equal, right=equal)
    align = Align(protrusion=heights, in_line=in_line, in_line_others=tuple(others))
    return Job(sheet=sheet, gauges={"fine": gauge}, align=align)


def plate(gap, corner=Corner.LOWER_LEFT, **more):
    return PlateReadings(
        method="plate", gauge="fine", gap=(mm(gap),) * 3, corner=corner, height=mm(150), **more
    )


def bars(ends):
    read = (SignedLength.typed(f"{ends:.9f} mm"),) * 3
    return BarReadings(
        method="bars", gauge="fine", end_difference=read, half_length=mm(400), height=mm(150)
    )


def widths(upper, lower):
    return SpreadReadings(
        method="spread", gauge="fine", upper=(mm(upper),) * 3, lower=(mm(lower),) * 3,
        height=mm(300),
    )  # fmt: skip


def test_plate_and_bars_on_the_same_fork_tell_the_same_twist():
    # Two straight tubes W apart, the left one's slope in the side view t ahead of the right's:
    # a plate's fourth corner stands off L t, and a bar 2 s long laid across the tubes at the
    # lower height has turned by atan(L t / W) against the one above. Worked out here, not
    # taken from the program.
    slope = 0.004
    gap = 150 * slope
    ends = 400 * (150 * slope / SPACING)
    by_plate = assess_in_line(job_with(plate(gap, Corner.LOWER_RIGHT)))
    by_bars = assess_in_line(job_with(bars(ends)))

    assert by_plate.geometry.twist_deg == pytest.approx(by_bars.geometry.twist_deg, abs=1e-7)
    assert by_plate.geometry.twist_deg == pytest.approx(
        math.degrees(math.asin(BRACKETS * slope / SPACING)), abs=1e-7
    )


def test_the_face_of_the_plate_turns_the_sign():
    front = assess_in_line(job_with(plate(0.6)))
    rear = assess_in_line(job_with(plate(0.6, face=Face.REAR)))

    assert rear.geometry.twist_deg == -front.geometry.twist_deg


@pytest.mark.parametrize(
    ("in_line", "words", "detail"),
    [
        pytest.param(plate(3), "Turn the top bracket", "twist between the brackets", id="plate"),
        pytest.param(bars(9), "Turn the top bracket", "twist between the brackets", id="bars"),
        pytest.param(widths(238, 235), "no turning cures", "convergence and no twist", id="widths"),
    ],
)
def test_the_sentence_says_which_fault_it_is(in_line, words, detail):
    job = job_with(in_line)
    correction = assess(job).correction(Preferred())
    assert words in correction.sentence
    assert detail in correction.detail


def test_where_both_were_read_both_stand_in_the_figures_and_the_graver_speaks():
    job = job_with(plate(0.0), widths(238, 235))
    found = assess_in_line(job)

    assert found.verdict is Verdict.OUT
    assert found.is_convergence
    figures = json.loads(as_json(assess(job)))["in_line"]
    assert figures["twist_deg"] == 0
    assert figures["convergence_deg"] == pytest.approx(math.degrees(math.atan(-3 / 300)))
    assert figures["verdict"] == "out"


def test_a_twist_kept_beside_good_widths_still_counts():
    found = assess_in_line(job_with(widths(238, 238), plate(3)))

    assert found.verdict is Verdict.OUT
    assert not found.is_convergence
    assert found.tells_twist


def test_a_plate_kept_beside_bars_no_longer_counts():
    found = assess_in_line(job_with(bars(0), plate(3)))

    assert found.verdict is Verdict.WITHIN


def test_kept_widths_of_one_height_only_change_nothing():
    half = widths(238, 238).with_changes(lower=())
    alone, beside = job_with(plate(0.0)), job_with(plate(0.0), half)

    assert assess_in_line(beside) == assess_in_line(alone)


@pytest.mark.parametrize(("read", "absent"), [("upper", "lower"), ("lower", "upper")])
def test_one_width_alone_asks_for_the_other_and_for_its_gauge(read, absent):
    half = widths(238, 238).with_changes(gauge=None, **{absent: ()})
    told = assess_in_line(job_with(half)).notices
    assert f"align.in_line.{absent}" in [notice.where for notice in told]
    assert f"align.in_line.{read}" not in [notice.where for notice in told]
    assert any("gauge" in notice.text.lower() for notice in told)
    assert assess_in_line(job_with(half.with_changes(**{read: ()}))).notices == ()


@pytest.mark.parametrize(
    ("job", "where", "words"),
    [
        pytest.param(job_with(plate(150)), "align.in_line.gap", "not shorter than", id="gap"),
        pytest.param(
            job_with(bars(-400)), "align.in_line.end_difference", "half length", id="bars"
        ),
        pytest.param(
            job_with(widths(0, 238)), "align.in_line.upper", "upper width: 0 mm", id="no-width"
        ),
        pytest.param(
            job_with(widths(238, 600)), "align.in_line.lower", "between them", id="widths-too-far"
        ),
        pytest.param(
            job_with(plate(0.4), spacing=0), "sheet.fork.leg_spacing", "no length", id="spacing"
        ),
        pytest.param(
            job_with(plate(100), spacing=20), "align.in_line", "more than 90", id="twist-too-far"
        ),
    ],
)  # fmt: skip
def test_what_cannot_be_is_named_by_its_field_and_nothing_is_told(job, where, words):
    found = assess_in_line(job)

    assert found.geometry is None
    assert found.verdict is Verdict.MISSING
    assert found.notices[-1].where == where
    assert words in found.notices[-1].text


@pytest.mark.parametrize("method", [plate(0.4), bars(1), widths(238, 239)], ids=lambda m: m.method)
def test_a_tolerance_in_millimetres_is_held_against_what_was_read(method):
    found = assess_in_line(job_with(method, tolerance="0.2 mm"))

    assert found.is_held_to_length
    assert found.judged.tolerance == 0.2
    assert found.verdict is Verdict.OUT


@pytest.mark.parametrize(("height", "is_said"), [(1, True), (47, True), (48, False), (150, False)])
def test_a_length_read_over_a_small_height_asks_for_attention(height, is_said):
    # 190 mm between the brackets: a quarter is 47.5 mm.
    readings = plate(0.1).with_changes(height=mm(height))
    found = assess_in_line(job_with(readings, tolerance="0.5 mm"))
    assert found.verdict is Verdict.WITHIN
    assert is_said == any("Read over a greater height" in each.text for each in found.notices)
