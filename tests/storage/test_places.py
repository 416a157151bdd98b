"""Folders follow each platform's convention, and what people type becomes a safe file name."""

from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from aligner.storage.places import (
    Computer,
    configuration_folder,
    documents_folder,
    ending_of,
    free_path,
    job_path,
    recovery_folder,
    safe_name,
    sheet_path,
)

HOME = Path("/home/ann")


def test_the_folders_on_linux_follow_the_desktops_convention() -> None:
    # XDG Base Directory Specification 0.8: $XDG_CONFIG_HOME, else ~/.config; $XDG_STATE_HOME,
    # else ~/.local/state (from memory)
    plain = Computer("linux", {}, HOME)
    named = Computer("linux", {"XDG_CONFIG_HOME": "/c", "XDG_STATE_HOME": "/s"}, HOME)

    assert configuration_folder(plain) == HOME / ".config/aligner"
    assert recovery_folder(plain) == HOME / ".local/state/aligner/recovery"
    assert configuration_folder(named) == Path("/c/aligner")
    assert recovery_folder(named) == Path("/s/aligner/recovery")


def test_a_folder_that_is_no_full_path_is_passed_over() -> None:
    # the same specification: "If an implementation encounters a relative path ... it should
    # consider the path invalid and ignore it" (from memory)
    relative = Computer("linux", {"XDG_CONFIG_HOME": "c", "XDG_STATE_HOME": ""}, HOME)

    assert configuration_folder(relative) == HOME / ".config/aligner"
    assert recovery_folder(relative) == HOME / ".local/state/aligner/recovery"


@pytest.mark.parametrize(
    ("line", "documents"),
    [
        ('XDG_DOCUMENTS_DIR="$HOME/Papers"', "HOME/Papers"),
        ('XDG_DOCUMENTS_DIR="/data/papers"', "/data/papers"),
        ('XDG_DOCUMENTS_DIR="$HOME"', "HOME"),
        ('XDG_DOCUMENTS_DIR="papers"', "HOME/Documents"),
        ('# XDG_DOCUMENTS_DIR="/x"\nXDG_MUSIC_DIR="/m"', "HOME/Documents"),
        ("", "HOME/Documents"),
    ],
)
def test_the_documents_folder_on_linux_is_the_one_the_person_chose(
    tmp_path: Path, line: str, documents: str
) -> None:
    (tmp_path / ".config").mkdir()
    (tmp_path / ".config/user-dirs.dirs").write_text(f"# comment\n{line}\n")

    found = documents_folder(Computer("linux", {}, tmp_path))

    assert found == Path(documents.replace("HOME", str(tmp_path))) / "Aligner"


def test_without_the_persons_choice_it_is_documents(tmp_path: Path) -> None:
    assert documents_folder(Computer("linux", {}, tmp_path)) == tmp_path / "Documents/Aligner"


def test_the_folders_on_macos() -> None:
    here = Computer("darwin", {"XDG_CONFIG_HOME": "/c"}, HOME)
    support = HOME / "Library/Application Support/Aligner"

    assert documents_folder(here) == HOME / "Documents/Aligner"
    assert configuration_folder(here) == support
    assert recovery_folder(here) == support / "Recovery"


def test_the_folders_on_windows() -> None:
    named = Computer("win32", {"APPDATA": "/roaming", "LOCALAPPDATA": "/local"}, HOME)
    plain = Computer("win32", {}, HOME)

    assert configuration_folder(named) == Path("/roaming/Aligner")
    assert recovery_folder(named) == Path("/local/Aligner/Recovery")
    assert configuration_folder(plain) == HOME / "AppData/Roaming/Aligner"
    assert recovery_folder(plain) == HOME / "AppData/Local/Aligner/Recovery"


def test_a_job_goes_into_the_folder_of_its_bike() -> None:
    documents = Path("/d/Aligner")

    assert job_path(documents, "the red one", "fork seals / 2026") == (
        documents / "the red one" / "fork seals - 2026.job.json"
    )
    assert job_path(documents, "", " ") == documents / "Bike" / "Job.job.json"
    assert sheet_path(documents, "a:b") == documents / "a-b" / "a-b.sheet.json"


@pytest.mark.parametrize(
    ("typed", "safe"),
    [
        ("front end refit", "front end refit"),
        ("  two   spaces\tand\nlines ", "two spaces and lines"),
        ("../../etc/passwd", "_..-etc-passwd"),
        ("C:\\bikes", "C--bikes"),
        ('what? "this" <is> *it*|', "what- -this- -is- -it--"),
        ("ends with dots...", "ends with dots"),
        (".hidden", "hidden"),
        ("..", "x"),
        ("/", "x"),
        ("", "x"),
        ("CON", "_CON"),
        ("con.job", "_con.job"),
        ("Com1", "_Com1"),
        ("LPT²", "_LPT²"),
        ("COM10", "COM10"),
        ("console", "console"),
        ("-rf", "_rf"),
        ("e\u0301", "é"),
        ("a\u202eb\u0000c", "abc"),
        ("half \ud83d", "half"),
        ("Ω 🔧 Ünïcode", "Ω 🔧 Ünïcode"),
        ("é" * 100, "é" * 60),
        ("x" * 119 + ". y", "x" * 119),
    ],
)
def test_what_was_typed_becomes_a_name_that_every_computer_takes(typed: str, safe: str) -> None:
    assert safe_name(typed, "x") == safe


@given(st.text(st.characters(), max_size=300))
def test_every_text_becomes_a_safe_name(typed: str) -> None:
    name = safe_name(typed, "Job")

    assert 1 <= len(name.encode()) <= 121
    assert not set(name) & set('<>:"/\\|?*\0\n')
    assert name == name.strip(" ")
    assert not name.startswith((".", "-"))
    assert not name.endswith(".")
    assert Path(name).name == name
    assert safe_name(name, "Job") == name


def test_a_name_that_is_taken_gets_a_number(tmp_path: Path) -> None:
    path = tmp_path / "refit.job.json"
    assert free_path(path) == path
    path.touch()
    (tmp_path / "refit 2.job.json").touch()

    assert free_path(path) == tmp_path / "refit 3.job.json"


@pytest.mark.parametrize(
    ("name", "ending"),
    [
        ("a.job.json", ".job.json"),
        ("a.JOB.json", ".JOB.json"),
        ("a.sheet.json", ".sheet.json"),
        ("a.json", ".json"),
        ("a b. c.job.json", ".job.json"),
        ("a", ""),
    ],
)
def test_the_ending_of_a_document_is_one(name: str, ending: str) -> None:
    assert ending_of(Path(name)) == ending
