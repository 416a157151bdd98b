"""The Inspect stage by keyboard: measure, find, note, photograph, go on, undo, save, reopen."""

from datetime import UTC, datetime

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QColor, QDragEnterEvent, QDropEvent, QGuiApplication, QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance, Theme, scale_to_fit, theme_for
from aligner.job import Job
from aligner.job.edits_inspect import with_carried, with_finding, with_limit, with_readings
from aligner.job.inspect import Finding
from aligner.job.inspection_points import places_of
from aligner.sheet import Side
from aligner.sheet.inspection import LimitOf
from aligner.sheet.quantities import Length
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.inspect.list import PARTS
from aligner.window.inspect.stage import InspectStage
from aligner.window.main_window import MainWindow
from aligner.window.open_job import OpenJob
from aligner.window.setting import Setting

TUBE = ("tube_runout", Side.LEFT)
SURFACE = ("tube_surface", Side.LEFT)
SEAL = ("oil_seal", Side.LEFT)
AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
ENTER, ESCAPE = Qt.Key.Key_Return, Qt.Key.Key_Escape


@pytest.fixture
def open_job():
    return OpenJob(Job())


@pytest.fixture
def saving(open_job, tmp_path):
    """What the window's own saving does, with a place for the file named beforehand."""

    def save():
        open_job.save(tmp_path / "bike" / "work.job.json")
        return True

    (tmp_path / "bike").mkdir()
    return save


@pytest.fixture
def stage(qtbot, open_job, saving):
    made = InspectStage(Setting(open_job, Theme(), Preferred(), lambda: AT, save=saving))
    qtbot.addWidget(made)
    open_job.changed.connect(made.refresh)
    made.resize(1040, 600)
    made.show()
    made.begin()
    yield made
    open_job.drop_draft()


def _key(stage, key):
    QTest.keyClick(stage.window().focusWidget(), key)


def _type(stage, text):
    QTest.keyClicks(stage.window().focusWidget(), text)


def _in_hand(stage):
    return next(place for place, panel in stage.panels.items() if not panel.isHidden())


def _go_to(stage, place):
    stage.list.chosen.emit(place)
    stage.panels[place].begin()


def _picture(path, color="#884422", width=800, height=600):
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor(color))
    assert image.save(str(path))
    return path


def _found(open_job, place):
    return open_job.job.inspect.at_place(place)


def test_it_begins_at_the_first_number_and_says_how_it_is_measured(stage):
    headline, detail = stage.sentence()
    assert headline == "Measure the tube runout, left leg."
    assert "V-blocks" in detail
    assert stage.window().focusWidget() is stage.panels[TUBE].number.box.first_cell


def test_readings_limit_source_finding_and_on_to_the_next_by_enter_alone(stage, open_job):
    for text in ("0.18", "0,24", ""):
        _type(stage, text)
        _key(stage, ENTER)
    _type(stage, "0.20")
    _key(stage, ENTER)
    _type(stage, "manual p. 12-31")
    _key(stage, ENTER)
    _key(stage, Qt.Key.Key_3)
    _key(stage, ENTER)
    found = _found(open_job, TUBE)
    assert [reading.text for reading in found.readings] == ["0.18 mm", "0.24 mm"]
    assert (found.gauge, found.finding) == ("dial indicator", Finding.REPLACE)
    limit = open_job.job.sheet.inspection["tube_runout"]
    assert (limit.value.text, limit.source) == ("0.20 mm", "manual p. 12-31")
    assert "dial indicator" in open_job.job.gauges
    said = stage.panels[TUBE].number.verdict.text()
    assert said == "Bend 0.12 ± 0.02 mm (0.24 mm indicated), at most 0.20 mm indicated: out"
    assert _in_hand(stage) == SURFACE
    assert stage.count.text() == "1 of 32 looked at, 1 to replace"


def test_enter_alone_marks_nothing_good(stage, open_job):
    for _ in range(60):
        _key(stage, ENTER)
    assert open_job.job == Job()


