"""The points to look at: each says why and how, and each fork kind asks for its own."""

import re

import pytest

from aligner.job import Job
from aligner.job.edits_inspect import with_note
from aligner.job.inspection_points import (
    inspection_points,
    places_of,
    places_of_kind,
    point_of,
)
from aligner.job.known_gauges import known_gauges
from aligner.sheet import Fork, ForkKind, Sheet, Side

_KEYS = [point.key for point in inspection_points()]


def _job(kind):
    return Job(sheet=Sheet(fork=Fork(kind=kind)))


def test_every_key_and_every_name_stands_there_once():
    names = [point.name for point in inspection_points()]
    assert len(set(_KEYS)) == len(_KEYS)
    assert len(set(names)) == len(names)


@pytest.mark.parametrize("key", _KEYS)
def test_every_point_says_why_in_one_sentence_how_in_two_and_where_it_is_from(key):
    point = point_of(key)
    assert len(re.findall(r"[.](?:\s|$)", point.why)) == 1
    assert len(re.findall(r"[.](?:\s|$)", point.how)) == 2
    assert "common practice, no source" in point.source


@pytest.mark.parametrize(
    "key", [point.key for point in inspection_points() if point.measure is not None]
)
def test_a_measured_point_names_a_gauge_that_is_on_the_list(key):
    assert point_of(key).measure.gauge in known_gauges()


@pytest.mark.parametrize("key", ["tube_runout", "axle_runout"])
def test_a_bend_is_half_of_what_is_indicated_and_no_other_number_is_halved(key):
    assert point_of(key).measure.is_halved
    assert "half of what is indicated" in point_of(key).how
    others = [point.measure for point in inspection_points() if not point.key.endswith("runout")]
    assert not any(measure.is_halved for measure in others if measure)


def test_bush_play_is_rocked_at_several_heights_and_the_greatest_counts():
    assert "three heights" in point_of("bush_play").how
    assert point_of("bush_play").measure.takes == "greatest"


def test_marks_on_a_race_are_not_dents():
    for key in ("upper_races", "lower_races"):
        assert "not dents" in point_of(key).how
        assert "felt as a notch" in point_of(key).how


def test_air_fitting_o_rings_are_checked_even_where_no_pressure_is_used():
    assert "even where no pressure is used" in point_of("air_o_rings").why


@pytest.mark.parametrize(
    ("key", "kinds"),
    [
        pytest.param("air_o_rings", {ForkKind.AIR_ASSISTED}, id="air"),
        pytest.param("anti_dive", {ForkKind.ANTI_DIVE}, id="anti-dive"),
        pytest.param("cartridge", {ForkKind.CARTRIDGE, ForkKind.UPSIDE_DOWN}, id="cartridge"),
        pytest.param("oil_seal", set(ForkKind), id="every fork"),
    ],
)
def test_a_point_is_asked_for_where_the_fork_has_it(key, kinds):
    asking = {kind for kind in ForkKind if (key, Side.LEFT) in places_of_kind(kind)}
    assert asking == kinds


@pytest.mark.parametrize("kind", ForkKind)
def test_one_leg_is_finished_before_the_other_and_the_middle_comes_last(kind):
    sides = [side for _, side in places_of_kind(kind)]
    legs = sides.count(Side.LEFT)
    assert sides[:legs] == [Side.LEFT] * legs
    assert sides[legs : 2 * legs] == [Side.RIGHT] * legs
    assert set(sides[2 * legs :]) == {None}
    assert legs >= 10


def test_a_finding_on_a_part_the_fork_has_no_longer_stands_behind_the_others():
    job = with_note(_job(ForkKind.ANTI_DIVE), ("anti_dive", Side.LEFT), "sticks")
    plain = job.with_changes(sheet=_job(ForkKind.DAMPER_ROD).sheet)
    assert places_of(plain)[-1] == ("anti_dive", Side.LEFT)
    assert len(places_of(plain)) == len(places_of_kind(ForkKind.DAMPER_ROD)) + 1


def test_a_point_of_a_newer_list_stands_by_its_own_name():
    point = point_of("steering_damper")
    assert point.name == "Steering damper"
    assert point.measure is None
