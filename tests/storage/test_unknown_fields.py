"""A newer minor version's fields come back where they were, whatever was done to the rest."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from aligner.job import Job
from aligner.storage.document_file import keep_both, load_job, save_job
from aligner.storage.documents import as_bytes, document_and_newer, job_from
from aligner.storage.migration import MINOR
from aligner.storage.recovery import found_in, keep_recovery_copy, recovery_copies
from aligner.storage.refusal import UnusableDocument
from tests.storage.test_recovery import AT

SAMPLES = Path(__file__).parent / "samples"
LATER = SAMPLES / "invented-version-1.99.job.json"


def kept(job: Job) -> dict[str, Any]:
    """What the later sample becomes when this job is saved in its place."""
    _, newer = document_and_newer(LATER.read_bytes(), Job)
    found: dict[str, Any] = json.loads(as_bytes(job, newer))
    return found


def read() -> Job:
    return job_from(LATER.read_bytes())


def test_a_later_minor_version_is_read_and_written_back_whole() -> None:
    later = json.loads(LATER.read_bytes())

    after = kept(read())

    assert after["minor"] == 99
    assert after["weather"] == later["weather"]
    assert after["sheet"]["colour"] == later["sheet"]["colour"]
    for place in (0, 1):
        washer = later["sheet"]["fasteners"][place]["washer"]
        assert after["sheet"]["fasteners"][place]["washer"] == washer
    assert after["align"]["protrusion"]["light"] == later["align"]["protrusion"]["light"]
    assert after["log"][0]["hand"] == "left"


def test_an_entry_that_moved_keeps_its_own() -> None:
    job = read()
    turned = job.sheet.with_changes(fasteners=tuple(reversed(job.sheet.fasteners)))

    after = kept(job.with_changes(sheet=turned))

    washers = {each["name"]: each["washer"] for each in after["sheet"]["fasteners"]}
    assert washers == {"left lower clamp": {"flat": True}, "left cap": {"flat": False}}


def test_an_entry_taken_out_takes_its_own_with_it_and_gives_it_to_no_other() -> None:
    job = read()
    fewer = job.sheet.with_changes(fasteners=job.sheet.fasteners[1:])

    after = kept(job.with_changes(sheet=fewer))

    assert [each.get("washer") for each in after["sheet"]["fasteners"]] == [{"flat": False}]


def test_entries_put_before_it_do_not_take_it() -> None:
    job = read()
    first = job.sheet.fasteners[0].with_changes(name="new one")
    more = job.sheet.with_changes(fasteners=(first, *job.sheet.fasteners))

    after = kept(job.with_changes(sheet=more))

    assert [each.get("washer") for each in after["sheet"]["fasteners"]] == [
        None,
        {"flat": True},
        {"flat": False},
    ]


def test_they_go_with_every_way_of_saving(tmp_path: Path) -> None:
    path = tmp_path / "refit.job.json"
    path.write_bytes(LATER.read_bytes())
    job, file = load_job(path)

    saved = save_job(job.with_changes(note="x"), path, file)
    again = save_job(job.with_changes(note="y"), path, saved)
    beside = keep_both(job, path, AT, again.newer)
    elsewhere = save_job(job, tmp_path / "other.job.json", newer=again.newer)

    for each in (again, beside, elsewhere):
        assert json.loads(each.path.read_bytes())["weather"] == {"dry": True}
        assert load_job(each.path)[1].newer == file.newer


def test_a_recovery_copy_has_them_too(tmp_path: Path) -> None:
    path = tmp_path / "refit.job.json"
    path.write_bytes(LATER.read_bytes())
    job, file = load_job(path)
    keep_recovery_copy(tmp_path, "1", as_bytes(job.with_changes(note="x"), file.newer), file, AT)

    (copy,) = recovery_copies(tmp_path)

    assert found_in(copy).job == job.with_changes(note="x")
    assert copy.file is not None
    assert copy.file.newer == file.newer


def test_an_unknown_field_of_our_own_minor_version_is_still_a_slip_of_the_pen() -> None:
    with pytest.raises(UnusableDocument, match="titel: this field is not known"):
        job_from(b'{"document": "job", "version": 1, "minor": %d, "titel": "x"}' % MINOR)


@pytest.mark.parametrize("minor", ["-1", "1.5", '"1"', "true", "null", "[]"])
def test_what_is_no_minor_version_is_refused(minor: str) -> None:
    content = f'{{"document": "job", "version": 1, "minor": {minor}}}'

    with pytest.raises(UnusableDocument) as refused:
        job_from(content.encode())

    assert str(refused.value) == f'minor: this is not a version; write "minor": {MINOR}'


def test_what_else_is_wrong_in_a_later_document_is_still_refused() -> None:
    later = json.loads(LATER.read_bytes())
    later["align"]["protrusion"]["left"] = [4.2]

    with pytest.raises(UnusableDocument) as refused:
        job_from(json.dumps(later).encode())

    assert refused.value.where == "align.protrusion.left[0]"


@pytest.mark.parametrize("name", sorted(path.name for path in SAMPLES.glob("job.version-*")))
def test_the_sample_of_every_minor_version_is_read_and_saved_as_the_present_one(name: str) -> None:
    job = job_from((SAMPLES / name).read_bytes())

    assert json.loads(as_bytes(job))["minor"] == MINOR
    assert job_from(as_bytes(job)) == job
    assert (SAMPLES / f"job.version-1.{MINOR}.job.json").exists()
