"""Files in the window: dropped, recent, refused; the file that is refused is untouched."""

import pytest
from PySide6.QtCore import QEvent, QMimeData, QPointF, QSettings, Qt, QUrl
from PySide6.QtGui import QDropEvent, QKeyEvent
from PySide6.QtWidgets import QApplication

from aligner.drawing.theme import Appearance, theme_for
from aligner.window.main_window import MainWindow


def drop(window, path):
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path))])
    event = QDropEvent(
        QPointF(10, 10),
        Qt.DropAction.CopyAction,
        data,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    window.dropEvent(event)


def test_a_file_dropped_on_the_window_is_opened(window, demo_path):
    drop(window, demo_path)

    assert window.open_job.path == demo_path
    assert not window.open_job.has_unsaved_edits


def test_a_file_dropped_on_unsaved_edits_asks_first(qtbot, window, demo_path):
    window.open_job.edit("title", lambda job: job.with_changes(title="other"))

    drop(window, demo_path)
    assert window.open_job.path is None

    discard = next(b for b in window.question.buttons if b.text() == "Discard them")
    discard.click()
    assert window.open_job.path == demo_path


@pytest.mark.parametrize(
    ("content", "words"),
    [
        pytest.param(b"", "empty", id="empty"),
        pytest.param(b"{", "cut short", id="broken"),
        pytest.param(b'{"document": "sheet", "version": 1}', "not a job", id="another kind"),
        pytest.param(
            b'{"document": "job", "version": 99, "title": 3}', "newer version", id="newer"
        ),
    ],
)
def test_what_cannot_be_opened_is_said_in_a_line_and_left_alone(window, tmp_path, content, words):
    path = tmp_path / "given.job.json"
    path.write_bytes(content)
    before = window.open_job.job

    window.open_path(path)

    assert words in window.question.text
    assert "\n" not in window.question.text
    assert window.open_job.job is before
    assert path.read_bytes() == content


def test_a_folder_is_refused_in_a_line(window, tmp_path):
    window.open_path(tmp_path)

    assert "is a folder" in window.question.text


def test_what_was_opened_stands_among_the_recent(qtbot, tmp_path, demo_path):
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(theme_for(Appearance.LIGHT), settings=settings)
    qtbot.addWidget(made)

    made.open_path(demo_path)

    assert settings.value("recent") in ([str(demo_path.resolve())], str(demo_path.resolve()))


def test_undo_of_all_gives_back_the_job_as_it_was_opened(window):
    before = window.open_job.job
    window.open_job.edit("title", lambda job: job.with_changes(title="a"))
    window.open_job.edit("title", lambda job: job.with_changes(title="b"))

    window.open_job.edits.undo()
    window.open_job.edits.undo()

    assert window.open_job.job == before
    assert not window.open_job.has_unsaved_edits


def test_enter_held_down_from_before_a_question_answers_nothing(window):
    window.open_job.edit("title", lambda job: job.with_changes(title="other"))
    window.close()
    answer = QApplication.focusWidget()
    assert answer.text() == "Save first"

    repeated = QKeyEvent(
        QEvent.Type.KeyPress, Qt.Key.Key_Return, Qt.KeyboardModifier.NoModifier, "\r", True
    )
    QApplication.sendEvent(answer, repeated)

    assert window.question.text == "There are edits that are not saved."
    assert QApplication.focusWidget() is answer


def test_a_file_name_with_the_mark_of_qt_stands_in_the_title_as_it_is(window, tmp_path):
    window.save_to(tmp_path / "left[*]leg.job.json")

    assert window.windowTitle() == "left[*][*]leg.job.json[*] - Aligner"
