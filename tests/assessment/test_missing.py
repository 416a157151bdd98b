"""What is missing is what the job asks for; a dimension left out is only not given."""

from aligner.assessment.missing import (
    DIMENSIONS,
    missing_on_sheet,
    missing_values,
    not_given,
)
from aligner.assessment.stages import missing_on_sheet as counted_by_the_stages
from aligner.data_files import demo
from aligner.fastening.joints import joint_kinds
from aligner.job import Job
from aligner.sheet import Fastener, Fork, Sheet, Steering
from aligner.sheet.patterns import composed
from aligner.storage.document_file import load_job


def test_nothing_is_missing_on_a_complete_sheet():
    sheet = load_job(demo("fellside-true.job.json"))[0].sheet
    assert missing_values(sheet) == not_given(sheet) == ()


def test_a_pattern_lacks_each_torque_the_tolerance_and_how_the_bearing_is_set():
    sheet = composed({})
    paths = [value.path for value in missing_values(sheet)]
    assert paths[0] == "protrusion.tolerance"
    torques = [f"fasteners.{fastener.name}.torque" for fastener in sheet.fasteners]
    assert sorted(paths[1:]) == sorted(
        [*torques, "fasteners.stem nut.seating", "fasteners.stem nut.back_off"]
    )
    assert missing_on_sheet(Job(sheet=sheet)) == len(torques) + 3
    assert counted_by_the_stages is missing_on_sheet


def test_only_the_stem_nut_is_seated_and_backed_off():
    for kind in joint_kinds():
        paths = [
            value.path
            for value in missing_values(Sheet(fasteners=(Fastener(name="it", kind=kind),)))
        ]
        assert ("fasteners.it.seating" in paths) is (kind == "stem_nut")


def test_every_dimension_of_fork_and_steering_is_asked_for():
    asked = {path.partition(".")[2] for path in DIMENSIONS}
    assert asked == (set(Fork.model_fields) - {"kind", "handlebars"}) | set(Steering.model_fields)
    assert [value.path for value in not_given(Sheet())] == list(DIMENSIONS)
