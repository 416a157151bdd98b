"""Whatever fails while a file is written, the old one is whole and the cause is said."""

from __future__ import annotations

import errno
import os
import stat
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from aligner.storage import files
from aligner.storage.failure import SaveFailed
from aligner.storage.files import previous_path, read_whole, write_whole
from aligner.storage.refusal import UnusableDocument

OLD, NEW = b"old " * 5000, b"new " * 7000
POSIX = pytest.mark.skipif(os.name == "nt", reason="links and permission bits as POSIX has them")


class CountedCalls:
    """Stands in for `os` in the save path: counts its calls, and fails the chosen one."""

    def __init__(self, fail_at: int = 0, code: int = errno.ENOSPC, largest_write: int = 0) -> None:
        self.made: list[str] = []
        self._fail_at = fail_at
        self._code = code
        self._largest_write = largest_write

    def __getattr__(self, name: str) -> Any:
        real = getattr(os, name)
        if not callable(real) or name in ("getpid", "fsencode", "fspath"):
            return real

        def counted(*args: Any, **kwargs: Any) -> Any:
            self.made.append(name)
            if len(self.made) == self._fail_at:
                if name == "close":
                    real(*args)  # a handle is gone even where closing it fails
                raise OSError(self._code, os.strerror(self._code))
            if name == "write" and self._largest_write:
                return real(args[0], bytes(args[1])[: self._largest_write])
            return real(*args, **kwargs)

        return counted


@pytest.fixture
def document(tmp_path: Path) -> Path:
    path = tmp_path / "refit.job.json"
    path.write_bytes(OLD)
    return path


def _left_over(folder: Path) -> list[str]:
    return [entry.name for entry in folder.iterdir() if entry.name.endswith(".part")]


def test_a_new_file_and_then_another_content(tmp_path: Path) -> None:
    path = tmp_path / "refit.job.json"

    write_whole(path, OLD)
    write_whole(path, NEW)

    assert path.read_bytes() == NEW
    assert [entry.name for entry in tmp_path.iterdir()] == ["refit.job.json"]


def test_the_previous_version_is_kept_until_the_next_save(document: Path) -> None:
    write_whole(document, NEW, keep_previous=True)
    assert previous_path(document).read_bytes() == OLD

    write_whole(document, b"newest", keep_previous=True)
    assert previous_path(document).read_bytes() == NEW


def test_saving_the_same_again_leaves_the_previous_version(document: Path) -> None:
    write_whole(document, NEW, keep_previous=True)
    write_whole(document, NEW, keep_previous=True)

    assert previous_path(document).read_bytes() == OLD


def test_the_time_given_back_is_the_files_own(document: Path) -> None:
    assert write_whole(document, NEW) == document.stat().st_mtime_ns


