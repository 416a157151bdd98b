"""Large text: every stage of every demo job, at each size, in the smallest window, in German too.

What is asked for is WCAG 2.2, success criterion 1.4.4 (resize text): up to 200 % without loss
of content or function, and 1.4.10 (reflow): scrolling in one direction only (from memory).
The window's least size, 1280 by 720, is the program's own.
"""

from itertools import product

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QScrollArea,
    QWidget,
)

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.storage.document_file import load_job
from aligner.window.align.views import View
from aligner.window.language import speak_language
from aligner.window.main_window import MainWindow
from aligner.window.preferences import Preferences
from aligner.window.widgets.labels import MainButton

_HOLDS_ITS_OWN = (QLineEdit, QComboBox, QAbstractScrollArea)
SIZES = (100, 150, 200)
#: German words are the longest of the languages spoken.
CASES = list(product(SIZES, ("en", "de")))


def demo_jobs():
    """Every demo job, and one with nothing in it."""
    found = {path.name: load_job(path)[0] for path in sorted(demo("").glob("*.job.json"))}
    return {**found, "nothing yet": Job()}


@pytest.fixture(scope="module")
def jobs():
    return demo_jobs()


@pytest.fixture(scope="module", params=CASES, ids=lambda case: f"{case[0]} %, {case[1]}")
def window(request, qapp):
    size, language = request.param
    speak_language(language)
    made = window_at(size)
    yield made
    let_go(made)
    speak_language("en")


def window_at(size, width=1280):
    chosen = Preferences(Appearance.LIGHT, size)
    made = MainWindow(theme_for(Appearance.LIGHT, size / 100), preferences=chosen)
    made.resize(width, 720)
    made.show()
    QTest.qWaitForWindowActive(made)
    return made


def let_go(window):
    window.open_job.edits.setClean()
    window.open_job.drop_draft()
    window.hide()
    window.deleteLater()
    settle()


def settle():
    """Let every part that asked for another size have it; one may lead to the next."""
    for _ in range(4):
        QApplication.sendPostedEvents()
        QApplication.processEvents()


def described(widget):
    words = widget.text() if isinstance(widget, QLabel | QAbstractButton) else ""
    return f"{type(widget).__name__} {words or widget.accessibleName()!r}"


def shown_in(page):
    return [page, *(each for each in page.findChildren(QWidget) if each.isVisible())]


def sideways(shown):
    """What would have to be scrolled sideways, or is cut off because it cannot be."""
    areas = [each for each in shown if isinstance(each, QAbstractScrollArea)]
    return [
        f"{described(area)} is {area.horizontalScrollBar().maximum()} px too wide"
        for area in areas
        if area.horizontalScrollBar().maximum() > 0
    ]


def squeezed(shown):
    """Words and buttons that are smaller than they must be."""
    found = []
    for each in shown:
        if not isinstance(each, QLabel | QAbstractButton | QComboBox):
            continue
        if isinstance(each, QLabel) and not each.text():
            continue  # it has nothing to say yet
        least = each.minimumSizeHint()
        wraps = each.hasHeightForWidth()
        high = each.heightForWidth(each.width()) if wraps else least.height()
        if each.width() < least.width() or each.height() < high:
            found.append(f"{described(each)}: {each.size()}, {least.width()} by {high} wanted")
    return found


def overlapping(shown):
    """Neighbours of which one lies over the other, by more than an edge."""
    found = []
    beside = {}
    for each in shown[1:]:
        if not isinstance(each.parentWidget(), _HOLDS_ITS_OWN):
            beside.setdefault(each.parentWidget(), []).append(each)
    for children in beside.values():
        for place, one in enumerate(children):
            for other in children[place + 1 :]:
                shared = one.geometry() & other.geometry()
                if shared.width() > 1 and shared.height() > 1:
                    found.append(f"{described(one)} and {described(other)}")
    return found


def outside(shown):
    """What stands partly outside its card."""
    found = []
    for each in shown[1:]:
        parent = each.parentWidget()
        within = isinstance(parent.parentWidget(), QAbstractScrollArea)
        if within or isinstance(parent, _HOLDS_ITS_OWN):
            continue
        if not parent.rect().adjusted(-1, -1, 1, 1).contains(each.geometry()):
            found.append(f"{described(each)} in {described(parent)}")
    return found


def faults(page):
    shown = shown_in(page)
    return [*sideways(shown), *squeezed(shown), *overlapping(shown), *outside(shown)]


def holder_of(page):
    there = page.parentWidget()
    while not isinstance(there, QScrollArea):
        there = there.parentWidget()
    return there


def bring_into_sight(widget):
    there = widget.parentWidget()
    while there is not None:
        if isinstance(there, QScrollArea):
            there.ensureWidgetVisible(widget, 0, 0)
        there = there.parentWidget()


@pytest.mark.parametrize("name", demo_jobs())
def test_nothing_is_cut_off_or_lies_over_anything_and_the_button_is_within_reach(
    window, jobs, name
):
    window.show_job(jobs[name])
    for stage in Stage:
        window.go_to(stage)
        settle()
        page = holder_of(window.page(stage))
        assert faults(page) == [], stage
        for button in page.findChildren(MainButton):
            if button.isVisible():
                bring_into_sight(button)
                assert button.visibleRegion().boundingRect() == button.rect(), stage


@pytest.mark.parametrize("view", [view for view in View if view is not View.READINGS])
def test_the_other_views_of_align_are_whole(window, jobs, view):
    window.show_job(jobs["fellside-pairs-disagree.job.json"])
    window.go_to(Stage.ALIGN)
    window.page(Stage.ALIGN).open_view(view)
    settle()
    assert faults(holder_of(window.page(Stage.ALIGN))) == []
    window.page(Stage.ALIGN).open_view(View.READINGS)


def test_preferences_and_manual_are_whole(window):
    for show in (window.show_preferences, window.show_manual, window.show_history):
        show()
        settle()
        assert faults(window.centralWidget()) == []


def test_a_fastener_that_is_opened_and_a_variant_are_whole(window, jobs):
    window.show_job(jobs["fellside-true.job.json"])
    window.go_to(Stage.BIKE)
    page = window.page(Stage.BIKE)
    next(iter(page.fasteners.rows.values())).open_button.click()
    page.files.variant_button.click()
    settle()
    assert faults(holder_of(page)) == []


def test_enter_brings_the_next_reading_into_sight(qtbot, jobs):
    window = window_at(200)
    qtbot.addWidget(window)
    window.show_job(jobs["fellside-left-leg-high.job.json"])
    window.go_to(Stage.ALIGN)
    settle()
    page = window.page(Stage.ALIGN)
    square = page.square_card.boxes["left"]
    assert square.visibleRegion().isEmpty()
    for side in ("left", "right"):
        page.height_card.boxes[side].cells[2].setFocus()
        QTest.keyClick(window.focusWidget(), Qt.Key.Key_Return)
    settle()
    cell = window.focusWidget()
    assert square.isAncestorOf(cell)
    assert cell.visibleRegion().boundingRect() == cell.rect()
    let_go(window)


def test_a_window_of_900_pixels_folds_as_well(qtbot, jobs):
    window = window_at(100, width=900)
    qtbot.addWidget(window)
    window.show_job(jobs["fellside-left-leg-high.job.json"])
    for stage in Stage:
        window.go_to(stage)
        settle()
        assert faults(holder_of(window.page(stage))) == [], stage
    let_go(window)
