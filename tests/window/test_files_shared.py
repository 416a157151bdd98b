"""Two windows on one document, and a disk that does not do as it should: nothing is lost."""

import errno
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.job.inspect import Found
from aligner.storage import files
from aligner.storage.document_file import load_job, save_job
from aligner.storage.files import previous_path
from aligner.storage.lock import holder, lock_path
from aligner.storage.photographs import keep_photograph, photograph_path
from aligner.window.files import job_dialogs
from aligner.window.main_window import MainWindow
from tests.storage.test_files import CountedCalls
from tests.window.conftest import Clock


@pytest.fixture
def make(qtbot):
    """Makes windows; each is closed without a question."""
    made = []

    def window(path=None):
        new = MainWindow(theme_for(Appearance.LIGHT), now=Clock())
        qtbot.addWidget(new)
        if path is not None:
            new.open_path(path)
        new.show()
        made.append(new)
        return new

    yield window
    for each in made:
        each.open_job.drop_draft()
        each.open_job.edits.setClean()
        each.close()


@pytest.fixture
def document(tmp_path, demo_path):
    path = tmp_path / "bike" / "refit.job.json"
    path.parent.mkdir()
    path.write_bytes(demo_path.read_bytes())
    return path


def answers(window):
    return [button.text() for button in window.question.buttons]


def answer(window, words):
    next(button for button in window.question.buttons if button.text() == words).click()


def entitle(window, title):
    window.open_job.edit("title", lambda job: job.with_changes(title=title))


def title_in(path):
    return json.loads(path.read_text())["title"]


def look(qtbot, window):
    """Have the window look at its file, as when it comes to the front."""
    window._watch.look()
    window._background.wait()
    qtbot.wait(1)


@pytest.fixture
def named(monkeypatch):
    """Answers the dialog for a file's name with the one set here."""
    chosen = {"path": None}
    monkeypatch.setattr(
        job_dialogs.QFileDialog,
        "getSaveFileName",
        lambda *_: (str(chosen["path"] or ""), ""),
    )
    monkeypatch.setattr(
        job_dialogs.QFileDialog,
        "getOpenFileName",
        lambda *_: (str(chosen["path"] or ""), ""),
    )
    return chosen


def test_the_second_window_says_who_has_it_since_when_and_opens_to_read(make, document):
    make(document)
    second = make(document)

    assert "refit.job.json is open for " in second.question.text
    assert f"(process {os.getpid()}) since 20" in second.question.text
    assert answers(second) == ["Only read", "Take it over"]
    assert "(to read)" in second.windowTitle()
    assert second.open_job.job == load_job(document)[0]


def test_what_is_typed_in_the_second_window_stays_there_and_the_file_is_not_touched(
    qtbot, make, document, named, tmp_path
):
    make(document)
    second = make(document)
    answer(second, "Only read")
    before = document.read_bytes()
    second.activateWindow()
    cell = second.page(Stage.ALIGN).height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "9.87")

    assert "stays in this window and is not written" in second.question.text
    assert not any(button.hasFocus() for button in second.question.buttons)
    assert not second.save()
    assert document.read_bytes() == before
    assert answers(second) == ["Save under another name", "Take it over", "Stay"]
    assert "9.87 mm" in [str(one) for one in second.open_job.job.align.protrusion.left]

    named["path"] = tmp_path / "mine.job.json"
    answer(second, "Save under another name")
    assert "9.87 mm" in (tmp_path / "mine.job.json").read_text()
    assert "(to read)" not in second.windowTitle()
    assert document.read_bytes() == before


def test_closing_gives_the_document_free_for_the_next(make, document):
    first = make(document)
    assert lock_path(document).exists()
    first.close()

    assert not lock_path(document).exists()
    assert make(document).question.text == ""


def test_opening_another_and_a_new_one_give_it_free_too(make, document, tmp_path):
    other = tmp_path / "other.job.json"
    save_job(Job(title="other"), other)
    window = make(document)
    window.open_path(other)
    assert not lock_path(document).exists()
    assert lock_path(other).exists()

    window.filing.new()
    assert not lock_path(other).exists()


def test_a_document_left_behind_by_a_program_that_is_gone_can_be_taken_over(make, document):
    code = (
        "import sys; from pathlib import Path; from aligner.storage.lock import take; "
        "take(Path(sys.argv[1]))"
    )
    subprocess.run([sys.executable, "-c", code, str(document)], check=True)
    window = make(document)

    assert "was left open by" in window.question.text
    assert answers(window)[0] == "Take it over"
    answer(window, "Take it over")
    entitle(window, "mine now")
    assert window.save()

    assert title_in(document) == "mine now"
    assert holder(document).worker.process == os.getpid()


