"""The desktop's own files: valid by the desktop's own checkers, and put where it looks."""

import configparser
import shutil
import subprocess
import xml.etree.ElementTree as ElementTree
from pathlib import Path

import pytest

from aligner import __version__
from aligner.data_files import resource
from aligner.desktop_entry import IDENTIFIER, add_to_desktop, main, remove_from_desktop


def entry_in(folder):
    parser = configparser.RawConfigParser(interpolation=None)
    parser.optionxform = str
    parser.read(folder / "applications" / f"{IDENTIFIER}.desktop", encoding="utf-8")
    return parser["Desktop Entry"]


def test_the_entry_starts_the_program_it_was_made_with(tmp_path):
    add_to_desktop(tmp_path, Path("/opt/bench/bin/aligner"))
    entry = entry_in(tmp_path)
    assert entry["Exec"] == "/opt/bench/bin/aligner %f"
    assert entry["TryExec"] == "/opt/bench/bin/aligner"
    assert (tmp_path / "icons/hicolor/scalable/apps" / f"{entry['Icon']}.svg").exists()


def test_a_path_with_a_blank_is_quoted_as_the_specification_asks(tmp_path):
    add_to_desktop(tmp_path, Path("/home/a b/$bin/aligner"))
    # Desktop Entry Specification 1.5, "The Exec key": quoted, `$` escaped, and the backslash
    # escaped once more as in every string of the file (seen).
    assert entry_in(tmp_path)["Exec"] == '"/home/a b/\\\\$bin/aligner" %f'


def test_removing_leaves_nothing_behind(tmp_path):
    written = add_to_desktop(tmp_path, Path("/opt/aligner"))
    assert sorted(remove_from_desktop(tmp_path)) == sorted(written)
    assert not any(path.exists() for path in written)
    assert remove_from_desktop(tmp_path) == []


def test_the_command_writes_below_the_users_data_folder(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    program = tmp_path / "bin" / "aligner"
    program.parent.mkdir()
    program.touch()
    monkeypatch.setattr("sys.executable", str(program.with_name("python")))
    assert main([]) == 0
    assert str(tmp_path) in capsys.readouterr().out
    assert main(["--remove"]) == 0


def test_without_the_program_nothing_is_written(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    monkeypatch.setattr("sys.executable", str(tmp_path / "python"))
    assert main([]) == 2
    assert "install it first" in capsys.readouterr().err
    assert list(tmp_path.iterdir()) == []


def test_entry_file_type_and_description_name_each_other(tmp_path):
    add_to_desktop(tmp_path, Path("/opt/aligner"))
    kind = "application/vnd.aligner.job+json"
    assert entry_in(tmp_path)["MimeType"] == f"{kind};"
    assert kind in resource(f"desktop/{IDENTIFIER}.xml").read_text(encoding="utf-8")
    about = ElementTree.parse(resource(f"desktop/{IDENTIFIER}.metainfo.xml")).getroot()
    assert about.findtext("id") == IDENTIFIER
    assert about.findtext("provides/mediatype") == kind
    assert about.findtext("launchable") == f"{IDENTIFIER}.desktop"
    release = about.find("releases/release")
    assert release is not None
    assert release.get("version") == __version__


@pytest.mark.parametrize(
    ("checker", "name"),
    [
        (["desktop-file-validate"], f"{IDENTIFIER}.desktop"),
        (["appstreamcli", "validate", "--no-net"], f"{IDENTIFIER}.metainfo.xml"),
    ],
    ids=["entry", "description"],
)
def test_the_desktops_own_checkers_pass_them(checker, name):
    if shutil.which(checker[0]) is None:
        pytest.skip(f"{checker[0]} is not installed here")
    done = subprocess.run(
        [*checker, str(resource(f"desktop/{name}"))], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
    assert done.stdout.strip() == "" or "successful" in done.stdout


def test_the_file_type_is_known_once_it_is_added(tmp_path):
    if shutil.which("update-mime-database") is None:
        pytest.skip("update-mime-database is not installed here")
    add_to_desktop(tmp_path, Path("/opt/aligner"))
    assert "*.job.json" in (tmp_path / "mime" / "globs2").read_text(encoding="utf-8")
