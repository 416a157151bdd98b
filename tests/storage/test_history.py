"""The list of jobs in a folder, from real files, good and bad."""

import json
import shutil
from datetime import UTC, date, datetime

import pytest

from aligner.data_files import demo
from aligner.job.edits_prove import with_sign_off
from aligner.job.log import recheck_key
from aligner.storage.document_file import load_job, save_job
from aligner.storage.history import JobState, job_row, jobs_in

AT = datetime(2026, 5, 2, 9, 30, tzinfo=UTC)


@pytest.fixture
def job():
    """A demo job with its readings put back to none, so that nothing was done on it."""
    fields = json.loads(demo("fellside-true.job.json").read_text(encoding="utf-8"))
    for done in ("align", "log", "attempts", "prove", "strip", "build", "inspect", "as_found"):
        fields.pop(done, None)
    path = demo("fellside-true.job.json")
    return load_job(path)[0].model_validate(fields, strict=False)


def row_of(job, folder):
    path = folder / "a.job.json"
    save_job(job, path)
    return job_row(path)


def test_a_row_says_what_the_whole_document_says(tmp_path):
    source = demo("fellside-true.job.json")
    whole = load_job(source)[0]
    row = job_row(source)
    assert (row.bike, row.title) == (whole.sheet.name, whole.title)
    assert row.state is JobState.IN_HAND


def test_a_job_on_which_nothing_was_done_is_not_begun(job, tmp_path):
    row = row_of(job, tmp_path)
    assert (row.state, row.day, row.due) == (JobState.NOT_BEGUN, "", "")


def test_a_job_with_a_tick_is_in_hand_since_the_day_of_the_tick(job, tmp_path):
    row = row_of(job.with_changes(log=({"step": "x", "at": AT},)), tmp_path)
    assert (row.state, row.day, row.due) == (JobState.IN_HAND, "2026-05-02", "sign-off")


def test_a_signed_job_is_due_until_its_checks_after_the_road_are_ticked(job, tmp_path):
    signed = with_sign_off(job, "A. Mechanic", date(2026, 5, 3))
    asked = [each.name for each in signed.sheet.fasteners if each.again_after]
    row = row_of(signed, tmp_path)
    assert row.state is JobState.DUE
    assert row.due == f"check {len(asked)} fasteners again after 100 km"
    fields = json.loads((tmp_path / "a.job.json").read_text(encoding="utf-8"))
    fields["prove"]["rechecks"] = [
        {"step": recheck_key(name), "action": "ticked", "at": AT.isoformat()} for name in asked
    ]
    (tmp_path / "a.job.json").write_text(json.dumps(fields), encoding="utf-8")
    assert job_row(tmp_path / "a.job.json").state is JobState.DONE


@pytest.mark.parametrize("action", ["unticked", "opened again"])
def test_a_check_after_the_road_that_is_open_again_is_due(job, tmp_path, action):
    signed = with_sign_off(job, "A. Mechanic", date(2026, 5, 3))
    asked = [each.name for each in signed.sheet.fasteners if each.again_after]
    ticks = [{"step": recheck_key(name), "action": "ticked", "at": AT} for name in asked]
    opened = {"step": recheck_key(asked[0]), "action": action, "at": AT}
    proof = signed.prove.model_dump() | {"rechecks": (*ticks, opened)}
    row = row_of(
        signed.model_validate({**signed.model_dump(), "prove": proof}, strict=False), tmp_path
    )
    assert row.state is JobState.DUE
    assert row.due == "check 1 fastener again after 100 km"


@pytest.mark.parametrize(
    "done",
    [
        pytest.param({"build": {"log": ({"step": "left/x", "at": AT},)}}, id="built up"),
        pytest.param(
            {"inspect": {"found": ({"point": "oil_seal", "finding": "good", "at": AT},)}},
            id="inspected",
        ),
    ],
)
def test_a_job_that_was_built_up_or_inspected_is_in_hand_since_that_day(job, tmp_path, done):
    fields = job.model_dump() | done
    row = row_of(job.model_validate(fields, strict=False), tmp_path)
    assert (row.state, row.day) == (JobState.IN_HAND, "2026-05-02")


@pytest.mark.parametrize(
    "read",
    [
        {"build": {"left": {"gap": ("221 mm",)}}},
        {"build": {"spring": {"free_length": "380 mm"}}},
        {"build": {"sag": {"extended": ("200 mm",)}}},
        {"build": {"bearing": {"pull": ("9 N",)}}},
        {"as_found": {"bracket": {"left": ("412 mm",)}}},
        {"as_found": {"handlebars": "level with the caps"}},
    ],
    ids=["gap", "spring", "sag", "pull", "bracket as found", "words as found"],
)
def test_a_job_of_which_one_thing_alone_was_read_is_in_hand(job, tmp_path, read):
    fields = job.model_dump() | read
    row = row_of(job.model_validate(fields, strict=False), tmp_path)
    assert (row.state, row.day) == (JobState.IN_HAND, "")


def test_a_gauge_that_was_chosen_and_not_used_begins_no_job(job, tmp_path):
    fields = job.model_dump() | {"build": {"gauge": "tape", "sag": {"gauge": "tape"}}}
    row = row_of(job.model_validate(fields, strict=False), tmp_path)
    assert row.state is JobState.NOT_BEGUN


@pytest.mark.parametrize(
    ("content", "why"),
    [
        pytest.param(b"", "damaged, or not a job", id="empty"),
        pytest.param(b"{", "damaged, or not a job", id="cut off"),
        pytest.param(b"[" * 100_000, "damaged, or not a job", id="too deep"),
        pytest.param(b"\xff\xfe", "damaged, or not a job", id="not text"),
        pytest.param(b'{"document": "sheet"}', "not a job", id="a sheet"),
        pytest.param(b'{"document": "job", "sheet": 3}', "not a job as", id="sheet is a number"),
        pytest.param(b'{"document": "job", "log": [3]}', "not a job as", id="log of numbers"),
    ],
)
def test_a_file_that_cannot_be_read_is_a_row_that_says_so(tmp_path, content, why):
    path = tmp_path / "odd.job.json"
    path.write_bytes(content)
    row = job_row(path)
    assert (row.bike, row.state) == ("odd", JobState.UNREADABLE)
    assert row.due.startswith(why)


def test_folders_below_are_looked_in_and_other_files_left_alone(tmp_path):
    for place in ("b", "a/deep"):
        (tmp_path / place).mkdir(parents=True)
        shutil.copy(demo("fellside-true.job.json"), tmp_path / place / "x.job.json")
    (tmp_path / "notes.json").write_text("{}", encoding="utf-8")
    (tmp_path / "x.job.json.previous").write_text("{}", encoding="utf-8")
    (tmp_path / ".hidden").mkdir()
    shutil.copy(demo("fellside-true.job.json"), tmp_path / ".hidden" / "y.job.json")
    assert sorted(row.path.relative_to(tmp_path).as_posix() for row in jobs_in(tmp_path)) == [
        "a/deep/x.job.json",
        "b/x.job.json",
    ]


def test_a_folder_that_is_not_there_holds_no_jobs(tmp_path):
    assert list(jobs_in(tmp_path / "gone")) == []


def test_a_row_is_found_by_words_in_any_of_its_columns(tmp_path):
    row = job_row(demo("fellside-true.job.json"))
    assert row.holds(("fellside", "refit"))
    assert not row.holds(("fellside", "gearbox"))