def test_the_first_learns_that_it_was_taken_over_and_loses_nothing(qtbot, make, document):
    first = make(document)
    entitle(first, "typed before")
    second = make(document)
    answer(second, "Take it over")

    look(qtbot, first)
    assert "Another program has taken the job over" in first.question.text
    entitle(first, "typed after")
    assert not first.save()
    assert title_in(document) == "front end refit"
    assert first.open_job.job.title == "typed after"

    entitle(second, "second's")
    assert second.save()
    assert title_in(document) == "second's"


def test_one_taken_over_between_two_looks_is_noticed_at_the_save(make, document):
    first, second = make(document), make(document)
    answer(second, "Take it over")
    entitle(first, "typed")

    assert not first.save()
    assert "is open for" in first.question.text


def test_a_lock_file_that_a_synchronised_folder_lost_is_made_again(qtbot, make, document):
    window = make(document)
    lock_path(document).unlink()

    look(qtbot, window)

    assert window.question.text == ""
    assert lock_path(document).exists()


def test_the_lock_is_renewed_by_the_look_every_minute(qtbot, make, document):
    window = make(document)
    os.utime(lock_path(document), (1, 1))

    look(qtbot, window)

    assert not holder(document).is_left_behind()
    assert window._watch._timer.isActive()
    assert window._watch._timer.interval() == 60_000


def change_from_outside(document):
    job, file = load_job(document)
    save_job(job.with_changes(title="theirs"), document, file)


def test_a_change_on_the_disk_is_told_when_the_window_comes_to_the_front(qtbot, make, document):
    window = make(document)
    change_from_outside(document)

    look(qtbot, window)
    assert "was changed by another program since it was opened" in window.question.text
    answer(window, "Open it as it is now")

    assert window.open_job.job.title == "theirs"
    assert window.question.text == ""
    look(qtbot, window)
    assert window.question.text == ""


def test_a_question_nobody_asked_for_leaves_the_keyboard_where_it_is_until_f6(
    qtbot, make, document
):
    window = make(document)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.go_to(Stage.ALIGN)
    cell = window.page(Stage.ALIGN).height_card.boxes["left"].first_cell
    cell.setFocus()
    look(qtbot, window)  # the look of coming to the front is over
    change_from_outside(document)
    look(qtbot, window)
    assert answers(window) == ["Open it as it is now", "Stay with this"]
    assert cell.hasFocus()

    qtbot.keyClick(cell, Qt.Key.Key_F6)
    assert window.question.buttons[0].hasFocus()
    qtbot.keyClick(window.question.buttons[0], Qt.Key.Key_Return)
    assert window.open_job.job.title == "theirs"


def test_it_is_told_once_only(qtbot, make, document):
    window = make(document)
    change_from_outside(document)
    look(qtbot, window)
    answer(window, "Stay with this")

    look(qtbot, window)

    assert window.question.text == ""


def test_both_are_kept_when_both_were_changed(make, document):
    window = make(document)
    change_from_outside(document)
    entitle(window, "mine")

    assert not window.save()
    assert answers(window)[:2] == ["Keep both", "Replace theirs with mine"]
    assert title_in(document) == "theirs"
    answer(window, "Keep both")

    assert title_in(document) == "theirs"
    assert title_in(window.open_job.path) == "mine"
    assert window.open_job.path.name.startswith("refit (kept 2026-05-02 ")
    assert lock_path(window.open_job.path).exists()
    assert not window.open_job.has_unsaved_edits


def test_theirs_is_kept_as_the_previous_version_when_mine_replaces_it(make, document):
    window = make(document)
    change_from_outside(document)
    entitle(window, "mine")
    window.save()

    answer(window, "Replace theirs with mine")

    assert title_in(document) == "mine"
    assert title_in(previous_path(document)) == "theirs"


def test_a_file_that_vanished_is_told_and_saved_there_anew(qtbot, make, document):
    window = make(document)
    entitle(window, "mine")
    document.unlink()

    look(qtbot, window)
    assert "is not there any more" in window.question.text
    assert not window.save()
    answer(window, "Save it there anew")

    assert title_in(document) == "mine"


