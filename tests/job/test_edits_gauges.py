"""Edits of the list of gauges: a name changes everywhere, and what was used stays."""

from datetime import UTC, datetime

import pytest

from aligner.errors import AlignerError
from aligner.job import AsFound, Attempt, Gauge, Job, ProtrusionReadings, SquaringPair
from aligner.job.align import Align, PlateReadings
from aligner.job.build import Build, SagLengths
from aligner.job.edits_gauges import (
    free_gauge_name,
    gauge_uses,
    with_gauge,
    with_gauge_changed,
    with_gauge_renamed,
    without_gauge,
)
from aligner.job.inspect import Found, Inspect
from aligner.job.known_gauges import known_gauges
from aligner.sheet.quantities import Length

ALIGN = Align(
    protrusion=ProtrusionReadings(gauge="red"),
    squaring=(SquaringPair(name="lugs", gauge="red"), SquaringPair(name="bolts", gauge="blue")),
    in_line=PlateReadings(method="plate", gauge="red"),
)
JOB = Job(
    gauges={"red": Gauge(resolution=Length.typed("0.02 mm")), "blue": Gauge()},
    as_found=AsFound(protrusion=ProtrusionReadings(gauge="red")),
    inspect=Inspect(found=(Found(point="axle", gauge="red"),)),
    build=Build(gauge="red", sag=SagLengths(gauge="red")),
    align=ALIGN,
    attempts=(Attempt(closed=datetime(2026, 5, 2, tzinfo=UTC), align=ALIGN),),
)


def test_another_name_reaches_every_place_of_the_job():
    renamed = with_gauge_renamed(JOB, "red", "green")

    assert "red" not in renamed.model_dump_json().replace("measured", "")
    assert list(renamed.gauges) == ["green", "blue"]
    assert gauge_uses(renamed, "green") == gauge_uses(JOB, "red")
    assert with_gauge_renamed(renamed, "green", "red") == JOB


def test_the_uses_are_said_in_words_and_once_each():
    assert gauge_uses(JOB, "red") == (
        "the heights as found",
        "Inspect",
        "Build",
        "the heights",
        "“lugs”",
        "the legs in line",
        "attempt 1",
    )
    assert gauge_uses(JOB, "blue") == ("“bolts”", "attempt 1")
    assert gauge_uses(JOB, "none") == ()


def test_a_gauge_in_use_is_not_taken_off():
    with pytest.raises(AlignerError, match="was used for “bolts” and attempt 1"):
        without_gauge(JOB, "blue")


def test_a_gauge_of_no_use_is_taken_off():
    job = with_gauge(Job(), "tape", known_gauges()["tape"].for_job())

    assert without_gauge(job, "tape") == Job()


@pytest.mark.parametrize(
    ("name", "words"),
    [pytest.param(" \t", "needs a name", id="empty"), pytest.param(" red ", "already", id="taken")],
)
def test_a_name_that_is_empty_or_taken_is_refused(name, words):
    with pytest.raises(AlignerError, match=words):
        with_gauge(JOB, name, Gauge())
    with pytest.raises(AlignerError, match=words):
        with_gauge_renamed(JOB, "blue", name)


def test_a_gauge_may_keep_its_own_name():
    assert free_gauge_name(JOB, " red ", but="red") == "red"
    assert with_gauge_renamed(JOB, "red", "red") is JOB


def test_other_values_of_a_gauge_leave_the_rest():
    changed = with_gauge_changed(JOB, "blue", repeatability=Length.typed("0.1 mm"))

    assert changed.gauges["blue"].repeatability.value == 0.1
    assert changed.gauges["red"] == JOB.gauges["red"]
    assert changed.align == JOB.align


def test_a_gauge_that_has_gone_takes_nothing():
    assert with_gauge_changed(Job(), "red", source="bench") == Job()
