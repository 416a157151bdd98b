"""Every figure of the alignment is a real one by every method, and null only where it must be.

The figures are worked out here a second time, by the closed forms of the geometry written out
with the demo's dimensions (leg spacing 200 mm, bracket spacing 190 mm, 560 mm to the axle).
"""

import math

import pytest

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.geometry import Corner
from aligner.job import BarReadings, PlateReadings, SpreadReadings
from aligner.report.as_json import as_fields
from aligner.sheet.quantities import Angle, Length, SignedLength
from aligner.storage.document_file import load_job


def mm(*texts):
    return tuple(Length.typed(f"{text} mm") for text in texts)


def in_line_of(readings):
    job, _ = load_job(demo("fellside-true.job.json"))
    limits = job.sheet.in_line.with_changes(tolerance=Angle.typed("0.3 deg"))
    job = job.with_changes(
        sheet=job.sheet.with_changes(in_line=limits),
        align=job.align.with_changes(in_line=readings),
    )
    return as_fields(assess(job))["in_line"]


PLATE = PlateReadings(
    method="plate",
    gauge="caliper",
    gap=mm("1.2", "1.2", "1.2"),
    corner=Corner.LOWER_RIGHT,
    height=Length.typed("300 mm"),
)
BARS = BarReadings(
    method="bars",
    gauge="caliper",
    end_difference=tuple(SignedLength.typed(text) for text in ("-2 mm", "-2 mm")),
    half_length=Length.typed("250 mm"),
    height=Length.typed("160 mm"),
)
SPREAD = SpreadReadings(
    method="spread",
    gauge="caliper",
    upper=mm("238.0", "238.0"),
    lower=mm("239.5", "239.5"),
    height=Length.typed("150 mm"),
)


@pytest.mark.parametrize(
    ("readings", "tangent"),
    [
        pytest.param(PLATE, 1.2 / 300, id="plate"),
        pytest.param(BARS, -200 * (2 / 250) / 160, id="bars"),
    ],
)
def test_a_twist_is_told_with_all_that_follows(readings, tangent):
    found = in_line_of(readings)
    twist = math.asin(190 * tangent / 200)
    assert found["skew_deg"] == pytest.approx(math.degrees(math.atan(tangent)))
    assert found["twist_deg"] == pytest.approx(math.degrees(twist))
    assert found["top_bracket_rim_mm"] == pytest.approx(100 * twist)
    assert found["axle_turn_deg"] == pytest.approx(-math.degrees(math.atan(560 * tangent / 200)))
    assert found["convergence_deg"] is None
    assert found["verdict"] in ("within", "out", "unsettled")


def test_widths_tell_the_convergence_and_nothing_else():
    found = in_line_of(SPREAD)
    assert found.pop("convergence_deg") == pytest.approx(math.degrees(math.atan(1.5 / 150)))
    assert found.pop("verdict") == "out"
    assert set(found.values()) == {None}


def test_widths_that_are_alike_do_not_call_the_legs_true():
    found = in_line_of(SPREAD.with_changes(lower=SPREAD.upper))
    assert found["convergence_deg"] == 0.0
    assert found["verdict"] == "unsettled"


def test_on_the_demo_every_figure_of_heights_squareness_and_steering_is_a_number():
    job, _ = load_job(demo("fellside-left-leg-high.job.json"))
    fields = as_fields(assess(job))
    for section in ("protrusion", "steering"):
        for key, value in fields[section].items():
            assert isinstance(value, str if key == "verdict" else float), (section, key)
    squaring = fields["squaring"]
    assert squaring.pop("consistency_p") is None  # one pair has nothing to agree with
    assert [pair["name"] for pair in squaring.pop("pairs")] == ["frame lugs"]
    for key, value in squaring.items():
        assert isinstance(value, str if key == "verdict" else float), key


def test_nothing_read_gives_every_key_all_the_same():
    job, _ = load_job(demo("fellside-left-leg-high.job.json"))
    fields = as_fields(assess(job.with_changes(align=type(job.align)())))
    assert fields["protrusion"].pop("verdict") == "missing"
    assert set(fields["protrusion"].values()) == {None}
    assert fields["squaring"] == {
        "turn_deg": None,
        "turn_uncertainty_deg": None,
        "verdict": "missing",
        "left_change_mm": None,
        "right_change_mm": None,
        "target_mm": None,
        "pairs": [],
        "consistency_p": None,
    }
