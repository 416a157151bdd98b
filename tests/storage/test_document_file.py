"""A document's file is known by its content: what another program changed is never undone."""

from __future__ import annotations

import os
from datetime import datetime
from pathlib import Path

import pytest

from aligner.job import Job
from aligner.job.align import Align, ProtrusionReadings
from aligner.sheet import Sheet
from aligner.sheet.quantities import SignedLength
from aligner.storage.document_file import (
    ChangedOnDisk,
    keep_both,
    load_job,
    load_sheet,
    save_job,
    save_sheet,
)
from aligner.storage.documents import NewerDocument, as_bytes
from aligner.storage.failure import SaveFailed
from aligner.storage.files import previous_path

OURS, THEIRS = Job(title="ours"), Job(title="theirs")
AT = datetime(2026, 11, 25, 14, 2)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "refit.job.json"


def test_a_job_saved_is_the_job_loaded_and_so_is_the_file(path: Path) -> None:
    saved = save_job(OURS, path)
    job, loaded = load_job(path)

    assert job == OURS
    assert loaded == saved
    assert saved.size_bytes == path.stat().st_size
    assert saved.modified_ns == path.stat().st_mtime_ns


def test_a_sheet_is_kept_in_the_same_way(tmp_path: Path) -> None:
    path = tmp_path / "x.sheet.json"
    file = save_sheet(Sheet(name="invented bike"), path)

    save_sheet(Sheet(name="invented bike", note="x"), path, file)

    assert load_sheet(path)[0].note == "x"


def test_saves_follow_one_another_and_the_one_before_is_kept(path: Path) -> None:
    file = save_job(Job(title="1"), path)
    file = save_job(Job(title="2"), path, file)
    save_job(Job(title="3"), path, file)

    assert load_job(path)[0].title == "3"
    assert load_job(previous_path(path))[0].title == "2"


def test_what_another_program_changed_is_not_undone(path: Path) -> None:
    file = save_job(Job(), path)
    save_job(THEIRS, path, over_changes=True)

    with pytest.raises(ChangedOnDisk) as refused:
        save_job(OURS, path, file)

    assert str(refused.value) == (
        "refit.job.json: the file was changed by another program, so it was not saved; "
        "keep both, or choose one"
    )
    assert load_job(path)[0] == THEIRS


def test_a_change_that_keeps_length_and_time_is_noticed_at_the_save(path: Path) -> None:
    file = save_job(Job(title="aaaa"), path)
    path.write_bytes(as_bytes(Job(title="bbbb")))
    os.utime(path, ns=(file.modified_ns, file.modified_ns))

    with pytest.raises(ChangedOnDisk):
        save_job(OURS, path, file)


def test_a_file_that_was_only_touched_counts_as_unchanged(path: Path) -> None:
    file = save_job(Job(), path)
    os.utime(path, (1, 1))

    assert file.is_as_it_was()
    save_job(OURS, path, file)


def test_saving_what_another_saved_alike_is_no_conflict(path: Path) -> None:
    file = save_job(Job(), path)
    save_job(OURS, path, file)

    assert save_job(OURS, path, file).is_as_it_was()


@pytest.mark.parametrize("content", [b"", b"{", as_bytes(THEIRS)], ids=["empty", "cut", "theirs"])
def test_a_look_at_the_file_sees_that_it_was_changed(path: Path, content: bytes) -> None:
    file = save_job(OURS, path)
    assert file.is_as_it_was()

    path.write_bytes(content)

    assert not file.is_as_it_was()


def test_a_file_that_vanished_is_said_and_can_be_saved_anew(path: Path) -> None:
    file = save_job(Job(), path)
    path.unlink()

    assert not file.is_as_it_was()
    with pytest.raises(ChangedOnDisk, match="the file is not there any more") as refused:
        save_job(OURS, path, file)
    assert refused.value.is_gone

    save_job(OURS, path, over_changes=True)
    assert load_job(path)[0] == OURS


def test_a_folder_that_vanished_is_another_cause(path: Path) -> None:
    place = path.parent / "stick" / path.name
    place.parent.mkdir()
    file = save_job(Job(), place)
    place.unlink()
    place.parent.rmdir()

    with pytest.raises(SaveFailed, match=r"the folder “.*stick” is not there") as refused:
        save_job(OURS, place, file)
    assert not isinstance(refused.value, ChangedOnDisk)


def test_what_was_chosen_over_theirs_keeps_theirs_as_the_previous_version(path: Path) -> None:
    file = save_job(Job(), path)
    save_job(THEIRS, path, file)

    save_job(OURS, path, file, over_changes=True)

    assert load_job(path)[0] == OURS
    assert load_job(previous_path(path))[0] == THEIRS


def test_both_are_kept_under_names_that_say_so(path: Path) -> None:
    save_job(THEIRS, path)

    first = keep_both(OURS, path, AT)
    second = keep_both(Job(title="ours again"), path, AT)

    assert first.path.name == "refit (kept 2026-11-25 14.02).job.json"
    assert second.path.name == "refit (kept 2026-11-25 14.02) 2.job.json"
    assert load_job(path)[0] == THEIRS
    assert load_job(first.path)[0] == OURS


@pytest.mark.parametrize(
    "content",
    [b"{", b"notes on the bike", as_bytes(Sheet()), b'{"document": "job", "version": 2}'],
    ids=["damaged", "something else", "a sheet", "newer"],
)
def test_a_new_name_never_replaces_what_is_not_a_readable_job(path: Path, content: bytes) -> None:
    path.write_bytes(content)

    with pytest.raises(SaveFailed) as refused:
        save_job(OURS, path)

    assert str(refused.value) == (
        "refit.job.json: what stands there is not a job that can be read, so it was left; "
        "save under another name"
    )
    assert path.read_bytes() == content


def test_a_newer_document_is_refused_and_left(path: Path) -> None:
    path.write_bytes(b'{"document": "job", "version": 2}')

    with pytest.raises(NewerDocument):
        load_job(path)

    assert path.read_bytes() == b'{"document": "job", "version": 2}'


def test_a_job_that_would_not_open_again_does_not_replace_one_that_does(path: Path) -> None:
    file = save_job(Job(), path)
    wrong = SignedLength("four millimetres", 4.0)
    job = Job(align=Align(protrusion=ProtrusionReadings(left=(wrong,))))

    with pytest.raises(SaveFailed) as refused:
        save_job(job, path, file)

    assert str(refused.value) == (
        "refit.job.json: it could not be opened again (align.protrusion.left[0]: “four "
        "millimetres” does not begin with a number), so it was not saved; write it as “4.2 mm”"
    )
    assert load_job(path)[0] == Job()