@pytest.mark.parametrize(
    ("keys", "finding"),
    [
        pytest.param([Qt.Key.Key_1], Finding.GOOD, id="1"),
        pytest.param([Qt.Key.Key_2], Finding.WATCH, id="2"),
        pytest.param([Qt.Key.Key_3], Finding.REPLACE, id="3"),
        pytest.param([Qt.Key.Key_Right], Finding.GOOD, id="right"),
        pytest.param([Qt.Key.Key_Right] * 2, Finding.WATCH, id="right twice"),
        pytest.param([Qt.Key.Key_Left], Finding.REPLACE, id="left"),
        pytest.param([Qt.Key.Key_Right] * 5, Finding.REPLACE, id="no further than the last"),
        pytest.param([Qt.Key.Key_2, Qt.Key.Key_2], None, id="the same again takes it back"),
        pytest.param([Qt.Key.Key_Space], Finding.GOOD, id="space on the first"),
    ],
)
def test_a_finding_is_given_by_number_or_arrow(stage, open_job, keys, finding):
    _go_to(stage, SURFACE)
    for key in keys:
        _key(stage, key)
    assert _found(open_job, SURFACE).finding is finding
    checked = [each for each, b in stage.panels[SURFACE].choice.buttons.items() if b.isChecked()]
    assert checked == ([finding] if finding else [])


def test_the_list_takes_the_numbers_and_enter_goes_on_once_there_is_a_finding(stage, open_job):
    stage.list.chosen.emit(SURFACE)
    stage.list.setFocus()
    QTest.keyClick(stage.list, Qt.Key.Key_2)
    assert _found(open_job, SURFACE).finding is Finding.WATCH
    QTest.keyClick(stage.list, ENTER)
    assert _in_hand(stage) == ("bush_play", Side.LEFT)


def test_each_finding_is_one_step_to_undo(stage, open_job):
    _go_to(stage, SEAL)
    _key(stage, Qt.Key.Key_3)
    assert open_job.edits.undoText() == "oil seal, left leg: replace"
    open_job.edits.undo()
    assert open_job.job == Job()
    assert not any(b.isChecked() for b in stage.panels[SEAL].choice.buttons.values())


def test_a_note_is_shown_while_typed_and_is_one_step_and_enter_goes_on(stage, open_job):
    _go_to(stage, SEAL)
    note = stage.panels[SEAL].note
    note.setFocus()
    _type(stage, "weeping at the rear ")
    assert (_found(open_job, SEAL).note, open_job.edits.count()) == ("weeping at the rear", 0)
    _key(stage, ENTER)
    assert open_job.edits.count() == 1
    assert _in_hand(stage) != SEAL


def test_escape_gives_back_the_note_that_stood_there(stage, open_job):
    _go_to(stage, SEAL)
    note = stage.panels[SEAL].note
    note.setFocus()
    _type(stage, "weep")
    _key(stage, ESCAPE)
    assert note.text() == ""
    assert open_job.job == Job()


def test_a_reading_that_cannot_be_read_stays_with_its_reason_while_other_places_are_seen(stage):
    _type(stage, "0.1x")
    _go_to(stage, SEAL)
    _key(stage, Qt.Key.Key_1)
    _go_to(stage, TUBE)
    box = stage.panels[TUBE].number.box
    assert box.first_cell.text() == "0.1x"
    assert "not a unit known here" in box.first_cell.accessibleDescription()


def test_a_limit_that_cannot_be_read_stays_with_its_reason_and_is_not_kept(stage, open_job):
    limit = stage.panels[TUBE].number.limit
    limit.begin()
    _type(stage, "a hair")
    _key(stage, ENTER)
    assert limit.value.text() == "a hair"
    assert "does not begin with a number" in limit.said.text()
    assert open_job.job.sheet.inspection == {}
    _key(stage, ESCAPE)
    assert limit.value.text() == ""


