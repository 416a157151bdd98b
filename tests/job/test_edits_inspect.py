"""Edits of the findings, what a job leaves for the next, and that all of it comes back."""

from datetime import UTC, date, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.job import Job, Prove, SignOff
from aligner.job.edits_inspect import (
    carried_from,
    with_carried,
    with_finding,
    with_gauge,
    with_limit,
    with_note,
    with_part_fitted,
    with_photograph,
    with_readings,
    without_photograph,
)
from aligner.job.inspect import Finding, Found, Inspect
from aligner.job.known_gauges import known_gauges
from aligner.sheet import Side
from aligner.sheet.inspection import LimitOf
from aligner.sheet.quantities import Length

TUBE = ("tube_runout", Side.LEFT)
SEAL = ("oil_seal", Side.LEFT)
RACES = ("lower_races", None)
AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
LATER = datetime(2027, 6, 1, 10, tzinfo=UTC)


def _mm(*texts):
    return tuple(Length.typed(text, "mm") for text in texts)


def test_a_place_holds_its_readings_finding_note_and_photographs_together():
    job = with_readings(Job(), TUBE, _mm("0.12", "0.10"))
    job = with_finding(job, TUBE, Finding.WATCH, AT)
    job = with_note(job, TUBE, "  mark at the bracket ")
    job = with_photograph(job, TUBE, "photographs/a.jpg")
    found = job.inspect.at_place(TUBE)
    assert [reading.text for reading in found.readings] == ["0.12 mm", "0.10 mm"]
    assert (found.finding, found.at, found.note) == (Finding.WATCH, AT, "mark at the bracket")
    assert found.photographs == ("photographs/a.jpg",)
    assert len(job.inspect.found) == 1


def test_the_two_legs_and_the_middle_are_kept_apart():
    job = with_note(with_note(Job(), TUBE, "left"), ("tube_runout", Side.RIGHT), "right")
    job = with_note(job, RACES, "middle")
    assert job.inspect.at_place(TUBE).note == "left"
    assert job.inspect.at_place(("tube_runout", Side.RIGHT)).note == "right"
    assert job.inspect.at_place(RACES).note == "middle"


def test_a_place_that_is_emptied_leaves_the_job_as_it_was():
    job = with_photograph(Job(), SEAL, "photographs/a.jpg")
    assert without_photograph(job, SEAL, "photographs/a.jpg") == Job()
    assert with_finding(with_finding(Job(), SEAL, Finding.GOOD, AT), SEAL, None, AT) == Job()


def test_the_same_finding_given_again_keeps_its_time():
    job = with_finding(Job(), SEAL, Finding.GOOD, AT)
    assert with_finding(job, SEAL, Finding.GOOD, LATER) is job


def test_a_photograph_added_twice_stands_once():
    job = with_photograph(Job(), SEAL, "photographs/a.jpg")
    assert with_photograph(job, SEAL, "photographs/a.jpg") is job


def test_a_new_part_is_fitted_only_where_one_is_due_and_another_finding_takes_the_tick_away():
    job = with_finding(Job(), SEAL, Finding.GOOD, AT)
    assert not with_part_fitted(job, SEAL, True).inspect.at_place(SEAL).is_fitted
    job = with_part_fitted(with_finding(job, SEAL, Finding.REPLACE, AT), SEAL, True)
    assert job.inspect.at_place(SEAL).is_fitted
    again = with_finding(with_finding(job, SEAL, Finding.GOOD, AT), SEAL, Finding.REPLACE, LATER)
    assert not again.inspect.at_place(SEAL).is_fitted


def test_a_gauge_new_to_the_job_joins_its_list_and_one_that_is_there_stays_as_it_is():
    dial = known_gauges()["dial indicator"].for_job()
    job = with_gauge(Job(), TUBE, "dial indicator", dial)
    assert job.gauges == {"dial indicator": dial}
    again = with_gauge(job, SEAL, "dial indicator", known_gauges()["tape"].for_job())
    assert again.gauges == {"dial indicator": dial}


def test_a_limit_goes_to_the_sheet_of_the_job_and_each_part_of_it_is_kept():
    job = with_limit(Job(), "tube_runout", value=Length.typed("0.2 mm"), source="manual p. 3")
    job = with_limit(job, "tube_runout", of=LimitOf.BEND)
    limit = job.sheet.inspection["tube_runout"]
    assert (limit.value.text, limit.of, limit.source) == ("0.2 mm", LimitOf.BEND, "manual p. 3")
    assert with_limit(job, "tube_runout", value=None).sheet == Job().sheet


