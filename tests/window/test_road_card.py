"""The road card by keyboard: figures in the table and on the drawing, and what if by slider."""

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QWheelEvent
from PySide6.QtWidgets import QApplication, QLabel

from aligner.assessment import assess
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.sheet.quantities import Length, SignedLength
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.align.road_card import RoadCard
from aligner.window.widgets.style_sheet import style_sheet


@pytest.fixture
def job():
    return load_job(demo("fellside-left-leg-high.job.json"))[0]


def shown(qtbot, job, show=None, size=(1000, 460)):
    theme = theme_for(Appearance.LIGHT)
    card = RoadCard(theme, show or Preferred())
    card.setStyleSheet(card.styleSheet() + style_sheet(theme))
    qtbot.addWidget(card)
    card.resize(*size)
    card.show()
    card.show_job(job, assess(job))
    return card


@pytest.fixture
def card(qtbot, job):
    return shown(qtbot, job)


def said(card, start):
    """What a screen reader is told of the cell that begins so."""
    names = [each.accessibleName() for each in card.findChildren(QLabel)]
    return next(name for name in names if name.startswith(start))


def texts(card):
    return [each.text() for each in card.findChildren(QLabel) if each.isVisible()]


def test_the_table_says_each_figure_with_its_change_and_side(card):
    assert said(card, "rake, sheet") == "rake, sheet: 27.00 degrees"
    assert said(card, "rake, as it stands") == (
        "rake, as it stands: 26.97 degrees, changed by −0.03 against the sheet"
    )
    assert said(card, "trail, after the correction") == "trail, after the correction: 118.2 mm"
    assert said(card, "axle lean, as it stands") == (
        "axle lean, as it stands: 0.46 degrees, left end high"
    )
    assert said(card, "tyre patch, as it stands") == "tyre patch, as it stands: 2.6 mm to the left"
    assert said(card, "axle lean, sheet") == "axle lean, sheet: missing"


def test_the_drawing_says_its_side_and_its_dimensions(card):
    assert card.picture.accessibleName().startswith("On the road, seen from the right")
    assert card.picture.accessibleDescription() == (
        "rake 26.97°, trail 118.0 mm, normal trail 105.1 mm, wheelbase 1450 mm"
    )


def test_arrow_keys_raise_both_legs_in_thought_and_the_job_stays_as_it_is(qtbot, card, job):
    before = job.model_dump_json()
    card.begin()
    for _ in range(10):
        qtbot.keyClick(card.entry.slider, Qt.Key.Key_Right)
    assert card.entry.box.text() == "+5.0 mm"
    assert "rake 26.82°" in card.picture.accessibleDescription()
    assert said(card, "trail, what if +5.0 mm") == (
        "trail, what if +5.0 mm: 117.0 mm, changed by −1.2 against the sheet"
    )
    qtbot.keyClick(card.entry.slider, Qt.Key.Key_End)
    assert card.entry.box.text() == "+20.0 mm"
    qtbot.keyClick(card.entry.slider, Qt.Key.Key_Home)
    assert card.entry.box.text() == "−20.0 mm"
    assert job.model_dump_json() == before


def test_a_raise_is_typed_in_any_unit_and_followed_as_it_is_typed(qtbot, card):
    card.entry.box.setFocus()
    card.entry.box.selectAll()
    qtbot.keyClicks(card.entry.box, "0.1 in")
    assert "rake 26.91°" in card.picture.accessibleDescription()
    assert card.entry.slider.value() == 5
    qtbot.keyClick(card.entry.box, Qt.Key.Key_Return)
    assert card.entry.box.text() == "+2.5 mm"


@pytest.mark.parametrize(
    ("typed", "why"),
    [
        pytest.param("high", "", id="no number"),
        pytest.param("25", "between −20.0 mm and +20.0 mm", id="too far"),
        pytest.param("3 kg", "", id="another unit"),
    ],
)
def test_what_cannot_be_supposed_stays_in_its_box_with_a_sentence(qtbot, card, typed, why):
    figures = card.picture.accessibleDescription()
    card.entry.box.setFocus()
    card.entry.box.selectAll()
    qtbot.keyClicks(card.entry.box, typed)
    qtbot.keyClick(card.entry.box, Qt.Key.Key_Return)
    assert card.entry.box.text() == typed
    assert card.entry.box.accessibleDescription()
    assert why in card.entry.box.accessibleDescription()
    assert any(
        text and text.lower() == card.entry.box.accessibleDescription().lower()
        for text in texts(card)
    )
    assert card.picture.accessibleDescription() == figures
    qtbot.keyClick(card.entry.nought, Qt.Key.Key_Space)
    assert card.entry.box.text() == "0.0 mm"
    assert card.entry.box.accessibleDescription() == ""


def test_escape_puts_the_raise_back_to_what_it_was(qtbot, card):
    card.entry.box.setFocus()
    card.entry.box.selectAll()
    qtbot.keyClicks(card.entry.box, "3")
    qtbot.keyClick(card.entry.box, Qt.Key.Key_Return)
    before = card.entry.box.text()
    assert before == "+3.0 mm"
    card.entry.box.selectAll()
    qtbot.keyClicks(card.entry.box, "7")
    raised = card.entry.slider.value()
    qtbot.keyClick(card.entry.box, Qt.Key.Key_Escape)
    assert card.entry.box.text() == before
    assert card.entry.slider.value() < raised


