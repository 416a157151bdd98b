"""Old documents are brought up to date a version at a time, and every version has its sample.

Version 0 never existed: it is invented here, with its steps, to prove the machinery.
"""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from aligner.job import Job
from aligner.sheet import Sheet
from aligner.storage.documents import as_bytes, document_from, job_from, sheet_from
from aligner.storage.migration import (
    MINOR,
    STEPS,
    VERSION,
    Fields,
    Step,
    migrated,
    oldest_version,
)
from aligner.storage.refusal import UnusableDocument

SAMPLES = Path(__file__).parent / "samples"


def _job_from_0(fields: Fields) -> Fields:
    heights = fields["align"]["protrusion"]
    readings = {
        side: [f"{height} mm" for height in heights[f"{side}_mm"]] for side in ("left", "right")
    }
    kept = {name: value for name, value in fields.items() if name != "name"}
    return {**kept, "title": fields["name"], "align": {"protrusion": readings}}


def _sheet_from_0(fields: Fields) -> Fields:
    spacing = f"{fields['leg_spacing_mm']} mm"
    return {"document": "sheet", "name": fields["bike"], "fork": {"leg_spacing": spacing}}


INVENTED = (
    Step(0, "quantities carry their unit (invented)", job=_job_from_0, sheet=_sheet_from_0),
)


def test_the_steps_lead_to_the_present_version_without_a_gap() -> None:
    first = oldest_version()

    assert [step.from_version for step in STEPS] == list(range(first, VERSION))
    assert all(step.because for step in STEPS)


@pytest.mark.parametrize("version", range(oldest_version(), VERSION + 1))
def test_a_sample_of_every_version_can_be_read(version: int) -> None:
    job = job_from((SAMPLES / f"job.version-{version}.job.json").read_bytes())
    sheet = sheet_from((SAMPLES / f"sheet.version-{version}.sheet.json").read_bytes())

    assert job.sheet.fasteners[0].bolts == 2
    assert sheet.steering.rake is not None
    assert job_from(as_bytes(job)) == job
    assert sheet_from(as_bytes(sheet)) == sheet


@pytest.mark.parametrize("minor", range(1, MINOR + 1))
def test_a_sample_of_every_minor_version_can_be_read_and_written_back(minor: int) -> None:
    content = (SAMPLES / f"job.version-{VERSION}.{minor}.job.json").read_bytes()

    job = job_from(content)

    assert job_from(as_bytes(job)) == job
    assert set(json.loads(content)) - {"minor"} <= job.model_fields_set


def test_an_invented_old_job_is_read_through_its_step_sheet_and_all() -> None:
    content = (SAMPLES / "invented-version-0.job.json").read_bytes()

    job = document_from(content, Job, INVENTED)

    assert job.title == "front end refit"
    assert [str(reading) for reading in job.align.protrusion.left] == ["4.2 mm", "4.25 mm"]
    assert str(job.sheet.fork.leg_spacing) == "200 mm"
    assert job.version == job.sheet.version == VERSION


def test_an_invented_old_sheet_alone_is_read_through_its_step() -> None:
    old = {"document": "sheet", "version": 0, "bike": "x", "leg_spacing_mm": 200}

    assert document_from(json.dumps(old).encode(), Sheet, INVENTED).name == "x"


def test_what_is_wrong_in_an_old_document_is_named_by_its_present_path() -> None:
    old = json.loads((SAMPLES / "invented-version-0.job.json").read_bytes())
    old["align"]["protrusion"]["left_mm"] = ["x"]

    with pytest.raises(UnusableDocument) as refused:
        document_from(json.dumps(old).encode(), Job, INVENTED)

    assert refused.value.where == "align.protrusion.left[0]"


def test_without_the_step_version_0_is_no_version() -> None:
    with pytest.raises(UnusableDocument, match="this is not a version"):
        job_from((SAMPLES / "invented-version-0.job.json").read_bytes())


def test_several_steps_are_taken_one_after_the_other() -> None:
    steps = tuple(
        Step(version, "counts", sheet=lambda fields: {**fields, "steps": [*fields["steps"], 1]})
        for version in (3, 4, 5)
    )
    old = {"version": 4, "steps": []}

    assert migrated(old, "sheet", steps) == {"version": 6, "steps": [1, 1]}
    assert old == {"version": 4, "steps": []}