def test_a_source_without_a_value_is_no_limit():
    assert with_limit(Job(), "tube_runout", source="manual p. 3") == Job()


def test_a_place_that_stands_twice_in_a_document_is_refused_by_name():
    with pytest.raises(ValueError, match="oil_seal, left"):
        Inspect(found=(Found(point="oil_seal", side=Side.LEFT),) * 2)


def test_a_document_comes_back_without_losing_a_character():
    job = with_readings(Job(), TUBE, _mm("0.120", "1/64 in"))
    job = with_finding(job, TUBE, Finding.REPLACE, AT)
    job = with_limit(job, "tube_runout", value=Length.typed("0.20 mm"), source="p. 3")
    job = with_carried(job, with_finding(Job(), RACES, Finding.WATCH, AT))
    assert Job.model_validate_json(job.model_dump_json()) == job


def test_an_older_document_without_findings_still_opens():
    assert Job.model_validate_json('{"document": "job", "version": 1, "inspect": {}}') == Job()


# What comes back at the next job


def test_what_is_to_be_watched_comes_back_with_its_day_numbers_and_note():
    job = with_note(with_readings(Job(), TUBE, _mm("0.12")), TUBE, "mark")
    (carried,) = carried_from(with_finding(job, TUBE, Finding.WATCH, AT))
    assert (carried.on, carried.place, carried.note) == (date(2026, 5, 2), TUBE, "mark")
    assert carried.readings == _mm("0.12")


def test_its_history_grows_from_job_to_job():
    first = with_finding(with_readings(Job(), TUBE, _mm("0.12")), TUBE, Finding.WATCH, AT)
    second = with_carried(Job(), first)
    second = with_finding(with_readings(second, TUBE, _mm("0.15")), TUBE, Finding.WATCH, LATER)
    assert [each.readings[0].text for each in carried_from(second)] == ["0.12 mm", "0.15 mm"]


@pytest.mark.parametrize("finding", [Finding.GOOD, Finding.REPLACE], ids=["good", "replaced"])
def test_it_ends_where_the_part_is_good_or_its_new_one_is_in(finding):
    last = with_carried(Job(), with_finding(Job(), TUBE, Finding.WATCH, AT))
    last = with_part_fitted(with_finding(last, TUBE, finding, LATER), TUBE, True)
    assert carried_from(last) == ()


def test_a_part_that_was_due_and_not_fitted_comes_back_as_due():
    (carried,) = carried_from(with_finding(Job(), SEAL, Finding.REPLACE, AT))
    assert carried.finding is Finding.REPLACE


def test_what_nobody_looked_at_this_time_comes_back_as_it_came():
    first = with_finding(Job(), TUBE, Finding.WATCH, AT)
    unlooked = with_note(with_carried(Job(), first), SEAL, "only the seals this time")
    assert carried_from(unlooked) == carried_from(first)


def test_a_finding_without_a_time_takes_the_day_of_the_sign_off():
    found = Inspect(found=(Found(point="oil_seal", side=Side.LEFT, finding=Finding.WATCH),))
    signed = Job(
        inspect=found, prove=Prove(sign_off=SignOff(name="A. Person", on=date(2025, 1, 2)))
    )
    assert [each.on for each in carried_from(signed)] == [date(2025, 1, 2)]
    assert [each.on for each in carried_from(Job(inspect=found))] == [None]


_PLACES = st.sampled_from([TUBE, SEAL, RACES])


@given(
    st.lists(
        st.lists(st.tuples(_PLACES, st.sampled_from(Finding), st.booleans()), max_size=4),
        max_size=4,
    )
)
def test_over_any_row_of_jobs_what_is_carried_is_what_nobody_has_settled(jobs):
    """A second way to it: the last finding of each place alone decides whether it comes back."""
    job, last = Job(), {}
    for number, steps in enumerate(jobs):
        at = datetime(2020 + number, 1, 1, tzinfo=UTC)
        for place, finding, is_fitted in steps:
            job = with_part_fitted(with_finding(job, place, finding, at), place, is_fitted)
            last[place] = (finding, job.inspect.at_place(place).is_fitted)
        job = with_carried(Job(), job)
    open_places = {
        place
        for place, (finding, is_fitted) in last.items()
        if finding is Finding.WATCH or (finding is Finding.REPLACE and not is_fitted)
    }
    assert {each.place for each in job.inspect.carried} == open_places