def test_a_folder_that_vanished_and_came_back(qtbot, make, document):
    window = make(document)
    entitle(window, "mine")
    away = document.parent.with_name("away")
    document.parent.rename(away)

    look(qtbot, window)
    assert not window.save()
    assert "is not there" in window.question.text
    assert "Try again" in answers(window)
    away.rename(document.parent)
    answer(window, "Try again")

    assert title_in(document) == "mine"


@pytest.mark.parametrize(
    "code", [errno.ENOSPC, errno.EROFS, errno.EACCES, errno.EIO, errno.ESTALE, errno.ETIMEDOUT]
)
def test_each_call_of_a_save_may_fail_and_the_edits_stay(make, document, monkeypatch, code):
    window = make(document)
    calls = CountedCalls()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", calls)
        entitle(window, "0")
        assert window.save()
    saved, refused = "0", 0
    for number in range(1, len(calls.made) + 1):
        entitle(window, str(number))
        with monkeypatch.context() as patched:
            patched.setattr(files, "os", CountedCalls(fail_at=number, code=code))
            was_saved = window.save()
        assert window.open_job.job.title == str(number)
        if was_saved:
            saved = str(number)
        else:
            refused += 1
            words = window.question.text
            assert words.startswith("The job was not saved; the edits are still here.")
            assert "Errno" not in words
            assert "Save under another name" in answers(window)
            assert window.open_job.has_unsaved_edits
            assert title_in(document) in (saved, str(number))
            if title_in(document) == str(number):  # in place, but not confirmed
                assert "did not confirm" in words
            window.question.leave()
            assert window.save()
            saved = str(number)
        assert title_in(document) == saved
    assert refused >= 12


def test_a_newer_document_opens_to_read_and_is_never_written(make, document, named, tmp_path):
    fields = json.loads(document.read_text())
    fields["version"], fields["sheet"]["version"] = 2, 2
    fields["telemetry"] = {"from": "later"}
    document.write_text(json.dumps(fields))
    before = document.read_bytes()
    window = make(document)

    assert "was made by a newer version of the program (2)" in window.question.text
    assert "leaves out 1 field" in window.question.text
    assert window.open_job.job.title == "front end refit"
    entitle(window, "mine")
    assert not window.save()
    assert "Take it over" not in answers(window)
    assert document.read_bytes() == before

    named["path"] = tmp_path / "copy.job.json"
    answer(window, "Save under another name")
    assert title_in(tmp_path / "copy.job.json") == "mine"
    assert document.read_bytes() == before


def test_fields_of_a_newer_minor_version_are_kept_on_saving(make, document):
    fields = json.loads(document.read_text())
    fields["minor"] = 99
    fields["weather"] = "dry"
    fields["sheet"]["fasteners"][3]["washer"] = {"flat": True}
    document.write_text(json.dumps(fields))
    window = make(document)
    assert window.question.text == ""
    entitle(window, "mine")

    assert window.save()

    after = json.loads(document.read_text())
    assert (after["minor"], after["weather"], after["title"]) == (99, "dry", "mine")
    assert after["sheet"]["fasteners"][3]["washer"] == {"flat": True}


