"""The pages beside the stages: manual, history, preferences; reached and left by keys."""

import pytest
from PySide6.QtCore import QEvent, QSettings, Qt
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.storage.document_file import load_job, save_job
from aligner.window.bench.view import BenchView
from aligner.window.history.page import HistoryPage
from aligner.window.language import speak_language
from aligner.window.main_window import MainWindow
from aligner.window.manual_page import manual_pages
from aligner.window.preferences import Preferences, keep_preferences, preferences_in
from aligner.window.preferences_page import PreferencesPage
from aligner.window.stage_list import StageRow
from tests.window.conftest import Clock


@pytest.fixture
def settings(tmp_path):
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


def on_screen(qtbot, window):
    """Show a window and wait until keys reach it."""
    qtbot.addWidget(window)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    return window


def choose(qtbot, window, name, text, key=Qt.Key.Key_Down):
    """Walk to a choice with the arrow keys; the page is made anew after each step."""
    for _ in range(10):
        box = window.findChild(PreferencesPage).choices[name]
        if box.currentText() == text:
            return
        qtbot.keyClick(box, key)
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
    raise AssertionError(f"no {text} in {name}")


def test_f1_opens_the_manual_at_the_stage_and_escape_comes_back(qtbot, window):
    window.go_to(Stage.TIGHTEN)
    qtbot.keyClick(window, Qt.Key.Key_F1)
    assert window.sentence.text() == "The manual."
    page = QApplication.focusWidget()
    assert "Tighten" in page.toPlainText()
    qtbot.keyClick(page, Qt.Key.Key_Escape)
    assert window.page(Stage.TIGHTEN).isVisible()


def test_every_stage_has_its_page_in_the_manual_and_no_link_leads_nowhere(window):
    pages = manual_pages()
    for stage in Stage:
        assert stage.value in pages
    for path in pages.values():
        text = path.read_text(encoding="utf-8")
        assert text.startswith("# ")
        for link in text.split("](")[1:]:
            target = link.partition(")")[0]
            assert (path.parent / target).exists(), f"{path.name}: {target}"


def test_a_unit_that_is_chosen_is_shown_everywhere_and_kept(qtbot, settings, demo_path):
    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock(), settings=settings)
    window.show_job(load_job(demo_path)[0])
    on_screen(qtbot, window)
    assert "1.6 mm" in window.sentence.text()
    qtbot.keyClick(window, Qt.Key.Key_Comma, Qt.KeyboardModifier.ControlModifier)
    choose(qtbot, window, "length", "inches (in)")
    window.go_back()
    assert "0.06" in window.sentence.text()
    assert " in" in window.sentence.text()
    assert preferences_in(settings).length == "in"
    assert window.open_job.job == load_job(demo_path)[0]


def test_text_can_be_twice_as_large_and_nothing_is_cut_off(qtbot, demo_path):
    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock())
    qtbot.addWidget(window)
    window.show_job(load_job(demo_path)[0])
    window.resize(1280, 720)
    window.show()
    window.take_preferences(Preferences(text_size=200))
    for stage in Stage:
        window.go_to(stage)
        QApplication.processEvents()
        assert (window.width(), window.height()) == (1280, 720), stage
        assert window.sentence.text()


def test_another_look_changes_the_colours_at_once(qtbot, window):
    window.take_preferences(Preferences(appearance=Appearance.HIGH_CONTRAST))
    window.go_back()
    QApplication.processEvents()
    assert window.grab().toImage().pixelColor(5, window.height() - 5).name() == "#000000"


def test_settings_that_make_no_sense_are_as_if_never_chosen(settings):
    settings.setValue("preferences/text_size", "banana")
    settings.setValue("preferences/length", "furlong")
    settings.setValue("preferences/torque", "lbf·ft")
    assert preferences_in(settings) == Preferences(torque="lbf·ft")


def test_every_choice_comes_back_as_it_was_kept(settings):
    chosen = Preferences(Appearance.DARK, 150, "in", "kgf·m", "imp fl oz", True)
    keep_preferences(settings, chosen)
    assert preferences_in(settings) == chosen


