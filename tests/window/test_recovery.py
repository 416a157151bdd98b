"""What is typed is on the disk within two seconds, and is offered after a crash."""

import os
import signal
import subprocess
import sys
import time
from dataclasses import replace

import pytest

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.storage import files
from aligner.storage.document_file import load_job, save_job
from aligner.storage.process import Worker, this_worker
from aligner.storage.recovery import found_in, recovery_copies
from aligner.window.files.autosave import WAIT_MS
from aligner.window.main_window import MainWindow
from tests.storage.test_files import CountedCalls
from tests.window.conftest import Clock
from tests.window.whole_program import ROOT, started


@pytest.fixture
def folder(tmp_path):
    return tmp_path / "recovery"


@pytest.fixture
def make(qtbot, folder):
    """Makes windows that keep recovery copies; each is closed without a question."""
    made = []

    def window():
        new = MainWindow(theme_for(Appearance.LIGHT), now=Clock(), recovery=folder)
        qtbot.addWidget(new)
        new.show()
        qtbot.waitExposed(new)
        made.append(new)
        return new

    yield window
    for each in made:
        each.open_job.drop_draft()
        each.open_job.edits.setClean()
        each.close()


@pytest.fixture
def document(tmp_path, demo_path):
    path = tmp_path / "refit.job.json"
    path.write_bytes(demo_path.read_bytes())
    return path


def cell_of(window):
    return window.page(Stage.ALIGN).height_card.boxes["left"].first_cell


def type_reading(qtbot, window, text, *, leave=False):
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    cell = cell_of(window)
    cell.setFocus()
    cell.selectAll()
    qtbot.keyClicks(cell, text)
    if leave:
        cell.clearFocus()


def keep_now(qtbot, window):
    """The copy is written without the second's wait, which other tests measure."""
    with qtbot.waitSignal(window._autosave.kept):
        window._autosave.keep()


def has_copy_with(folder, text):
    return any(text in copy.content.decode() for copy in recovery_copies(folder))


def left_behind(folder):
    """The copies are as of a program that is gone."""
    ended = subprocess.Popen([sys.executable, "-c", ""])
    ended.wait()
    for copy in recovery_copies(folder):
        whole = copy.path.read_text()
        copy.path.write_text(whole.replace(f'"process": {os.getpid()}', f'"process": {ended.pid}'))


def answer(window, words):
    next(button for button in window.question.buttons if button.text() == words).click()


def test_what_is_being_typed_is_on_the_disk_within_two_seconds(qtbot, make, document, folder):
    window = make()
    window.open_path(document)
    type_reading(qtbot, window, "9.87")
    began = time.monotonic()

    qtbot.waitUntil(lambda: has_copy_with(folder, "9.87 mm"), timeout=2000)

    assert time.monotonic() - began < 2
    assert WAIT_MS <= 1000
    assert "9.87" not in document.read_text()


def test_one_who_types_without_a_pause_has_a_copy_all_the_same(qtbot, make, document, folder):
    window = make()
    window.open_path(document)
    began = time.monotonic()
    letters = 0
    while not recovery_copies(folder) and time.monotonic() - began < 4:
        type_reading(qtbot, window, "9.8")
        qtbot.wait(50)
        letters += 3

    assert letters > 10
    assert time.monotonic() - began < 2


@pytest.mark.parametrize("way", ["saved", "undone", "discarded", "closed"])
def test_the_copy_goes_when_nothing_is_left_to_recover(qtbot, make, document, folder, way):
    window = make()
    window.open_path(document)
    type_reading(qtbot, window, "9.87", leave=True)
    keep_now(qtbot, window)

    if way == "saved":
        assert window.save()
    elif way == "undone":
        window.open_job.edits.undo()
    elif way == "discarded":
        window.filing.new()
        answer(window, "Discard them")
    else:
        window.close()
        answer(window, "Discard them")

    qtbot.waitUntil(lambda: not list(folder.iterdir()), timeout=3000)


def test_a_copy_begun_before_the_save_does_not_come_back_after_it(qtbot, make, document, folder):
    window = make()
    window.open_path(document)
    type_reading(qtbot, window, "9.87", leave=True)
    window._autosave.keep()  # the other thread writes while this one saves

    assert window.save()
    window._autosave.keep()
    qtbot.wait(50)
    window._background.wait()

    assert not list(folder.iterdir())


