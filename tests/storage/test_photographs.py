"""Photographs are known by their content, and no name leads out of the job's folder."""

from __future__ import annotations

import errno
import os
from pathlib import Path

import pytest
from PySide6.QtCore import QBuffer, QIODevice
from PySide6.QtGui import QImage

from aligner.storage import files, photographs
from aligner.storage.failure import SaveFailed
from aligner.storage.photographs import (
    UnusablePhotograph,
    carry_photographs,
    keep_photograph,
    photograph_path,
)
from tests.storage.test_files import CountedCalls

POSIX = pytest.mark.skipif(os.name == "nt", reason="links and pipes as POSIX has them")


def picture(kind: str, width: int = 64, height: int = 48) -> bytes:
    """A picture as Qt writes it: a writer of these formats other than our reader."""
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(0x336699)
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    assert image.save(buffer, kind)
    return bytes(buffer.data().data())


@pytest.fixture
def job(tmp_path: Path) -> Path:
    folder = tmp_path / "bike"
    folder.mkdir()
    path = folder / "refit.job.json"
    path.write_bytes(b"{}")
    return path


def source_of(tmp_path: Path, content: bytes, name: str = "left seal.jpg") -> Path:
    path = tmp_path / name
    path.write_bytes(content)
    return path


@pytest.mark.parametrize(("kind", "ending"), [("JPEG", ".jpg"), ("PNG", ".png")])
@pytest.mark.parametrize("name", ["left seal.jpg", "left seal.txt", "left seal"])
def test_a_photograph_is_copied_and_named_by_its_content(
    tmp_path: Path, job: Path, kind: str, ending: str, name: str
) -> None:
    content = picture(kind)
    source = source_of(tmp_path, content, name)

    kept = keep_photograph(job, source)

    assert kept.startswith("photographs/left seal-")
    assert kept.endswith(ending)
    path = photograph_path(job, kept)
    assert path.parent == job.parent / "photographs"
    assert path.read_bytes() == content == source.read_bytes()
    assert QImage(str(path)).width() == 64


def test_the_same_one_kept_twice_is_one_file_and_another_of_its_name_is_another(
    tmp_path: Path, job: Path
) -> None:
    first = keep_photograph(job, source_of(tmp_path, picture("JPEG")))
    again = keep_photograph(job, source_of(tmp_path, picture("JPEG")))
    other = keep_photograph(job, source_of(tmp_path, picture("JPEG", 32, 32)))

    assert first == again
    assert first != other
    assert len(list((job.parent / "photographs").iterdir())) == 2


@pytest.mark.parametrize(
    "stem", ["x" * 200, "é" * 100, "軸" * 80, "con", "a:b?", "-", "- -", ".hidden", "e\u0301" * 30]
)
def test_any_name_becomes_one_that_is_found_again(tmp_path: Path, job: Path, stem: str) -> None:
    kept = keep_photograph(job, source_of(tmp_path, picture("PNG"), f"{stem}.png"))

    assert photograph_path(job, kept).read_bytes() == picture("PNG")


def test_a_file_that_took_the_name_is_left_alone(tmp_path: Path, job: Path) -> None:
    source = source_of(tmp_path, picture("JPEG"))
    first = photograph_path(job, keep_photograph(job, source))
    first.write_bytes(b"drawn on by the owner")

    again = keep_photograph(job, source)

    assert first.read_bytes() == b"drawn on by the owner"
    assert photograph_path(job, again).read_bytes() == picture("JPEG")


@pytest.mark.parametrize(
    ("content", "words"),
    [
        pytest.param(b"", "neither a JPEG nor a PNG", id="empty"),
        pytest.param(b"<svg onload='x'/>", "neither a JPEG nor a PNG", id="svg"),
        pytest.param(b"GIF89a" + bytes(100), "neither a JPEG nor a PNG", id="gif"),
        pytest.param(picture("JPEG")[:100], "cut short", id="JPEG cut short"),
        pytest.param(picture("PNG")[:60], "cut short", id="PNG cut short"),
        pytest.param(b"\xff\xd8\xff" + bytes(5000), "damaged", id="JPEG in name only"),
        pytest.param(b"\xff\xd8\xff" + b"\xff" * 5000, "damaged", id="JPEG of fill bytes"),
        pytest.param(
            picture("PNG")[:16] + (60_000).to_bytes(4) * 2 + picture("PNG")[24:],
            "60000 by 60000 dots",
            id="more dots than can be shown",
        ),
    ],
)
def test_what_is_no_photograph_is_refused_and_nothing_is_written(
    tmp_path: Path, job: Path, content: bytes, words: str
) -> None:
    with pytest.raises(UnusablePhotograph, match=words) as refused:
        keep_photograph(job, source_of(tmp_path, content))

    assert "\n" not in str(refused.value)
    assert not (job.parent / "photographs").exists()