def test_what_a_limit_is_printed_for_can_be_chosen_before_it_is_typed_and_after(stage, open_job):
    limit = stage.panels[TUBE].number.limit
    limit.of.setCurrentIndex(1)
    limit.begin()
    _type(stage, "0.1")
    _key(stage, ENTER)
    assert open_job.job.sheet.inspection["tube_runout"].of is LimitOf.BEND
    limit.of.setCurrentIndex(0)
    limit.of.activated.emit(0)
    assert open_job.job.sheet.inspection["tube_runout"].of is LimitOf.INDICATED


def test_a_missing_limit_says_where_to_take_it_from(stage):
    said = stage.panels[TUBE].number.limit.said
    assert said.text() == "The limit is missing: take it from the manual."
    assert said.isVisible()


def test_out_and_marked_good_is_said_at_the_finding(stage, open_job):
    open_job.edit("limit", lambda job: with_limit(job, TUBE[0], value=Length.typed("0.1 mm")))
    _type(stage, "0.30")
    _key(stage, ENTER)
    stage.panels[TUBE].choice.begin()
    _key(stage, Qt.Key.Key_1)
    said = stage.panels[TUBE].disagreement
    assert said.isVisible()
    assert said.text() == "It measures out and is marked good: say why in the note."
    _key(stage, Qt.Key.Key_3)
    assert not said.isVisible()


def test_new_part_fitted_is_asked_only_where_one_is_to_be_replaced(stage, open_job):
    _go_to(stage, SEAL)
    fitted = stage.panels[SEAL].fitted
    _key(stage, Qt.Key.Key_1)
    assert not fitted.isVisible()
    _key(stage, Qt.Key.Key_3)
    assert fitted.isVisible()
    assert len(open_job.assessment.inspection.open_parts) == 1
    QTest.keyClick(fitted, ENTER)
    assert open_job.assessment.inspection.open_parts == ()
    assert stage.sentence()[0] == "Oil seal, left leg: replaced, new part fitted."


def test_another_gauge_is_named_and_the_verdict_follows(stage, open_job):
    _type(stage, "0.30")
    _key(stage, ENTER)
    gauge = stage.panels[TUBE].number.gauge
    gauge.setFocus()
    gauge.setCurrentIndex(gauge.findText("steel rule"))
    gauge.activated.emit(gauge.currentIndex())
    assert _found(open_job, TUBE).gauge == "steel rule"
    assert "Bend 0.15 ± 0.38 mm" in stage.panels[TUBE].number.verdict.text()


# What earlier jobs left


def _earlier(readings, at):
    job = with_readings(Job(), TUBE, (Length.typed(readings),))
    return with_finding(job, TUBE, Finding.WATCH, at)


def test_what_was_watched_stands_on_top_of_its_place_with_its_history(stage, open_job):
    open_job.start(with_carried(Job(), _earlier("0.12 mm", datetime(2024, 5, 13, tzinfo=UTC))))
    stage.begin()
    card = stage.panels[TUBE].carried
    assert card.isVisible()
    assert card.said.text() == "Watch, 2024-05-13: 0.06 mm"
    _type(stage, "0.16")
    _key(stage, ENTER)
    stage.panels[TUBE].choice.begin()
    _key(stage, Qt.Key.Key_2)
    assert card.chart.accessibleName() == "history: 2024-05-13: 0.06 mm; 2026-05-02: 0.08 mm"
    assert not stage.panels.get(SEAL)


# Photographs


def test_an_unsaved_job_is_saved_first_in_place_and_the_photograph_follows(
    stage, open_job, tmp_path
):
    _go_to(stage, SEAL)
    strip = stage.panels[SEAL].photographs
    strip.add_files([_picture(tmp_path / "seal.png")])
    assert "Save the job first" in strip.said.text()
    assert stage.window().focusWidget() is strip.save_first
    _key(stage, ENTER)
    (name,) = _found(open_job, SEAL).photographs
    assert (tmp_path / "bike" / name).is_file()
    assert len(strip.thumbnails) == 1
    assert not strip.save_first.isVisible()


