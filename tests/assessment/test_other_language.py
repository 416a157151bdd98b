"""What was typed stands in a sentence with the decimal sign of the language spoken."""

import pytest

from aligner.assessment.as_found import as_found_rows
from aligner.assessment.in_line import assess_in_line
from aligner.assessment.protrusion import assess_protrusion
from aligner.geometry import Corner, Policy
from aligner.job import Align, Gauge, Job, PlateReadings, ProtrusionReadings
from aligner.job.edits_strip import with_as_found
from aligner.sheet.dimensions import Fork, ProtrusionLimits, TurnLimits
from aligner.sheet.quantities import Length, SignedLength, Volume
from aligner.sheet.sheet import Sheet
from aligner.units.preferred import Preferred

GERMAN = {}


def mm(text):
    return Length.typed(f"{text} mm", decimal=".")


def heights(*texts):
    return tuple(SignedLength.typed(f"{text} mm", decimal=".") for text in texts)


@pytest.fixture
def texts(german):
    """Of a job with a reading that stands off, a target not aimed for, and a small plate."""
    sheet = Sheet(
        fork=Fork(leg_spacing=mm("200"), bracket_spacing=mm("190.5")),
        protrusion=ProtrusionLimits(target=heights("3.5")[0], tolerance=mm("0.2")),
        in_line=TurnLimits(tolerance=mm("0.5")),
    )
    gauge = Gauge(resolution=mm("0.01"), limit_of_error=mm("0.01"), repeatability=mm("0.01"))
    left = heights("5.0", "5.01", "5.0", "5.01", "5.0", "8.25")
    align = Align(
        protrusion=ProtrusionReadings(
            gauge="fine", left=left, right=heights("5.0", "5.0"), policy=Policy.SHARE
        ),
        in_line=PlateReadings(
            method="plate",
            gauge="fine",
            gap=(mm("0.1"),) * 3,
            corner=Corner.LOWER_LEFT,
            height=mm("12.5"),
        ),
    )
    job = Job(sheet=sheet, gauges={"fine": gauge}, align=align)
    found = (*assess_protrusion(job).notices, *assess_in_line(job).notices)
    return [each.text for each in found]


@pytest.mark.parametrize(
    "begin",
    [
        "8,25 mm stands off from its fellows by",
        "The sheet gives 3,5 mm for each leg",
        "Read over a height of 12,5 mm only, against 190,5 mm between the brackets",
    ],
)
def test_a_quantity_in_a_sentence_has_the_decimal_sign_of_the_language(begin, texts):
    assert any(text.startswith(begin) for text in texts), texts


@pytest.mark.usefixtures("german")
def test_the_oil_as_found_has_the_decimal_sign_of_the_language():
    job = with_as_found(Job(), "left.oil", Volume.typed("262.5 ml", decimal="."))
    (row,) = as_found_rows(job, Preferred())
    assert row.words == "262,5 ml"
