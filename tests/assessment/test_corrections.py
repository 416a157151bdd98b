"""Which way to move what: every direction, and the other side for readings changed over.

Which way is right is reasoned from the metal, or read off the front end built of points in
`tests/rigid_model.py`; not one expectation comes from the program's own formulas.
"""

import pytest

from aligner.assessment import assess
from aligner.geometry import Corner, Face, Policy
from aligner.job import Job, PlateReadings, SpreadReadings
from aligner.sheet import Fork
from aligner.sheet.quantities import Angle, Length, SignedLength
from aligner.units.preferred import Preferred
from tests.assessment.bench_jobs import lengths, true_job
from tests.rigid_model import LEFT, RIGHT, RigidPair


def mm(value):
    return Length.typed(f"{value:.9f} mm")


def correction(job: Job):
    return assess(job).correction(Preferred())


def with_heights(left: str, right: str, policy: Policy, target: str = "") -> Job:
    job = true_job()
    heights = job.align.protrusion.with_changes(
        left=lengths(left, left), right=lengths(right, right), policy=policy
    )
    limits = job.sheet.protrusion.with_changes(
        target=SignedLength.typed(target) if target else None
    )
    return job.with_changes(
        align=job.align.with_changes(protrusion=heights),
        sheet=job.sheet.with_changes(protrusion=limits),
    )


LEFT_SLACK = "Slacken the left top clamp and the left lower clamp; leave the right leg clamped."
RIGHT_SLACK = "Slacken the right top clamp and the right lower clamp; leave the left leg clamped."
BY_TURNS = "One leg at a time"


@pytest.mark.parametrize(
    ("left", "right", "policy", "target", "sentence", "slack"),
    [
        # A tube that stands too high is let down; one that stands too low is pushed up.
        ("8 mm", "5 mm", Policy.LEFT_TO_RIGHT, "", "Let the left leg down 3.0 mm.", LEFT_SLACK),
        ("5 mm", "8 mm", Policy.LEFT_TO_RIGHT, "", "Push the left leg up 3.0 mm.", LEFT_SLACK),
        ("8 mm", "5 mm", Policy.RIGHT_TO_LEFT, "", "Push the right leg up 3.0 mm.", RIGHT_SLACK),
        ("5 mm", "8 mm", Policy.RIGHT_TO_LEFT, "", "Let the right leg down 3.0 mm.", RIGHT_SLACK),
        (
            "8 mm",
            "5 mm",
            Policy.SHARE,
            "",
            "Let the left leg down 1.5 mm and push the right leg up 1.5 mm.",
            BY_TURNS,
        ),
        (
            "5 mm",
            "8 mm",
            Policy.SHARE,
            "",
            "Push the left leg up 1.5 mm and let the right leg down 1.5 mm.",
            BY_TURNS,
        ),
        (
            "8 mm",
            "5 mm",
            Policy.TO_TARGET,
            "10 mm",
            "Push the left leg up 2.0 mm and push the right leg up 5.0 mm.",
            BY_TURNS,
        ),
        (
            "8 mm",
            "5 mm",
            Policy.TO_TARGET,
            "2 mm",
            "Let the left leg down 6.0 mm and let the right leg down 3.0 mm.",
            BY_TURNS,
        ),
    ],
)
def test_each_leg_is_moved_the_way_that_makes_them_equal(
    left, right, policy, target, sentence, slack
):
    found = correction(with_heights(left, right, policy, target))
    assert found.sentence == sentence
    assert found.detail.startswith(slack)
    assert "it drops" in found.caution


def with_distances(left: float, right: float, **points) -> Job:
    job = true_job()
    (pair,) = job.align.squaring
    pair = pair.with_changes(left=(mm(left),) * 2, right=(mm(right),) * 2, **points)
    tolerance = Angle.typed("0.1 deg") if points else Length.typed("0.5 mm")
    return job.with_changes(
        align=job.align.with_changes(squaring=(pair,)),
        sheet=job.sheet.with_changes(squaring=job.sheet.squaring.with_changes(tolerance=tolerance)),
    )


@pytest.mark.parametrize(
    ("left", "right", "longer"), [(182.0, 180.0, "right"), (180.0, 182.0, "left")]
)
def test_without_dimensions_the_shorter_side_grows_until_both_read_alike(left, right, longer):
    found = correction(with_distances(left, right))
    assert found.sentence.startswith(f"Turn the lower bracket until the {longer} side is 1.0")
    assert found.sentence.endswith("mm longer.")
    assert "reads 181.0" in found.detail
    assert "on both sides" in found.detail


