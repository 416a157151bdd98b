"""The air's force of both legs, held against the gas law solved as a differential equation."""

import math

import pytest
from scipy.integrate import solve_ivp

from aligner.assessment.build_force import assess_force
from aligner.assessment.build_oil import assess_oil
from aligner.job import Job
from aligner.sheet import ForkKind
from aligner.sheet.legs import Pressure
from aligner.sheet.quantities import Length, Volume
from tests.assessment.build_jobs import job_with_gaps, legs


def force_of(job: Job):
    return assess_force(job, assess_oil(job))


def force_by_integration(gap_mm, exponent, *, above_kpa=0.0, displaced_ml=0.0):
    """dp/ds = n p A / V(s): the gas law in its differential form, mm and kPa."""
    bore, tube = math.pi * 18**2, math.pi * 20**2
    v0 = bore * gap_mm + tube * 150 - displaced_ml * 1000
    solved = solve_ivp(
        lambda s, p: exponent * p * tube / (v0 - tube * s),
        (0, 150),
        [101.325 + above_kpa],
        rtol=1e-10,
        atol=1e-10,
    )
    return (solved.y[0][-1] - 101.325) * tube / 1000


@pytest.mark.parametrize(
    ("above_kpa", "displaced_ml"), [(0.0, 0.0), (70.0, 95.0)], ids=["plain", "air and spring"]
)
def test_the_forces_at_full_stroke_are_those_of_the_gas_law_integrated(above_kpa, displaced_ml):
    oil = legs().oil.with_changes(air_pressure=Pressure.typed(f"{above_kpa} kPa"))
    spring = legs().spring.with_changes(displaced=Volume.typed(f"{displaced_ml} ml"))
    found = force_of(job_with_gaps(("209",), ("221",), oil=oil, spring=spring))
    fast, slow = found.fast_at_full, found.slow_at_full
    for point, exponent in ((fast, 1.4), (slow, 1.0)):
        for force, gap in ((point.left_n, 209), (point.right_n, 221)):
            reference = force_by_integration(
                gap, exponent, above_kpa=above_kpa, displaced_ml=displaced_ml
            )
            assert force == pytest.approx(reference, rel=1e-7)
    assert fast.difference_n > slow.difference_n > 0


def test_equal_gaps_push_alike_at_every_stroke():
    found = force_of(job_with_gaps(("221",), ("221",)))
    assert max(abs(point.difference_n) for point in found.points) == 0.0


def test_what_is_missing_is_named():
    found = force_of(job_with_gaps(("221",), (), travel=None))
    assert found.missing == ("travel", "the right leg's air gap")
    assert found.is_on_sheet
    found = force_of(job_with_gaps(("221",), ()))
    assert (found.missing, found.is_on_sheet) == (("the right leg's air gap",), False)


def test_the_clamped_tube_of_an_upside_down_fork_is_not_taken_for_the_one_that_slides():
    made = job_with_gaps(("221",), ("221",))
    fork = made.sheet.fork.with_changes(kind=ForkKind.UPSIDE_DOWN)
    made = made.with_changes(sheet=made.sheet.with_changes(fork=fork))
    assert force_of(made).missing == ("outside of the sliding tube",)
    legs_of = made.sheet.legs.with_changes(sliding_tube=Length.typed("37 mm"))
    made = made.with_changes(sheet=made.sheet.with_changes(legs=legs_of))
    assert force_of(made).fast_at_full is not None


def test_a_leg_without_air_is_refused_in_words():
    spring = legs().spring.with_changes(displaced=Volume.typed("900 ml"))
    found = force_of(job_with_gaps(("10",), ("10",), spring=spring))
    assert "leaves no air" in found.refusal


def test_a_spring_whose_volume_is_not_known_is_said_to_be_left_out():
    assert force_of(job_with_gaps(("221",), ("221",))).leaves_out_spring