def test_a_damaged_file_is_never_overwritten(make, document, named):
    whole = document.read_bytes()
    document.write_bytes(whole[: len(whole) // 2])
    window = make(document)
    assert "cut short" in window.question.text
    entitle(window, "mine")
    named["path"] = document

    assert not window.save_as()

    assert "is not a job that can be read, so it was left" in window.question.text
    assert document.read_bytes() == whole[: len(whole) // 2]


def test_one_damaged_after_it_was_opened_is_not_overwritten_unasked(make, document):
    window = make(document)
    entitle(window, "mine")
    document.write_bytes(b"{")

    assert not window.save()

    assert answers(window) == ["Keep both", "Save under another name", "Stay"]
    answer(window, "Keep both")
    assert document.read_bytes() == b"{"
    assert title_in(window.open_job.path) == "mine"


def test_a_name_that_another_window_works_on_is_refused(make, document, named, tmp_path):
    make(document)
    window = make()
    entitle(window, "mine")
    named["path"] = document

    assert not window.save_as()

    assert "Choose another name" in window.question.text
    assert title_in(document) == "front end refit"


def test_save_as_moves_the_lock_and_a_copy_does_not(make, document, named, tmp_path):
    window = make(document)
    named["path"] = tmp_path / "a copy"
    window.filing.save_copy()
    assert window.open_job.path == document
    assert title_in(tmp_path / "a copy.job.json") == "front end refit"

    named["path"] = tmp_path / "moved.job.json"
    assert window.save_as()
    assert window.open_job.path == tmp_path / "moved.job.json"
    assert not lock_path(document).exists()
    assert lock_path(tmp_path / "moved.job.json").exists()


def test_the_first_save_proposes_a_folder_of_the_bike(make, monkeypatch, tmp_path):
    monkeypatch.setenv("XDG_CONFIG_HOME", str(tmp_path / "none"))
    monkeypatch.setenv("HOME", str(tmp_path))
    proposed = []

    def take_it(_parent, _title, name, _filter):
        proposed.append(name)
        return name, ""

    monkeypatch.setattr(job_dialogs.QFileDialog, "getSaveFileName", take_it)
    window = make()
    window.open_job.edit(
        "name",
        lambda job: job.with_changes(
            title="new seals", sheet=job.sheet.with_changes(name="Fellside 650")
        ),
    )

    assert window.save()

    parts = Path(proposed[0]).parts
    assert parts[-3:] == ("Aligner", "Fellside 650", "new seals.job.json")
    assert window.open_job.path.exists()


def test_ctrl_s_saves_what_is_being_typed(qtbot, make, document):
    window = make(document)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    cell = window.page(Stage.ALIGN).height_card.boxes["left"].first_cell
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, "9.87")

    qtbot.keyClick(cell, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)

    assert "9.87 mm" in document.read_text()
    assert not window.open_job.has_unsaved_edits


@pytest.mark.parametrize("key", [Qt.Key.Key_Q, Qt.Key.Key_W])
def test_the_keys_that_close_ask_first_and_save_first_closes(qtbot, make, document, key):
    window = make(document)
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    entitle(window, "mine")

    qtbot.keyClick(window, key, Qt.KeyboardModifier.ControlModifier)
    assert window.isVisible()
    assert answers(window) == ["Save first", "Discard them", "Stay"]
    qtbot.keyClick(window.question.buttons[0], Qt.Key.Key_Return)

    assert not window.isVisible()
    assert title_in(document) == "mine"
    assert not lock_path(document).exists()


def test_a_save_first_that_fails_does_not_close(make, document, monkeypatch):
    window = make(document)
    entitle(window, "mine")
    window.close()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", CountedCalls(fail_at=4))
        answer(window, "Save first")

    assert window.isVisible()
    assert window.open_job.job.title == "mine"
    assert "was not saved" in window.question.text


def test_new_and_open_by_their_keys(qtbot, make, document, named):
    window = make()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    named["path"] = document

    qtbot.keyClick(window, Qt.Key.Key_O, Qt.KeyboardModifier.ControlModifier)
    assert window.open_job.path == document

    qtbot.keyClick(window, Qt.Key.Key_N, Qt.KeyboardModifier.ControlModifier)
    assert window.open_job.path is None
    assert window.open_job.job == Job()


def test_photographs_go_along_when_the_job_is_saved_in_another_folder(
    make, document, named, tmp_path
):
    image = QImage(32, 24, QImage.Format.Format_RGB32)
    image.fill(0x336699)
    assert image.save(str(tmp_path / "seal.png"))
    name = keep_photograph(document, tmp_path / "seal.png")
    window = make(document)
    found = Found(point="seal", photographs=(name, "photographs/gone-12345678.jpg"))
    window.open_job.edit(
        "photograph", lambda job: job.with_changes(inspect=job.inspect.with_changes(found=(found,)))
    )
    (tmp_path / "other").mkdir()
    named["path"] = tmp_path / "other" / "refit.job.json"

    assert window.save_as()

    assert photograph_path(named["path"], name).exists()
    assert photograph_path(document, name).exists()
    assert "could not be copied: photographs/gone-12345678.jpg" in window.question.text


def test_saving_over_a_job_that_was_left_open_takes_its_lock(make, document, named, tmp_path):
    code = (
        "import sys; from pathlib import Path; from aligner.storage.lock import take; "
        "take(Path(sys.argv[1]))"
    )
    subprocess.run([sys.executable, "-c", code, str(document)], check=True)
    window = make()
    entitle(window, "mine")
    named["path"] = document

    assert window.save_as()

    assert holder(document).worker.process == os.getpid()
    assert window.question.text == ""