@pytest.mark.parametrize(("turned", "back"), [(1.0, "right"), (-1.0, "left")])
def test_a_bracket_that_is_turned_is_turned_back_the_other_way(turned, back):
    points = RigidPair(40, 120, 150, 100, height=60, turn_deg=turned)
    job = with_distances(
        points.distance(LEFT),
        points.distance(RIGHT),
        bracket_reach=SignedLength.typed("40 mm"),
        bracket_half_width=mm(120),
        frame_setback=SignedLength.typed("150 mm"),
        frame_half_width=mm(100),
    )
    found = correction(job)
    assert found.sentence.startswith("Turn the lower bracket 1.0")
    assert found.sentence.endswith(f"° to the {back}.")


def with_legs_read_by(in_line, tolerance: str = "0.05 deg") -> Job:
    job = true_job()
    kind = Angle if "deg" in tolerance else Length
    sheet = job.sheet.with_changes(
        fork=Fork(leg_spacing=mm(200), bracket_spacing=mm(190)),
        in_line=job.sheet.in_line.with_changes(tolerance=kind.typed(tolerance)),
    )
    return job.with_changes(sheet=sheet, align=job.align.with_changes(in_line=in_line))


@pytest.mark.parametrize(
    ("corner", "face", "way", "forward"),
    [
        # On the front, a gap below left is a left tube that falls back going down: its top is
        # ahead, so the top bracket is turned to the right and goes back to the left.
        (Corner.LOWER_LEFT, Face.FRONT, "left", "right"),
        (Corner.LOWER_RIGHT, Face.FRONT, "right", "left"),
        (Corner.UPPER_LEFT, Face.FRONT, "right", "left"),
        (Corner.UPPER_RIGHT, Face.FRONT, "left", "right"),
        # On the rear a gap is a tube further ahead just there: all of it the other way round.
        (Corner.LOWER_LEFT, Face.REAR, "right", "left"),
        (Corner.LOWER_RIGHT, Face.REAR, "left", "right"),
        (Corner.UPPER_LEFT, Face.REAR, "left", "right"),
        (Corner.UPPER_RIGHT, Face.REAR, "right", "left"),
    ],
)
def test_the_top_bracket_is_turned_against_its_twist(corner, face, way, forward):
    plate = PlateReadings(
        method="plate", gauge="gauge", gap=(mm(3.0),) * 3, corner=corner, height=mm(150), face=face
    )
    found = correction(with_legs_read_by(plate))
    # 3 mm on 150 mm is 1 on 50; over 190 mm of bracket spacing the clamps stand 3.8 mm out
    # of line, 1.9 mm at each.
    assert found.sentence.startswith(
        f"Turn the top bracket to the {way}: its {forward} side 1.9 mm"
    )


@pytest.mark.parametrize(
    ("lower", "way"), [(241.0, "wider apart going down"), (235.0, "narrower apart going down")]
)
def test_legs_that_converge_are_not_turned(lower, way):
    spread = SpreadReadings(
        method="spread", gauge="gauge", upper=(mm(238),) * 3, lower=(mm(lower),) * 3,
        height=mm(300),
    )  # fmt: skip
    found = correction(with_legs_read_by(spread))
    assert found.sentence == "The legs are not parallel: no turning cures that."
    assert way in found.detail


def test_legs_of_which_the_readings_cannot_tell_yet_are_read_again_and_not_turned():
    plate = PlateReadings(
        method="plate",
        gauge="gauge",
        gap=(mm(0.5),),
        corner=Corner.LOWER_LEFT,
        height=mm(150),
    )
    found = correction(with_legs_read_by(plate, "0.5 mm"))
    assert found.sentence.startswith("Whether the legs are in line is not settled yet")
    spread = SpreadReadings(
        method="spread", gauge="gauge", upper=(mm(238),), lower=(mm(238.5),), height=mm(300)
    )
    found = correction(with_legs_read_by(spread, "0.5 mm"))
    assert found.sentence.startswith("Whether the legs are parallel is not settled yet")


@pytest.mark.parametrize("unlike", [0.1, -0.1])
def test_widths_held_to_a_length_are_judged_by_the_lower_less_the_upper(unlike):
    spread = SpreadReadings(
        method="spread", gauge="gauge", upper=(mm(238),) * 3, lower=(mm(238 + unlike),) * 3,
        height=mm(300),
    )  # fmt: skip
    found = assess(with_legs_read_by(spread, "0.5 mm"))
    assert found.in_line.judged is not None
    assert found.in_line.judged.value == pytest.approx(unlike)
    # Within: but widths cannot tell a twist, so a plate or bars are asked for as well.
    assert "The legs are parallel" in found.correction(Preferred()).sentence