def test_turned_round_it_says_the_other_side(qtbot, card):
    qtbot.keyClick(card.turn_round, Qt.Key.Key_Space)
    assert any("seen from the left" in text for text in texts(card))
    qtbot.keyClick(card.turn_round, Qt.Key.Key_Space)
    assert any("seen from the right" in text for text in texts(card))


def test_the_wheel_does_not_move_the_slider(qtbot, card):
    middle = QPointF(card.entry.slider.rect().center())
    event = QWheelEvent(
        middle,
        card.entry.slider.mapToGlobal(middle),
        QPoint(0, 0),
        QPoint(0, 120),
        Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(card.entry.slider, event)
    assert card.entry.slider.value() == 0


def test_another_reading_is_drawn_at_once_and_the_supposed_raise_stays(qtbot, card, job):
    card.entry.slider.setValue(4)
    heights = job.align.protrusion.with_changes(left=(SignedLength.typed("9 mm"),))
    changed = job.with_changes(align=job.align.with_changes(protrusion=heights))
    card.show_job(changed, assess(changed))
    assert said(card, "axle lean, as it stands").startswith("axle lean, as it stands: 1.1")
    assert card.entry.box.text() == "+2.0 mm"


def test_what_the_sheet_lacks_is_missing_in_words_and_the_rest_is_drawn(qtbot, job):
    steering = job.sheet.steering.with_changes(rake=None, wheelbase=None)
    job = job.with_changes(sheet=job.sheet.with_changes(steering=steering))
    card = shown(qtbot, job)
    assert "rake: missing" in card.picture.accessibleDescription()
    assert "trail: missing" in card.picture.accessibleDescription()
    lacking = next(text for text in texts(card) if text.startswith("Not on the sheet"))
    assert "rake, wheelbase" in lacking
    assert "usual proportions" in lacking
    assert said(card, "axle lean, as it stands").endswith("left end high")


def test_what_the_sheet_gives_is_dimensioned_although_something_else_is_missing(qtbot, job):
    steering = job.sheet.steering.with_changes(rear_radius=None)
    job = job.with_changes(sheet=job.sheet.with_changes(steering=steering))
    card = shown(qtbot, job)
    assert card.picture.accessibleDescription() == (
        "rake 27.00°, trail 118.2 mm, normal trail 105.3 mm, wheelbase 1450 mm"
    )
    assert said(card, "rake, as it stands").endswith("missing")


def test_a_wheelbase_that_cannot_be_is_said_and_nothing_breaks(qtbot, job):
    steering = job.sheet.steering.with_changes(wheelbase=Length.typed("14 mm"))
    job = job.with_changes(sheet=job.sheet.with_changes(steering=steering))
    card = shown(qtbot, job)
    assert any("the two tyres would overlap" in text for text in texts(card))
    card.entry.slider.setValue(9)
    assert card.entry.box.accessibleDescription() == ""


def test_text_that_cannot_be_read_stays_marked_while_other_readings_come_in(qtbot, card, job):
    card.entry.box.setFocus()
    card.entry.box.selectAll()
    qtbot.keyClicks(card.entry.box, "high")
    why = card.entry.box.accessibleDescription()
    card.show_job(job, assess(job))
    assert (card.entry.box.text(), card.entry.box.accessibleDescription()) == ("high", why)


def test_an_empty_job_is_drawn_all_the_same(qtbot):
    card = shown(qtbot, Job())
    card.entry.slider.setValue(6)
    assert "rake: missing" in card.picture.accessibleDescription()
    assert not card.grab().isNull()


def test_in_inches_the_slider_goes_by_fiftieths_and_ends_near_twenty_mm(qtbot, job):
    card = shown(qtbot, job, Preferred(length="in"))
    card.begin()
    qtbot.keyClick(card.entry.slider, Qt.Key.Key_Right)
    assert card.entry.box.text() == "+0.020 in"
    qtbot.keyClick(card.entry.slider, Qt.Key.Key_End)
    assert card.entry.box.text() == "+0.780 in"
    assert card.entry.box.accessibleDescription() == ""


@pytest.mark.parametrize("width", [480, 1000], ids=["folded", "side by side"])
def test_no_figure_is_cut_off(qtbot, job, width):
    card = shown(qtbot, job, size=(width, 480))
    card.entry.slider.setValue(40)
    QApplication.processEvents()
    for each in card.findChildren(QLabel):
        if each.isVisible() and each.text() and not each.wordWrap():
            needed = each.fontMetrics().horizontalAdvance(each.text())
            assert each.width() >= needed - 1, each.text()


def test_not_shown_it_costs_nothing_and_shown_it_is_up_to_date(qtbot, job):
    card = RoadCard(theme_for(Appearance.LIGHT), Preferred())
    qtbot.addWidget(card)
    card.show_job(job, assess(job))
    assert card.picture.accessibleDescription() == ""
    card.show()
    assert "rake 26.97°" in card.picture.accessibleDescription()