def test_one_larger_than_the_limit_is_refused(
    tmp_path: Path, job: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(photographs, "LARGEST_PHOTOGRAPH_BYTES", 500)

    with pytest.raises(UnusablePhotograph, match="larger than"):
        keep_photograph(job, source_of(tmp_path, picture("JPEG") + bytes(501)))


@pytest.mark.parametrize("make", [lambda p: p / "none.jpg", lambda p: p], ids=["none", "folder"])
def test_what_cannot_be_read_is_refused(tmp_path: Path, job: Path, make: object) -> None:
    assert callable(make)
    with pytest.raises(UnusablePhotograph):
        keep_photograph(job, make(tmp_path))


@POSIX
def test_a_pipe_is_refused_and_not_waited_for(tmp_path: Path, job: Path) -> None:
    os.mkfifo(tmp_path / "pipe.jpg")

    with pytest.raises(UnusablePhotograph, match="not an ordinary file"):
        keep_photograph(job, tmp_path / "pipe.jpg")


@pytest.mark.parametrize(
    "name",
    [
        "../private.png",
        "photographs/../private.png",
        "photographs/..",
        "photographs/",
        "photographs",
        "private.png",
        "/etc/passwd",
        "photographs//etc/passwd",
        "photographs/a/b.jpg",
        "photographs\\..\\x.png",
        "C:\\x.png",
        "photographs/C:x.png",
        "photographs/nul",
        "photographs/a\0.png",
        "photographs/\u202egnp.x",
        "file:///etc/passwd",
        "",
    ],
)
def test_no_name_leads_out_of_the_folder(job: Path, name: str) -> None:
    with pytest.raises(UnusablePhotograph, match="leads out of the job's folder"):
        photograph_path(job, name)


@POSIX
@pytest.mark.parametrize("is_folder", [True, False], ids=["folder", "file"])
def test_no_link_leads_out_of_the_folder(tmp_path: Path, job: Path, is_folder: bool) -> None:
    outside = tmp_path / "outside"
    outside.mkdir()
    (outside / "a.png").write_bytes(picture("PNG"))
    folder = job.parent / "photographs"
    if is_folder:
        folder.symlink_to(outside)
    else:
        folder.mkdir()
        (folder / "a.png").symlink_to(outside / "a.png")

    with pytest.raises(UnusablePhotograph):
        photograph_path(job, "photographs/a.png")


def test_each_call_of_the_copy_may_fail_and_nothing_half_written_is_left(
    tmp_path: Path, job: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    content = picture("JPEG")
    source = source_of(tmp_path, content)
    calls = CountedCalls()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", calls)
        photograph_path(job, keep_photograph(job, source)).unlink()
    failures = 0
    for number in range(1, len(calls.made) + 1):
        failing = CountedCalls(fail_at=number, code=errno.ENOSPC)
        with monkeypatch.context() as patched:
            patched.setattr(files, "os", failing)
            try:
                keep_photograph(job, source)
            except SaveFailed:
                failures += 1
        for left in (job.parent / "photographs").iterdir():
            assert left.suffix == ".jpg"
            assert left.read_bytes() == content
            left.unlink()
    assert failures >= 5


def test_photographs_go_with_a_job_that_is_saved_elsewhere(tmp_path: Path, job: Path) -> None:
    name = keep_photograph(job, source_of(tmp_path, picture("JPEG")))
    (tmp_path / "other").mkdir()
    new = tmp_path / "other" / "refit.job.json"

    missing = carry_photographs(
        [name, name, "photographs/gone-12345678.jpg", "../private.png"], job, new
    )

    assert photograph_path(new, name).read_bytes() == picture("JPEG")
    assert photograph_path(job, name).exists()
    assert missing == ("photographs/gone-12345678.jpg", "../private.png")


def test_a_photograph_that_stands_there_already_is_left(tmp_path: Path, job: Path) -> None:
    name = keep_photograph(job, source_of(tmp_path, picture("JPEG")))
    (tmp_path / "other" / "photographs").mkdir(parents=True)
    new = tmp_path / "other" / "refit.job.json"
    photograph_path(new, name).write_bytes(b"drawn on")

    assert carry_photographs([name], job, new) == ()
    assert carry_photographs([name], job, job) == ()

    assert photograph_path(new, name).read_bytes() == b"drawn on"
