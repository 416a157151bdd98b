"""The parts list counts what to buy, and asks for nothing twice."""

from datetime import UTC, datetime

from aligner.assessment.inspection import assess_inspection
from aligner.job import Job
from aligner.job.edits_inspect import with_finding, with_note, with_part_fitted
from aligner.job.inspect import Finding
from aligner.report.parts_list import parts_text, parts_to_replace, parts_to_watch
from aligner.sheet import Side
from aligner.units.preferred import Preferred

AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
SHOW = Preferred()


def _job(*places, finding=Finding.REPLACE):
    job = Job()
    for place in places:
        job = with_finding(job, place, finding, AT)
    return job


def _rows(job):
    return parts_to_replace(assess_inspection(job), SHOW)


def test_a_seal_for_each_leg_is_two_seals():
    (row,) = _rows(_job(("oil_seal", Side.LEFT), ("oil_seal", Side.RIGHT)))
    assert (row.count, row.part, row.where) == (2, "oil seal", "both legs")


def test_a_tube_that_is_bent_and_pitted_is_one_tube():
    (row,) = _rows(_job(("tube_runout", Side.LEFT), ("tube_surface", Side.LEFT)))
    assert (row.count, row.why) == (1, "tube runout; tube surface")


def test_races_and_balls_go_together_as_one_bearing_in_the_middle():
    (row,) = _rows(_job(("upper_races", None), ("balls_or_rollers", None)))
    assert (row.count, row.part, row.where) == (1, "head bearing", "")


def test_a_part_that_is_fitted_already_is_not_asked_for_again():
    place = ("oil_seal", Side.LEFT)
    assert _rows(with_part_fitted(_job(place), place, True)) == ()


def test_what_is_to_be_watched_is_listed_by_itself():
    job = _job(("spring_washers", None), finding=Finding.WATCH)
    assert _rows(job) == ()
    (row,) = parts_to_watch(assess_inspection(job), SHOW)
    assert row.part == "spring washers"


def test_the_text_to_copy_is_exactly_this():
    left, right = ("oil_seal", Side.LEFT), ("oil_seal", Side.RIGHT)
    job = with_note(_job(left, right, ("spring_washers", None)), left, "weeping at the rear")
    job = with_finding(job, ("tube_surface", Side.RIGHT), Finding.WATCH, AT)
    assert parts_text(assess_inspection(job), SHOW, "an invented bike") == (
        "Parts for an invented bike\n"
        "\n"
        "To replace:\n"
        "2 x oil seal (both legs): left leg: weeping at the rear\n"
        "1 x spring washers\n"
        "\n"
        "To watch:\n"
        "1 x fork tube (right leg): tube surface\n"
    )


def test_a_list_with_nothing_on_it_says_so():
    text = parts_text(assess_inspection(Job()), SHOW)
    assert text == "Parts\n\nTo replace: nothing\n\nTo watch: nothing\n"
