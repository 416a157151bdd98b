"""Which reading is asked for next, against the order in which the Align stage corrects."""

from datetime import UTC, datetime

import pytest

from aligner.assessment import Subject, assess
from aligner.assessment.asked_reading import asked_reading, last_reading, with_reading
from aligner.data_files import demo
from aligner.job import Job
from aligner.job.edits_align import with_another_pair, with_attempt_closed, with_in_line_method
from aligner.sheet.quantities import Length, SignedLength
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred

AT = datetime(2026, 5, 2, 9, tzinfo=UTC)


def asked(job):
    found = assess(job)
    return asked_reading(job, found, found.correction(Preferred()).subject)


def read(job, *texts):
    for text in texts:
        place = asked(job)
        job = with_reading(job, place, place.kind.typed(text, "mm"), AT)
    return job


def emptied(name):
    return with_attempt_closed(load_job(demo(f"{name}.job.json"))[0], AT)


def test_an_empty_job_asks_for_the_left_leg_first():
    place = asked(Job())
    assert (place.asked_words, place.kind) == ("left leg, reading 1 of 3", SignedLength)


def test_both_legs_are_read_three_times_before_anything_else():
    job = emptied("fellside-true")
    words = []
    for _ in range(7):
        words.append(asked(job).asked_words)
        job = read(job, "5.0")
    assert words[:6] == [
        f"{side} leg, reading {n} of 3" for side in ("left", "right") for n in (1, 2, 3)
    ]
    assert "side" in words[6]


def test_nothing_more_is_asked_for_what_is_out():
    job = read(emptied("fellside-left-leg-high"), *["6.6"] * 3, *["5.0"] * 3)
    assert asked(job) is None


def test_a_reading_far_from_its_fellows_asks_for_more():
    job = read(emptied("fellside-left-leg-high"), "5.0", "5.9", "5.0", "5.0", "5.0", "5.0")
    advice = assess(job).protrusion.advice
    assert advice is not None
    wanted = advice.readings_needed
    place = asked(job)
    assert (place.wanted if place else 3) == max(3, min(wanted or 3, 8))


def test_a_reading_goes_where_it_was_asked_for_and_nowhere_else():
    job = emptied("fellside-true")
    place = asked(job)
    after = with_reading(job, place, SignedLength.typed("4.9 mm"), AT)
    assert [r.text for r in after.align.protrusion.left] == ["4.9 mm"]
    assert (
        after.align.with_changes(protrusion=job.align.protrusion, begun=job.align.begun)
        == job.align
    )


@pytest.mark.parametrize(
    ("method", "fields"),
    [
        ("plate", ["gap", "gap", "gap", "height"]),
        ("bars", ["end_difference"] * 3 + ["half_length", "height"]),
        ("spread", ["upper"] * 3 + ["lower"] * 3 + ["height"]),
    ],
)
def test_every_method_in_line_asks_for_what_it_reads(method, fields):
    job = with_in_line_method(Job(), method)
    walked = []
    for _ in range(len(fields) + 3):
        place = asked_reading(job, assess(job), Subject.IN_LINE)
        if place is None:
            break
        walked.append(place.field)
        job = with_reading(job, place, place.kind.typed("40", "mm"), AT)
    assert walked[: len(fields)] == fields[: len(walked)]
    assert walked.count(fields[0]) == 3


def test_several_pairs_are_named():
    job = with_another_pair(emptied("fellside-true"))
    found = assess(job)
    place = asked_reading(job, found, Subject.SQUARING)
    assert place.name == f"{job.align.squaring[0].name}, left"
    assert place.kind is Length


def test_the_last_reading_is_the_one_before_what_is_asked_for():
    job = read(emptied("fellside-true"), "5.0", "5.1")
    found = assess(job)
    name, reading = last_reading(job, found, asked(job), Subject.PROTRUSION)
    assert (name, reading.text) == ("left leg", "5.1 mm")


def test_before_the_first_reading_there_is_no_last_one():
    job = emptied("fellside-true")
    assert last_reading(job, assess(job), asked(job), Subject.PROTRUSION) is None