def test_photographs_dropped_on_a_place_are_added_in_one_step(stage, open_job, saving, tmp_path):
    saving()
    _go_to(stage, SEAL)
    files = [_picture(tmp_path / "a.png"), _picture(tmp_path / "b.jpg", "#336688")]
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(file)) for file in files])
    copy, left = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
    panel = stage.panels[SEAL]
    none = Qt.KeyboardModifier.NoModifier
    QApplication.sendEvent(panel.viewport(), QDragEnterEvent(QPoint(9, 9), copy, data, left, none))
    QApplication.sendEvent(panel.viewport(), QDropEvent(QPointF(9, 9), copy, data, left, none))
    assert len(_found(open_job, SEAL).photographs) == 2
    assert open_job.edits.count() == 1
    open_job.edits.undo()
    assert panel.photographs.thumbnails == []


def test_what_is_no_photograph_is_refused_by_name_and_the_others_are_kept(
    stage, open_job, saving, tmp_path
):
    saving()
    _go_to(stage, SEAL)
    wrong = tmp_path / "notes.jpg"
    wrong.write_text("not a photograph")
    strip = stage.panels[SEAL].photographs
    strip.add_files([wrong, _picture(tmp_path / "a.png")])
    assert "notes.jpg" in strip.said.text()
    assert len(_found(open_job, SEAL).photographs) == 1


