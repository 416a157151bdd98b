"""Whatever a sheet and its readings say, what is built up is answered in words and never breaks."""

from typing import Any

from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from aligner.assessment import assess
from aligner.job import Job
from aligner.job.build import (
    Build,
    FallAway,
    HeadBearing,
    LegOil,
    OilBlend,
    SagLengths,
    SpringFitting,
)
from aligner.sheet import Fork, ForkKind, Sheet
from aligner.sheet.legs import (
    BearingDrag,
    Legs,
    OilSpecification,
    Pressure,
    SagBand,
    SpringSpecification,
)
from aligner.sheet.quantities import (
    Force,
    Length,
    Quantity,
    Ratio,
    Stiffness,
    Torque,
    Viscosity,
    Volume,
)
from aligner.units.preferred import Preferred
from aligner.window.build.results import (
    bearing_words,
    difference_words,
    force_words,
    leg_line,
    leg_words,
    sag_words,
    volume_words,
)
from aligner.window.build.spring_words import change_words, cut_words, preload_lines
from aligner.window.build.words import sentence_words
from tests.assessment.build_jobs import RULE

#: Nothing, hair's breadths, lengths of a fork, and slips of the keyboard.
NUMBERS = st.sampled_from(["0", "0.001", "0.5", "2", "10", "36", "40", "150", "221", "999"])


def quantity(kind: type[Quantity], unit: str) -> st.SearchStrategy[Any]:
    return NUMBERS.map(lambda number: kind.typed(f"{number} {unit}"))


LENGTH = quantity(Length, "mm")
MAYBE = st.none() | LENGTH
READINGS = st.lists(LENGTH, max_size=3).map(tuple)
VOLUME = st.none() | quantity(Volume, "ml")
FORCE = quantity(Force, "N")
TORQUE = st.none() | quantity(Torque, "N·m")
VISCOSITY = st.none() | quantity(Viscosity, "cSt")
RATE = st.none() | quantity(Stiffness, "N/mm")
SHARE = st.none() | LENGTH | quantity(Ratio, "%")

SHEETS = st.builds(
    Legs,
    bore=MAYBE,
    rod=MAYBE,
    sliding_tube=MAYBE,
    travel=MAYBE,
    oil=st.builds(
        OilSpecification,
        air_gap=MAYBE,
        air_gap_tolerance=MAYBE,
        volume=VOLUME,
        volume_tolerance=VOLUME,
        air_pressure=st.none() | quantity(Pressure, "kPa"),
    ),
    spring=st.builds(
        SpringSpecification,
        spacer=MAYBE,
        preload=MAYBE,
        rate=RATE,
        second_rate=RATE,
        rate_changes_at=MAYBE,
        displaced=VOLUME,
    ),
    sag=st.builds(SagBand, static_low=SHARE, static_high=SHARE, rider_low=SHARE, rider_high=SHARE),
    bearing=st.builds(
        BearingDrag,
        pull_low=st.none() | FORCE,
        pull_high=st.none() | FORCE,
        radius=MAYBE,
        torque_low=TORQUE,
        torque_high=TORQUE,
    ),
)
BUILDS = st.builds(
    Build,
    gauge=st.sampled_from([None, "steel rule", "a lost rule"]),
    left=st.builds(LegOil, gap=READINGS, volume=VOLUME),
    right=st.builds(LegOil, gap=READINGS, volume=VOLUME),
    blend=st.builds(OilBlend, first=VISCOSITY, second=VISCOSITY, wanted=VISCOSITY, amount=VOLUME),
    spring=st.builds(
        SpringFitting,
        free_length=MAYBE,
        room=MAYBE,
        washers=MAYBE,
        wanted_preload=MAYBE,
        old_spacer=MAYBE,
        solid_length=MAYBE,
        fitted_spacer=MAYBE,
    ),
    sag=st.builds(
        SagLengths,
        spacer=MAYBE,
        gauge=st.sampled_from([None, "steel rule"]),
        extended=READINGS,
        static_down=READINGS,
        static_up=READINGS,
        rider_down=READINGS,
        rider_up=READINGS,
    ),
    bearing=st.builds(
        HeadBearing,
        pull=st.lists(FORCE, max_size=3).map(tuple),
        radius=MAYBE,
        fall_away=st.none() | st.sampled_from(FallAway),
    ),
)


@settings(max_examples=150, deadline=None, suppress_health_check=[HealthCheck.too_slow])
@given(legs=SHEETS, build=BUILDS, tube=MAYBE, kind=st.sampled_from(ForkKind))
def test_anything_at_all_gets_a_sentence(
    legs: Legs, build: Build, tube: Length | None, kind: ForkKind
) -> None:
    sheet = Sheet(fork=Fork(tube_diameter=tube, kind=kind), legs=legs)
    assessment = assess(Job(sheet=sheet, build=build, gauges={"steel rule": RULE}))
    found, show = assessment.build, Preferred()
    headline, detail, _ = sentence_words(found, show)
    assert headline.endswith(".")
    assert "None" not in headline + detail
    assert "nan" not in f"{headline} {detail}".split()
    for side in ("left", "right"):
        leg_words(found.oil.leg(side), show)
        assert leg_line(side, found.oil.leg(side), show)
        volume_words(side, found.oil, show)
    assert difference_words(found.oil, show)
    assert force_words(found.force)
    assert bearing_words(found.bearing, show)
    assert sag_words("rider", found.sag.rider, show)
    said = [cut_words(found, show), *preload_lines(found.spring, show), change_words(found, show)]
    assert not [words for words in said if "None" in words or "nan" in words.split()]
    assert found.line
    assert all(notice.text for notice in assessment.notices)
    assert all(row.words for row in found.settings)
    if found.blend.blend is not None:
        assert 0 <= found.blend.blend.first_share <= 1