def test_two_windows_keep_a_copy_each(qtbot, make, document, folder, tmp_path):
    other = tmp_path / "other.job.json"
    other.write_bytes(document.read_bytes())
    first, second = make(), make()
    first.open_path(document)
    second.open_path(other)
    type_reading(qtbot, first, "9.11", leave=True)
    type_reading(qtbot, second, "9.22", leave=True)

    keep_now(qtbot, first)
    keep_now(qtbot, second)

    assert has_copy_with(folder, "9.11 mm")
    assert has_copy_with(folder, "9.22 mm")
    assert len(recovery_copies(folder)) == 2


def crash_with(qtbot, make, folder, path, text="9.87"):
    """A window with an unsaved reading, as if it had been killed."""
    window = make()
    if path is not None:
        window.open_path(path)
    type_reading(qtbot, window, text, leave=True)
    keep_now(qtbot, window)
    window._watch.release()
    whole = {copy.path: copy.path.read_bytes() for copy in recovery_copies(folder)}
    window.open_job.edits.setClean()
    window.close()
    for copy, content in whole.items():
        copy.write_bytes(content)
    left_behind(folder)


def test_it_is_offered_with_what_differs_and_taken_only_when_chosen(qtbot, make, folder, document):
    crash_with(qtbot, make, folder, document)
    before = document.read_bytes()
    window = make()

    window.offer_recovery()

    assert "Edits of refit.job.json that were not saved were found" in window.question.text
    assert "The file is as it was." in window.question.text
    assert "align, protrusion, left, no. 1: “" in window.question.text
    assert "9.87 mm" in window.question.text
    assert window.open_job.job == Job()

    answer(window, "Open the copy")

    assert "9.87 mm" in [str(one) for one in window.open_job.job.align.protrusion.left]
    assert window.open_job.has_unsaved_edits
    assert window.open_job.edits.undoText() == "recovered edits"
    assert document.read_bytes() == before
    assert len(recovery_copies(folder)) == 1  # until it is saved, the copy stays
    assert window.save()
    assert "9.87 mm" in document.read_text()
    qtbot.waitUntil(lambda: not list(folder.iterdir()), timeout=3000)


def test_a_job_never_saved_is_offered_too(qtbot, make, folder):
    crash_with(qtbot, make, folder, None)
    window = make()

    window.offer_recovery()
    assert "A job that was never saved was found" in window.question.text
    answer(window, "Open the copy")

    assert "9.87 mm" in [str(one) for one in window.open_job.job.align.protrusion.left]
    assert window.open_job.path is None


def test_what_another_program_saved_since_is_not_undone(qtbot, make, folder, document):
    crash_with(qtbot, make, folder, document)
    job, file = load_job(document)
    save_job(job.with_changes(note="theirs"), document, file)
    window = make()

    window.offer_recovery()
    assert "changed since by another program" in window.question.text
    answer(window, "Open the copy")
    assert not window.save()
    answer(window, "Keep both")

    assert load_job(document)[0].note == "theirs"
    assert "9.87 mm" in window.open_job.path.read_text()
    assert window.open_job.path != document


def test_a_newer_version_saved_over_it_meanwhile_is_never_written(qtbot, make, folder, document):
    crash_with(qtbot, make, folder, document)
    document.write_bytes(b'{"document": "job", "version": 2, "title": "from later"}')
    window = make()

    window.offer_recovery()
    answer(window, "Open the copy")
    assert not window.save()

    assert "newer version" in window.question.text
    assert [button.text() for button in window.question.buttons] == [
        "Save under another name",
        "Stay",
    ]
    assert b"from later" in document.read_bytes()


def test_later_leaves_it_and_dropping_asks_twice(qtbot, make, folder, document):
    crash_with(qtbot, make, folder, document)
    window = make()
    window.offer_recovery()
    answer(window, "Later")
    assert window.question.text == ""
    assert len(recovery_copies(folder)) == 1

    window.offer_recovery()
    answer(window, "Drop the copy")
    assert len(recovery_copies(folder)) == 1
    answer(window, "Drop it for good")
    assert recovery_copies(folder) == ()


def test_the_copy_of_a_window_that_is_open_is_not_offered(qtbot, make, folder, document):
    first = make()
    first.open_path(document)
    type_reading(qtbot, first, "9.87", leave=True)
    keep_now(qtbot, first)
    second = make()

    second.offer_recovery()

    assert second.question.text == ""


