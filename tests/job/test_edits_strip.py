"""What was found and taken off, as values: order kept, turned round, nothing written over."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.assessment.strip import assess_strip
from aligner.errors import AlignerError
from aligner.job import Job
from aligner.job.edits_strip import (
    with_as_found,
    with_put_back,
    with_removed,
    with_removed_changed,
    with_removed_moved,
    without_removed,
)
from aligner.job.usual_clutter import reminder_for, usual_clutter
from aligner.sheet.quantities import Length, SignedLength, Volume

AT = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)


def stripped(*names):
    job = Job()
    for place, name in enumerate(names):
        job = with_removed(job, name, AT + timedelta(minutes=place))
    return job


def names(job):
    return [each.name for each in job.strip.removed]


def test_what_comes_off_keeps_its_order_and_time():
    job = stripped("Front wheel", "Front mudguard")
    assert names(job) == ["Front wheel", "Front mudguard"]
    assert job.strip.removed[0].off < job.strip.removed[1].off
    assert assess_strip(job).not_back == ("Front mudguard", "Front wheel")


def test_a_caliper_hangs_from_a_hook_whatever_case_it_is_typed_in():
    """Common practice, no source: a hose never carries a caliper."""
    job = stripped("  left FRONT  caliper ")
    entry = job.strip.removed[0]
    assert entry.name == "left FRONT caliper"
    assert entry.reminder.startswith("Hung from a hook, not from the hose")


@pytest.mark.parametrize(
    ("name", "minds"),
    [
        ("nearside caliper", "not from the hose"),
        ("the headlight", "Tied up"),
        ("speedometer cable, outer", "ends clean"),
        ("Speedometer", "face up"),
        ("Brake hose", "guide"),
        ("sidecar tug", ""),
    ],
)
def test_a_thing_called_by_another_name_is_minded_like_its_kind(name, minds):
    reminder = stripped(name).strip.removed[0].reminder
    assert bool(reminder) is bool(minds)
    assert minds in reminder


def test_a_name_that_is_put_right_brings_its_own_reminder_and_a_note_leaves_it():
    job = with_removed_changed(stripped("Front weel"), 0, name="Front wheel")
    assert "spacers" in job.strip.removed[0].reminder
    noted = with_removed_changed(job, 0, note="on the rug", fasteners="tin 1")
    assert noted.strip.removed[0].reminder == job.strip.removed[0].reminder
    assert (noted.strip.removed[0].note, noted.strip.removed[0].fasteners) == (
        "on the rug",
        "tin 1",
    )


@pytest.mark.parametrize("name", ["", "   ", "\t\n"], ids=["empty", "blanks", "tab"])
def test_a_part_without_a_name_is_refused(name):
    with pytest.raises(AlignerError, match="say what came off"):
        with_removed(Job(), name, AT)
    with pytest.raises(AlignerError, match="say what came off"):
        with_removed_changed(stripped("Horn"), 0, name=name)


@pytest.mark.parametrize(
    "act",
    [
        lambda job, place: with_removed_changed(job, place, note="x"),
        lambda job, place: with_removed_moved(job, place, 1),
        without_removed,
        lambda job, place: with_put_back(job, place, AT),
    ],
    ids=["change", "move", "take out", "put back"],
)
@pytest.mark.parametrize("place", [-1, 2])
def test_an_entry_that_is_not_there_is_refused(act, place):
    with pytest.raises(AlignerError, match="there is no entry"):
        act(stripped("Horn", "Front wheel"), place)


def test_moving_stops_at_both_ends():
    job = stripped("a", "b", "c")
    assert names(with_removed_moved(job, 0, -1)) == ["a", "b", "c"]
    assert names(with_removed_moved(job, 2, 1)) == ["a", "b", "c"]
    assert names(with_removed_moved(job, 2, -1)) == ["a", "c", "b"]


@given(
    st.lists(st.sampled_from("abcdef"), min_size=1, max_size=6, unique=True),
    st.lists(st.tuples(st.integers(0, 5), st.integers(-2, 2)), max_size=5),
    st.sets(st.integers(0, 5)),
)
def test_the_way_back_is_the_way_off_turned_round_without_what_is_back(parts, moves, back):
    job = stripped(*parts)
    for place, by in moves:
        if place < len(parts):
            job = with_removed_moved(job, place, by)
    assert sorted(names(job)) == sorted(parts)
    off = [name for place, name in enumerate(names(job)) if place not in back]
    for place in back:
        if place < len(parts):
            job = with_put_back(job, place, AT)
    assert list(assess_strip(job).not_back) == off[::-1]
    assert names(job) == [each.entry.name for each in assess_strip(job).removed]


def test_what_is_back_is_off_again_after_an_untick():
    job = with_put_back(stripped("Horn"), 0, AT)
    assert assess_strip(job).not_back == ()
    assert assess_strip(with_put_back(job, 0, None)).not_back == ("Horn",)


@pytest.mark.parametrize(
    ("path", "value"),
    [
        ("steering", "catches in the middle"),
        ("air_pressure", "8 psi both"),
        ("left.oil", Volume.typed("240 ml")),
        ("right.oil_look", "grey"),
        ("protrusion.left", (SignedLength.typed("-1.5 mm"),)),
        ("bracket.right", (Length.typed("183 mm"),)),
        ("sag.extended", (Length.typed("200 mm"),)),
    ],
)
def test_as_found_takes_each_value_at_its_place_and_survives_the_document(path, value):
    job = with_as_found(Job(), path, value)
    name, _, field = path.partition(".")
    held = getattr(job.as_found, name)
    assert (getattr(held, field) if field else held) == value
    assert Job.model_validate_json(job.model_dump_json()) == job


def test_a_known_gauge_that_is_named_goes_on_the_jobs_list():
    job = with_as_found(Job(), "protrusion.gauge", "steel rule")
    assert job.as_found.protrusion.gauge == "steel rule"
    assert "steel rule" in job.gauges


def test_a_job_of_before_these_fields_still_opens():
    old = '{"as_found": {"protrusion": {"left": ["5 mm"]}}, "strip": {"log": []}}'
    assert Job.model_validate_json(old).as_found.protrusion.left[0].value == 5


@pytest.mark.parametrize(
    ("typed", "usual"),
    [
        ("Bremssattel, links", "Left front caliper"),
        ("Hauptbremszylinder", "Brake reservoir"),
        ("Gaszüge", "Throttle cables"),
        ("Tachowelle", "Speedometer cable"),
        ("Tachoantrieb", "Speedometer drive"),
        ("rechter Faltenbalg", "Left fork gaiter"),
        ("Luftschlauch", "Air line of the legs"),
        ("Bremsschläuche", "Brake hoses, guides"),
        ("Lenkungsdämpfer", "Steering damper"),
        ("Radiator", ""),
        ("Bremsscheibe", ""),
    ],
)
def test_a_german_name_brings_its_reminder_whatever_is_spoken(typed, usual):
    assert reminder_for(typed) == (reminder_for(usual) if usual else "")


@pytest.mark.usefixtures("bracketed")
@pytest.mark.parametrize("typed", ["Horn", "⟦Horn⟧", "⟦horn⟧", "the horn"])
def test_the_reminder_goes_into_the_job_in_the_language_spoken(typed):
    entry = with_removed(Job(), typed, AT).strip.removed[0]
    assert entry.name == typed
    assert entry.reminder.startswith("⟦Take its plugs")
    assert entry.reminder.endswith("⟧")


def test_every_usual_thing_has_a_reminder_with_its_reason_and_its_source():
    for each in usual_clutter():
        assert "because" in each.reminder, each.name
        assert each.source == "common practice, no source"
        assert reminder_for(each.name.upper()) == each.reminder
    found = [each.name.casefold() for each in usual_clutter()]
    assert len(found) == len(set(found))