def test_the_history_opens_a_job_and_begins_the_next_one(qtbot, settings, tmp_path, demo_path):
    job = load_job(demo_path)[0]
    save_job(job, tmp_path / "a.job.json")
    settings.setValue("folder", str(tmp_path))
    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock(), settings=settings)
    on_screen(qtbot, window)
    qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    page = window.findChild(HistoryPage)
    qtbot.waitUntil(lambda: window.sentence.text() == "1 job.")
    assert page.model.rowCount() == 1
    qtbot.keyClick(page.search, Qt.Key.Key_Return)
    qtbot.keyClick(page.table, Qt.Key.Key_Return)
    assert window.open_job.path == tmp_path / "a.job.json"
    qtbot.keyClick(window, Qt.Key.Key_H, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: page.model.rowCount() == 1)
    page.table.selectRow(0)
    page.next_button.setFocus()
    qtbot.keyClick(page.next_button, Qt.Key.Key_Space)
    assert window.open_job.path is None
    assert window.open_job.job.sheet == job.sheet
    assert window.open_job.job.align.protrusion.left == ()


def test_f11_shows_the_stage_alone_in_very_large_type_and_escape_comes_back(qtbot, window):
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.go_to(Stage.ALIGN)
    qtbot.keyClick(window, Qt.Key.Key_F11)
    assert not window.stages.isVisible()
    assert not window.sentence.isVisible()
    qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Escape)
    assert window.page(Stage.ALIGN).isVisible()
    assert window.stages.isVisible()


def test_a_window_opened_on_nothing_begins_at_the_bike(qtbot):
    window = MainWindow(theme_for(Appearance.LIGHT))
    qtbot.addWidget(window)
    window.show()
    assert window.open_job.job == Job()
    assert window.page(Stage.BIKE).isVisible()


def test_the_stage_list_folds_to_its_marks_on_a_narrow_window(qtbot, window):
    window.resize(1280, 720)
    wide = window.stages.width()
    window.resize(900, 720)
    assert window.stages.width() < wide / 2
    window.resize(1280, 720)
    assert window.stages.width() == wide


@pytest.fixture
def english_after():
    yield
    speak_language("en")


def all_menus(window):
    """The menus' names, and those of all their entries."""
    bar = window.menuBar().actions()
    return [each.text() for menu in bar for each in (menu, *menu.menu().actions())]


def stage_names(window):
    return [row.accessibleName().partition(":")[0] for row in window.findChildren(StageRow)]


@pytest.mark.usefixtures("english_after")
def test_another_language_is_spoken_at_once_everywhere_and_taken_back(qtbot, settings, demo_path):
    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock(), settings=settings)
    window.show_job(load_job(demo_path)[0])
    on_screen(qtbot, window)
    window.show_preferences()
    choose(qtbot, window, "language", "English")
    english = all_menus(window), stage_names(window), window.sentence.text()
    window.go_to(Stage.ALIGN)
    english_align = window.sentence.text()
    assert "1.6 mm" in english_align
    window.show_preferences()

    choose(qtbot, window, "language", "Deutsch")
    assert window.sentence.text() == "Einstellungen."
    menus = all_menus(window)
    assert {"&Datei", "&Bearbeiten", "&Hilfe", "Rückgängig", "Ausrichten"} <= set(menus)
    assert len(menus) == len(english[0])
    assert not {text for text in menus if text} & set(english[0])
    assert stage_names(window)[-3:] == ["Ausrichten", "Anziehen", "Probefahrt"]
    window.go_to(Stage.ALIGN)
    assert "1,6 mm" in window.sentence.text()
    assert preferences_in(settings).language == "de"
    assert not window.open_job.has_unsaved_edits
    window.go_to(Stage.BIKE)
    window.show_manual()
    assert QApplication.focusWidget().toPlainText().startswith("Motorrad")

    window.show_preferences()
    choose(qtbot, window, "language", "English", Qt.Key.Key_Up)
    assert (all_menus(window), stage_names(window), window.sentence.text()) == english
    window.go_to(Stage.ALIGN)
    assert window.sentence.text() == english_align


@pytest.mark.parametrize(
    "stage", [each for each in Stage if each not in (Stage.ALIGN, Stage.TIGHTEN)]
)
def test_the_bench_view_of_a_stage_that_was_not_opened_yet_says_what_to_do(qtbot, stage):
    window = on_screen(qtbot, MainWindow(theme_for(Appearance.LIGHT), now=Clock()))
    window.show_bench_of(stage)
    page = window.findChild(BenchView)
    assert page.rest_words.isVisible()
    assert page.rest_words.text.endswith((".", "?"))