def test_two_windows_cannot_both_take_it(qtbot, make, folder, document):
    crash_with(qtbot, make, folder, document)
    first, second = make(), make()
    first.offer_recovery()
    second.offer_recovery()

    answer(first, "Open the copy")
    answer(second, "Open the copy")

    assert "Another window has taken that copy" in second.question.text
    assert second.open_job.job == Job()


def test_a_damaged_copy_is_said_and_kept(qtbot, make, folder, document):
    crash_with(qtbot, make, folder, document)
    (copy,) = recovery_copies(folder)
    copy.path.write_bytes(copy.path.read_bytes()[:600])
    window = make()

    window.offer_recovery()

    assert "It cannot be read" in window.question.text
    assert [button.text() for button in window.question.buttons] == ["Later", "Drop the copy"]


def test_each_call_of_the_autosave_may_fail_and_the_window_goes_on(
    qtbot, make, folder, document, monkeypatch
):
    window = make()
    window.open_path(document)
    calls = CountedCalls()
    with monkeypatch.context() as patched:
        patched.setattr(files, "os", calls)
        type_reading(qtbot, window, "9.00", leave=True)
        with qtbot.waitSignal(window._autosave.kept):
            window._autosave.keep()
    failures = 0
    for number in range(1, len(calls.made) + 1):
        text = f"9.{number:02}"
        with monkeypatch.context() as patched:
            patched.setattr(files, "os", CountedCalls(fail_at=number))
            type_reading(qtbot, window, text, leave=True)
            window._autosave.keep()
            window._background.wait()
            qtbot.wait(1)
        if "No recovery copy can be written" in window.question.text:
            failures += 1
            answer(window, "Understood")
        assert f"{text} mm" in [str(one) for one in window.open_job.job.align.protrusion.left]
        (copy,) = recovery_copies(folder)
        assert copy.is_whole
        assert found_in(copy).job is not None
        type_reading(qtbot, window, f"8.{number:02}", leave=True)
        with qtbot.waitSignal(window._autosave.kept):
            window._autosave.keep()
    assert failures >= 8


KILLED = """
import os, sys
os.environ["QT_QPA_PLATFORM"] = "offscreen"
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from aligner.assessment import Stage
from aligner.drawing.theme import Theme
from aligner.window.main_window import MainWindow
application = QApplication([])
window = MainWindow(Theme(), recovery=Path(sys.argv[2]))
window.open_path(Path(sys.argv[1]))
window.show()
cell = window.page(Stage.ALIGN).height_card.boxes["left"].first_cell
cell.setFocus()
cell.selectAll()
QTest.keyClicks(cell, "9.87")
print("typed", flush=True)
application.exec()
"""


@pytest.mark.skipif(os.name == "nt", reason="signal 9 as POSIX has it")
def test_a_window_killed_two_seconds_after_the_last_key_loses_nothing(
    qtbot, make, folder, document
):
    child = subprocess.Popen(
        [sys.executable, "-c", KILLED, str(document), str(folder)],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert child.stdout.readline() == "typed\n"
    time.sleep(2)
    child.send_signal(signal.SIGKILL)
    child.wait()
    child.stdout.close()
    window = make()

    window.offer_recovery()
    answer(window, "Open the copy")

    assert "9.87 mm" in [str(one) for one in window.open_job.job.align.protrusion.left]
    assert "was left open by" in window.question.text
    answer(window, "Take it over")
    assert window.save()
    assert "9.87 mm" in document.read_text()


def test_a_copy_of_a_living_program_counts_as_left_behind_when_it_is_long_silent(
    qtbot, make, folder
):
    window = make()
    type_reading(qtbot, window, "9.87", leave=True)
    keep_now(qtbot, window)
    (copy,) = recovery_copies(folder)

    assert copy.may_be_open_still()
    assert not copy.may_be_open_still(copy.renewed_s + 601)
    assert not replace(copy, worker=Worker("x", this_worker().host, 0)).may_be_open_still()


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="places as on Linux")
def test_the_program_itself_offers_it_at_its_next_start(qtbot, make, folder, document, tmp_path):
    crash_with(qtbot, make, folder, document)
    state = tmp_path / "state" / "aligner"
    state.mkdir(parents=True)
    folder.rename(state / "recovery")

    done = started(XDG_STATE_HOME=str(tmp_path / "state"), XDG_CONFIG_HOME=str(tmp_path / "config"))

    assert "Edits of refit.job.json that were not saved were found" in done.stdout
    assert len(recovery_copies(state / "recovery")) == 1