def test_bytes_are_on_the_disk_before_the_name_changes_and_the_folder_after(
    document: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls = CountedCalls()
    monkeypatch.setattr(files, "os", calls)

    write_whole(document, NEW)

    order = [name for name in calls.made if name in ("write", "fsync", "replace")]
    assert order == ["write", "fsync", "replace", "fsync"]


def test_a_drive_that_takes_a_little_at_a_time_gets_it_all(
    document: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(files, "os", CountedCalls(largest_write=999))

    write_whole(document, NEW)

    assert document.read_bytes() == NEW


CODES = [errno.ENOSPC, errno.EIO, errno.EACCES, errno.EROFS]


@pytest.mark.parametrize("code", CODES, ids=[errno.errorcode[code] for code in CODES])
@pytest.mark.parametrize("is_new", [False, True], ids=["in place of an old one", "a new file"])
def test_each_call_of_the_save_path_may_fail_once(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, code: int, is_new: bool
) -> None:
    calls = CountedCalls()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", calls)
        _save_into(tmp_path / "counted", is_new)
    failures = 0

    for number in range(1, len(calls.made) + 1):
        folder = tmp_path / str(number)
        failing = CountedCalls(fail_at=number, code=code)
        with monkeypatch.context() as patched:
            patched.setattr(files, "os", failing)
            failed = _save_into(folder, is_new)
        path = folder / "refit.job.json"
        found = path.read_bytes() if path.exists() else None
        if failed is None:
            assert found == NEW
        elif "did not confirm" in str(failed):
            assert found == NEW
            failures += 1
        else:
            assert found == (None if is_new else OLD)
            failures += 1
        assert failing.made[-1] == "unlink" or not _left_over(folder)
        assert failed is None or "\n" not in str(failed)

    assert len(calls.made) >= (8 if is_new else 18)
    assert failures >= (5 if is_new else 14)


def _save_into(folder: Path, is_new: bool) -> SaveFailed | None:
    folder.mkdir()
    path = folder / "refit.job.json"
    if not is_new:
        path.write_bytes(OLD)
    try:
        write_whole(path, NEW, keep_previous=True)
    except SaveFailed as failed:
        return failed
    return None


def test_a_drive_that_cannot_flush_a_folder_is_no_failure(
    document: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    calls = CountedCalls()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", calls)
        write_whole(document, NEW)
    last_flush = max(number for number, name in enumerate(calls.made, 1) if name == "fsync")
    monkeypatch.setattr(files, "os", CountedCalls(fail_at=last_flush, code=errno.EINVAL))

    write_whole(document, OLD)

    assert document.read_bytes() == OLD


@POSIX
@pytest.mark.parametrize("mode", [0o600, 0o640, 0o664])
def test_permissions_are_kept_on_the_document_and_its_previous_version(
    document: Path, mode: int
) -> None:
    document.chmod(mode)

    write_whole(document, NEW, keep_previous=True)

    assert stat.S_IMODE(document.stat().st_mode) == mode
    assert stat.S_IMODE(previous_path(document).stat().st_mode) == mode


@POSIX
def test_a_new_file_has_the_permissions_the_person_usually_gives(tmp_path: Path) -> None:
    before = os.umask(0o027)
    try:
        write_whole(tmp_path / "new", NEW)
    finally:
        os.umask(before)

    assert stat.S_IMODE((tmp_path / "new").stat().st_mode) == 0o640


@POSIX
def test_a_symlink_stays_one_and_the_file_behind_it_is_replaced(
    document: Path, tmp_path: Path
) -> None:
    (tmp_path / "elsewhere").mkdir()
    link = tmp_path / "elsewhere" / "link.job.json"
    link.symlink_to(document)

    write_whole(link, NEW, keep_previous=True)

    assert link.is_symlink()
    assert document.read_bytes() == NEW
    assert previous_path(document).read_bytes() == OLD


@POSIX
def test_a_symlink_to_nothing_makes_the_file_it_names(tmp_path: Path) -> None:
    link = tmp_path / "link"
    link.symlink_to(tmp_path / "new")

    write_whole(link, NEW)

    assert (tmp_path / "new").read_bytes() == NEW


def _folder_gone(path: Path) -> Path:
    return path.parent / "gone" / path.name


def _a_folder(path: Path) -> Path:
    path.unlink()
    path.mkdir()
    return path


def _write_protected(path: Path) -> Path:
    path.chmod(0o444)
    return path


def _long_name(path: Path) -> Path:
    return path.with_name("x" * 300)


def _null(path: Path) -> Path:
    return path.with_name("a\0b")


def _circle(path: Path) -> Path:
    path.with_name("one").symlink_to("two")
    path.with_name("two").symlink_to("one")
    return path.with_name("one")


def _pipe(path: Path) -> Path:
    os.mkfifo(path.with_name("pipe"))
    return path.with_name("pipe")


BAD_PLACES: dict[str, tuple[Callable[[Path], Path], str]] = {
    "folder gone": (
        _folder_gone,
        "refit.job.json: the folder “FOLDER/gone” is not there, so it was not saved; put it back "
        "(is its drive plugged in?), or save it in another folder",
    ),
    "a folder": (
        _a_folder,
        "refit.job.json: a folder has that name, so it was not saved; give it another name",
    ),
    "write-protected": (
        _write_protected,
        "refit.job.json: the file is write-protected, so it was not saved; allow writing to it, "
        "or save under another name",
    ),
    "long name": (
        _long_name,
        f"{'x' * 300}: the file name is too long, so it was not saved; give it a shorter name",
    ),
    "null character": (_null, "a\0b: this is not a file name; give it another name"),
    "links in a circle": (
        _circle,
        "one: its links lead round in a circle, so it was not saved; give it another name",
    ),
    "a pipe": (_pipe, "pipe: that is not an ordinary file; give it another name"),
}


@POSIX
@pytest.mark.parametrize(("place", "sentence"), BAD_PLACES.values(), ids=BAD_PLACES.keys())
def test_a_place_that_cannot_be_written_is_refused_cause_first(
    document: Path, place: Callable[[Path], Path], sentence: str
) -> None:
    path = place(document)

    with pytest.raises(SaveFailed) as failed:
        write_whole(path, NEW)

    assert str(failed.value) == sentence.replace("FOLDER", str(document.parent))
    assert not document.is_file() or document.read_bytes() == OLD


@pytest.fixture
def as_nobody() -> Iterator[Callable[[Path], None]]:
    """Gives up the right to write everywhere, if the tests run with it."""
    if sys.platform == "win32" or os.geteuid() != 0:
        yield lambda folder: None
        return

    def give_up(folder: Path) -> None:
        for parent in folder.parents:
            if parent.stat().st_uid == 0 and len(parent.parts) > 2:
                parent.chmod(parent.stat().st_mode | 0o011)
        os.seteuid(65534)

    yield give_up
    os.seteuid(0)


@POSIX
def test_a_read_only_folder_keeps_the_old_file(
    document: Path, as_nobody: Callable[[Path], None]
) -> None:
    document.parent.chmod(0o555)
    as_nobody(document.parent)

    with pytest.raises(SaveFailed) as failed:
        write_whole(document, NEW)

    assert str(failed.value) == (
        "refit.job.json: writing is not allowed there, so it was not saved; "
        "allow writing to the folder, or save it in another one"
    )
    assert document.read_bytes() == OLD


@POSIX
def test_a_drive_that_takes_no_more_keeps_the_old_file(document: Path) -> None:
    import resource
    import signal

    before = resource.getrlimit(resource.RLIMIT_FSIZE)
    heard = signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    resource.setrlimit(resource.RLIMIT_FSIZE, (len(OLD) + 100, before[1]))
    try:
        with pytest.raises(SaveFailed, match="does not take a file this large"):
            write_whole(document, NEW)
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, before)
        signal.signal(signal.SIGXFSZ, heard)

    assert document.read_bytes() == OLD
    assert not _left_over(document.parent)


def test_who_does_not_agree_stops_the_save_before_anything_is_written(document: Path) -> None:
    def agree(found: bytes | None) -> None:
        assert found == OLD
        raise SaveFailed("refit", "no")

    with pytest.raises(SaveFailed, match="refit: no"):
        write_whole(document, NEW, keep_previous=True, agree=agree)

    assert [entry.name for entry in document.parent.iterdir()] == ["refit.job.json"]


def test_a_change_while_the_new_file_is_written_stops_the_swap(document: Path) -> None:
    seen: list[bytes | None] = []

    def agree(found: bytes | None) -> None:
        seen.append(found)
        if found == b"theirs":
            raise SaveFailed("refit", "changed")
        document.write_bytes(b"theirs")

    with pytest.raises(SaveFailed, match="changed"):
        write_whole(document, NEW, agree=agree)

    assert seen == [OLD, b"theirs"]
    assert document.read_bytes() == b"theirs"
    assert not _left_over(document.parent)


def test_what_a_killed_save_left_goes_after_a_day_and_nothing_else(document: Path) -> None:
    now = document.stat().st_mtime
    names = {
        ".refit.job.json.77-1.part": 2 * 86400,
        ".refit.job.json.77-2.part": 3600,
        ".other.job.json.77-1.part": 2 * 86400,
        ".refit.job.json.notes": 2 * 86400,
    }
    for name, age in names.items():
        document.with_name(name).write_bytes(b"x")
        os.utime(document.with_name(name), (now - age, now - age))

    write_whole(document, NEW)

    assert not document.with_name(".refit.job.json.77-1.part").exists()
    assert len(list(document.parent.iterdir())) == 4


def test_the_previous_version_of_a_very_long_name_fits_the_drive(tmp_path: Path) -> None:
    path = tmp_path / ("é" * 120 + ".job.json")
    path.write_bytes(OLD)

    write_whole(path, NEW, keep_previous=True)

    assert previous_path(path).read_bytes() == OLD


@pytest.mark.parametrize(
    ("make", "sentence"),
    [
        (lambda path: path.with_name("no"), "there is no such file; check its name"),
        (lambda path: path / "x", "there is no such file; check its name"),
        (lambda path: path.parent, "this is a folder; name a job document in it"),
        (_null, "this is not a file name; check its name"),
    ],
    ids=["none", "under a file", "a folder", "null character"],
)
def test_a_file_that_cannot_be_read_is_refused_in_words(
    document: Path, make: Callable[[Path], Path], sentence: str
) -> None:
    with pytest.raises(UnusableDocument) as refused:
        read_whole(make(document), 100)

    assert str(refused.value) == sentence


@POSIX
def test_a_file_one_may_not_read_is_refused_in_words(
    document: Path, as_nobody: Callable[[Path], None]
) -> None:
    document.chmod(0)
    as_nobody(document.parent)

    with pytest.raises(UnusableDocument, match="reading it is not allowed"):
        read_whole(document, 100)


def test_a_large_file_is_read_one_byte_past_the_limit(document: Path) -> None:
    assert len(read_whole(document, 100)) == 101