def test_enter_opens_a_photograph_and_escape_goes_back_to_it(stage, open_job, saving, tmp_path):
    saving()
    _go_to(stage, SEAL)
    strip = stage.panels[SEAL].photographs
    strip.add_files([_picture(tmp_path / "a.png"), _picture(tmp_path / "b.png", "#336688")])
    strip.thumbnails[1].setFocus()
    _key(stage, ENTER)
    assert stage.large.isVisible()
    assert stage.large.accessibleName().startswith("photograph 2 of 2: b-")
    middle = stage.large.grab().toImage()
    assert middle.pixelColor(middle.width() // 2, middle.height() // 2) == QColor("#336688")
    _key(stage, Qt.Key.Key_Left)
    assert stage.large.accessibleName().startswith("photograph 1 of 2: a-")
    _key(stage, ESCAPE)
    assert not stage.large.isVisible()
    assert stage.window().focusWidget() is strip.thumbnails[0]


def test_delete_takes_a_photograph_off_and_leaves_its_file(stage, open_job, saving, tmp_path):
    saving()
    _go_to(stage, SEAL)
    strip = stage.panels[SEAL].photographs
    strip.add_files([_picture(tmp_path / "a.png")])
    (name,) = _found(open_job, SEAL).photographs
    strip.thumbnails[0].setFocus()
    _key(stage, Qt.Key.Key_Delete)
    assert _found(open_job, SEAL).photographs == ()
    assert (tmp_path / "bike" / name).is_file()


def test_a_photograph_whose_file_is_gone_is_shown_as_missing(stage, open_job, saving, tmp_path):
    saving()
    _go_to(stage, SEAL)
    strip = stage.panels[SEAL].photographs
    strip.add_files([_picture(tmp_path / "a.png")])
    (name,) = _found(open_job, SEAL).photographs
    (tmp_path / "bike" / name).unlink()
    stage.refresh()
    assert "file missing" in strip.thumbnails[0].accessibleName()
    assert not strip.thumbnails[0].grab().isNull()


# The parts list, the end, another job


def test_when_all_is_looked_at_it_shows_the_parts_list_and_goes_on_to_the_next_stage(
    qtbot, stage, open_job
):
    def all_found(job):
        for place in places_of(job):
            if place != TUBE:
                finding = Finding.REPLACE if place == SEAL else Finding.GOOD
                job = with_finding(job, place, finding, AT)
        return job

    open_job.edit("all but one", all_found)
    stage.panels[TUBE].choice.begin()
    _key(stage, Qt.Key.Key_1)
    _key(stage, ENTER)
    assert stage.parts.isVisible()
    assert stage.sentence()[0] == "All looked at. One part is still to be fitted."
    assert stage.window().focusWidget() is stage.parts.copy
    _key(stage, Qt.Key.Key_Space)
    assert "1 x oil seal (left leg)" in QGuiApplication.clipboard().text()
    with qtbot.waitSignal(stage.finished):
        QTest.keyClick(stage.next, ENTER)


@pytest.mark.parametrize("typed", ["0.1x", "0.12"], ids=["unreadable", "readable"])
def test_what_was_typed_does_not_follow_into_another_job(stage, open_job, typed):
    _type(stage, typed)
    open_job.start(Job(title="another"))
    assert open_job.job == Job(title="another")
    assert open_job.edits.count() == 0
    stage.begin()
    assert stage.panels[TUBE].number.box.first_cell.text() == ""


def test_saving_alone_takes_nothing_away_that_cannot_be_read(stage, saving):
    _type(stage, "0.1x")
    panel = stage.panels[TUBE]
    saving()
    assert stage.panels[TUBE] is panel
    assert panel.number.box.first_cell.text() == "0.1x"


def test_everything_comes_back_from_its_file(stage, open_job, saving, tmp_path):
    _type(stage, "0.12")
    _key(stage, ENTER)
    stage.panels[TUBE].choice.begin()
    _key(stage, Qt.Key.Key_2)
    saving()
    again, _ = load_job(tmp_path / "bike" / "work.job.json")
    assert again == open_job.job
    assert again.inspect.at_place(TUBE).finding is Finding.WATCH


def test_every_entry_has_a_name_and_tab_goes_as_the_eye_does(stage):
    panel = stage.panels[TUBE]
    box, limit = panel.number.box, panel.number.limit
    wanted = [*box.cells, panel.number.gauge, limit.value, limit.of, limit.source]
    wanted += [*panel.choice.buttons.values(), panel.note, panel.photographs.add]
    order, widget = [], stage.list
    for _ in range(300):
        widget = widget.nextInFocusChain()
        if widget in wanted:
            order.append(widget)
        if widget is stage.list:
            break
    assert order == wanted
    assert all(each.accessibleName() for each in [*wanted, stage.list, stage.parts.copy])


# In the window


def test_the_stage_stands_in_the_window_with_its_count(window):
    window.go_to(Stage.INSPECT)
    page = window.page(Stage.INSPECT)
    _go_to(page, SEAL)
    QTest.keyClick(window.focusWidget(), Qt.Key.Key_3)
    standing = next(
        each for each in window.open_job.assessment.stages if each.stage is Stage.INSPECT
    )
    total = len(places_of(window.open_job.job))
    assert standing.line == f"1 of {total} seen, 1 due"
    assert window.sentence.text() == "Oil seal, left leg: replace, still due."


def test_the_parts_list_is_a_row_of_the_list(stage):
    stage.list.chosen.emit(PARTS)
    assert stage.parts.isVisible()
    assert stage.sentence()[0] == "The parts list, so far."


def test_on_the_smallest_screen_nothing_is_wider_than_its_page(qtbot):
    window = MainWindow(theme_for(Appearance.LIGHT, scale_to_fit(960, 540)), now=lambda: AT)
    qtbot.addWidget(window)
    carried = with_carried(Job(), _earlier("0.12 mm", datetime(2024, 5, 13, tzinfo=UTC)))
    window.show_job(carried)
    window.resize(960, 540)
    window.show()
    window.go_to(Stage.INSPECT)
    page = window.page(Stage.INSPECT)
    for place in places_of(carried):
        page.list.chosen.emit(place)
        panel = page.panels[place]
        panel.choice.buttons[Finding.REPLACE].click()  # asks for the new part, and more room
        panel.verticalScrollBar().show()
        needed = panel.widget().minimumSizeHint().width()
        assert needed <= panel.viewport().width() - panel.verticalScrollBar().sizeHint().width()
    window.open_job.edits.setClean()
