"""Every stage as a screen reader and the Tab key find it, and the main job driven through both.

What is asked follows WCAG 2.2: 4.1.2 name, role, value; 2.1.1 and 2.1.2 keyboard without a
trap; 2.4.3 focus order; 2.5.8 target size, of which the least is 24 (seen (secondary)); 30 is
this program's own.
"""

from itertools import pairwise

import pytest
from PySide6.QtCore import QAbstractAnimation, QEvent, QObject, QSettings, Qt
from PySide6.QtGui import QAccessible
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QSlider,
    QVBoxLayout,
    QWidget,
)

from aligner.assessment import Stage
from aligner.data_files import demo
from aligner.drawing.theme import Appearance, theme_for
from aligner.job import Job
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.align.views import View
from aligner.window.bench.view import BenchView
from aligner.window.main_window import MainWindow
from aligner.window.open_job import OpenJob
from aligner.window.setting import Setting
from aligner.window.widgets.choice import Choice
from aligner.window.widgets.drawing_card import DrawingCard
from aligner.window.widgets.labels import Caution
from aligner.window.widgets.style_sheet import style_sheet
from tests.window.accessible_tree import (
    Text,
    card_of,
    find,
    goes_back,
    has_nothing_to_scroll,
    is_one_of_several,
    press,
    spoken_name,
    stop_of,
    stops_in,
    tab_walk,
)
from tests.window.conftest import Clock
from tests.window.tighten_jobs import true_job

LEAST_HEIGHT = 30
EMPTY = "no job yet"
DEMOS = (
    "fellside-left-leg-high",
    "fellside-true",
    "fellside-pairs-disagree",
    "fellside-unsettled",
    "fellside-air-assist",
    "fellside-anti-dive",
    "quernbeck-upside-down",
    EMPTY,
)
#: Pages beside the stages.
BESIDE = ("manual", "history", "preferences")
#: What Tab is walked through on; the others differ from these in what they say.
WALKED = ("fellside-left-leg-high", "quernbeck-upside-down", EMPTY)
PLACES = (
    *(stage.value for stage in Stage),
    *(view.name for view in View if view is not View.READINGS),
    *BESIDE,
)


def job_of(name):
    return Job() if name == EMPTY else load_job(demo(f"{name}.job.json"))[0]


def settle():
    for _ in range(2):
        QApplication.sendPostedEvents()
        QApplication.processEvents()


@pytest.fixture(scope="module")
def windows(qapp, tmp_path_factory):
    """A window on each demo job, made when it is first asked for."""
    made = {}
    settings = QSettings(str(tmp_path_factory.mktemp("kept") / "s.ini"), QSettings.Format.IniFormat)
    settings.setValue("folder", str(demo("history")))

    def window_on(name):
        if name not in made:
            window = MainWindow(theme_for(Appearance.LIGHT), now=Clock(), settings=settings)
            window.show_job(job_of(name))
            window.show()
            made[name] = window
        window = made[name]
        if not window.isActiveWindow():
            window.activateWindow()
            assert QTest.qWaitForWindowActive(window)
        return window

    yield window_on
    for window in made.values():
        window.open_job.edits.setClean()
        window.open_job.drop_draft()
        window.hide()
        window.deleteLater()


@pytest.fixture
def page_at(windows):
    """Goes to a stage, or to a view of the Align stage; gives the window."""

    def go(name, place):
        window = windows(name)
        if place in BESIDE:
            getattr(window, f"show_{place}")()
        elif place in View.__members__:
            window.go_to(Stage.ALIGN)
            window.page(Stage.ALIGN).go_to_view(View[place])
        else:
            window.go_to(Stage(place))
            if place == Stage.ALIGN.value:
                window.page(Stage.ALIGN).go_to_view(View.READINGS)
        settle()
        return window

    return go


def on_demos(names):
    return pytest.mark.parametrize("name", names)


at_every_place = pytest.mark.parametrize("place", PLACES, ids=str.lower)


def told(stop):
    return f"{type(stop.widget).__name__} called {stop.name!r}"


def is_value_told(stop):
    """Whether what a screen reader reads of a box is what stands in it."""
    interface, widget = stop.interface, stop.widget
    if isinstance(widget, QLineEdit):
        return interface.text(Text.Value) == widget.text()
    if isinstance(widget, QComboBox):
        return interface.text(Text.Value) == widget.currentText()
    if isinstance(widget, QAbstractButton) and widget.isCheckable():
        return bool(interface.state().checked) == widget.isChecked()
    if isinstance(widget, QSlider):
        return interface.valueInterface().currentValue() == widget.value()
    return True


def drawings_in(page):
    """Whatever is painted by this program and can be seen."""
    for widget in page.findChildren(QWidget):
        is_ours = type(widget).__module__.startswith("aligner.")
        is_painted = is_ours and "paintEvent" in vars(type(widget))
        if widget.isVisible() and (is_painted or isinstance(widget, DrawingCard)):
            yield widget


def look_at_stops(page):
    """Every stop has a name that no other has, a role, its value, and room for a finger."""
    stops = stops_in(page)
    for stop in stops:
        assert stop.name.strip(), f"{told(stop)} in {type(stop.widget.parentWidget()).__name__}"
        assert stop.fits, f"{told(stop)} is a {stop.role}"
        assert is_value_told(stop), told(stop)
        assert stop.widget.height() >= LEAST_HEIGHT, told(stop)
    names = [stop.name for stop in stops]
    assert not [told(stop) for stop in stops if names.count(stop.name) > 1], "one name twice"


def walk_with_tab(window):
    """Tab goes as the eye goes, reaches everything and comes round; Shift+Tab goes back."""
    wanted = stops_in(window.centralWidget())
    start = QApplication.focusWidget()
    assert start is not None, "nothing has the keyboard"

    walk, end = tab_walk()

    assert end is start, f"Tab goes from {told(stop_of(walk[-1]))} back to {told(stop_of(end))}"
    missed = [stop for stop in wanted if stop.widget.isVisible() and stop.widget not in walk]
    assert not [
        told(stop)
        for stop in missed
        if not is_one_of_several(stop.widget) and not has_nothing_to_scroll(stop.widget)
    ]
    for before, after in pairwise(stop_of(widget) for widget in walk):
        is_one_card = card_of(before.widget) is card_of(after.widget)
        is_page = before.widget.isAncestorOf(after.widget)
        assert is_page or not is_one_card or not goes_back(before.place, after.place), (
            f"from {told(before)} back to {told(after)}"
        )

    back, _ = tab_walk(Qt.Key.Key_Backtab)
    names = [told(stop_of(each)) for each in (walk[0], *reversed(walk[1:]))]
    assert [told(stop_of(each)) for each in back] == names


@at_every_place
@on_demos(DEMOS)
def test_every_stop_and_every_drawing_says_what_it_is(page_at, name, place):
    page = page_at(name, place).centralWidget()
    look_at_stops(page)
    for drawing in drawings_in(page):
        interface = QAccessible.queryAccessibleInterface(drawing)
        assert spoken_name(interface).strip(), type(drawing).__name__
        if isinstance(drawing, DrawingCard):
            assert interface.text(Text.Description).strip(), spoken_name(interface)


@at_every_place
@on_demos(WALKED)
def test_tab_goes_as_the_eye_goes_reaches_everything_and_comes_round(page_at, name, place):
    walk_with_tab(page_at(name, place))


def open_fasteners(window):
    window.go_to(Stage.BIKE)
    for row in list(window.page(Stage.BIKE).fasteners.rows.values())[:2]:
        row.open_button.click()


def open_wrenches(window):
    window.go_to(Stage.TIGHTEN)
    window.page(Stage.TIGHTEN).door.wrenches.click()


def open_gauges(window):
    window.go_to(Stage.ALIGN)
    window.page(Stage.ALIGN).go_to_view(View.GAUGES)
    for fold in window.page(Stage.ALIGN).view_page(View.GAUGES).folds.values():
        fold.set_open(True)


def list_the_parts(window):
    window.go_to(Stage.STRIP)
    find_button = next(
        button
        for button in window.page(Stage.STRIP).findChildren(QAbstractButton)
        if button.text() == "&Parts off"
    )
    find_button.click()


@pytest.mark.parametrize(
    "opening",
    [open_fasteners, open_wrenches, open_gauges, list_the_parts],
    ids=lambda o: o.__name__,
)
def test_what_folds_out_is_told_and_walked_as_well(qtbot, opening):
    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock())
    qtbot.addWidget(window)
    window.show_job(true_job())
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    opening(window)
    settle()

    look_at_stops(window.centralWidget())
    walk_with_tab(window)
    window.open_job.edits.setClean()


@on_demos(DEMOS)
def test_every_line_of_the_lists_can_be_read(page_at, name):
    window = page_at(name, "tighten")
    steps = window.page(Stage.TIGHTEN).list
    interface = QAccessible.queryAccessibleInterface(steps)
    lines = [interface.child(row).text(Text.Name) for row in range(interface.childCount())]
    shown = [line for row, line in enumerate(lines) if not steps.item(row).isHidden()]
    assert len(lines) == steps.count()
    assert all(line.strip() for line in shown)
    assert not shown or any("in hand" in line for line in shown)


def test_no_stage_opens_a_window_of_its_own(qtbot):
    """A part shown before it has a place in the window would flash up and take the keyboard."""
    opened = []

    class Watch(QObject):
        def eventFilter(self, watched, event):
            is_shown = event.type() == QEvent.Type.Show and isinstance(watched, QWidget)
            if is_shown and watched.isWindow() and watched is not window:
                opened.append(type(watched).__name__)
            return False

    window = MainWindow(theme_for(Appearance.LIGHT), now=Clock())
    qtbot.addWidget(window)
    watch = Watch()
    QApplication.instance().installEventFilter(watch)
    window.show_job(job_of("fellside-left-leg-high"))
    window.show()
    for stage in Stage:
        window.go_to(stage)
    QApplication.instance().removeEventFilter(watch)
    window.open_job.edits.setClean()
    assert opened == []


def test_nothing_moves_by_itself(page_at):
    """Reduced motion is honoured by having none: no animation is running or even made."""
    window = page_at("fellside-left-leg-high", "align")
    combo = window.page(Stage.ALIGN).height_card.policy
    combo.showPopup()
    settle()
    moving = QApplication.instance().findChildren(QAbstractAnimation)
    moving += [each for top in QApplication.topLevelWidgets() for each in _animations(top)]
    combo.hidePopup()

    assert not [each for each in moving if each.state() == QAbstractAnimation.State.Running]


def _animations(widget):
    return widget.findChildren(QAbstractAnimation)


def test_a_caution_made_with_its_words_is_seen_once_it_stands_somewhere(qtbot):
    caution = Caution("it drops")
    assert not caution.isVisible()
    page = QWidget()
    qtbot.addWidget(page)
    QVBoxLayout(page).addWidget(caution)
    page.show()
    assert caution.isVisible()


def test_a_choice_is_told_by_what_is_asked_and_its_value_by_what_is_chosen(qtbot):
    page = QWidget()
    qtbot.addWidget(page)
    choice = Choice("which gauge & why", [(1, "caliper"), (2, "rule")])
    choice.show_value(1)
    QVBoxLayout(page).addWidget(choice)
    page.show()
    interface = QAccessible.queryAccessibleInterface(choice)

    assert spoken_name(interface) == "which gauge & why"
    assert interface.text(Text.Value) == "caliper"
    assert not any(label.isVisible() for label in page.findChildren(QLabel))


@pytest.mark.parametrize("stage", list(Stage), ids=lambda stage: stage.value)
def test_the_bench_view_is_told_as_well(qtbot, stage):
    theme = theme_for(Appearance.LIGHT)
    open_job = OpenJob(job_of("fellside-left-leg-high"), now=Clock())
    view = BenchView(Setting(open_job, theme, Preferred(), Clock()))
    view.setStyleSheet(style_sheet(theme))
    qtbot.addWidget(view)
    view.resize(1280, 720)
    with qtbot.waitActive(view):
        view.show()
        view.activateWindow()
    view.show_stage(stage, lambda: ("Do this.", "Like that."))

    stops = stops_in(view)
    assert stops
    names = [stop.name for stop in stops]
    assert all(names)
    assert len(set(names)) == len(names)
    assert all(stop.widget.height() >= LEAST_HEIGHT for stop in stops)
    walk, end = tab_walk()
    assert end is walk[0]
    assert set(walk) == {stop.widget for stop in stops}
    for drawing in view.findChildren(DrawingCard):
        assert not drawing.isVisible() or drawing.accessibleDescription()


def test_the_main_job_from_readings_to_the_first_ticks_by_names_alone(qtbot, window):
    window.activateWindow()
    assert QTest.qWaitForWindowActive(window)

    def read(name, text):
        """Focus a box by its name, set its text, and look that it can be read back."""
        box = find(window, name, QAccessible.Role.EditableText)
        press(box, "SetFocus")
        box.setText(Text.Value, text)
        assert box.text(Text.Value) == text

    def do(name):
        """Press a button by its name; Qt lets it go a moment later."""
        button = find(window, name, QAccessible.Role.Button)
        with qtbot.waitSignal(button.object().clicked, timeout=2000):
            press(button)

    do("Measure again   Enter")
    find(window, "Measure how far each tube stands up.", QAccessible.Role.StaticText)
    for side in ("left", "right"):
        for number in (1, 2, 3):
            read(f"{side} leg, reading {number}", "5.0")
    for side in ("left", "right"):
        for number in (1, 2, 3):
            read(f"{side} side, reading {number}", "183.3")
    press(find(window, "Show: Readings", QAccessible.Role.CheckBox), "SetFocus")
    find(window, "Nothing left to correct.", QAccessible.Role.StaticText)
    heights = find(window, "Height, seen from the seat")
    assert heights.text(Text.Description).startswith("within")

    do("Go on to Tighten   Enter")
    first = [each.step.title for each in window.open_job.assessment.tightening.steps[:3]]
    for title in first:
        find(window, f"{title}.", QAccessible.Role.StaticText)
        do("Done   Space")

    assert len(window.open_job.job.log) == 3
    assert len(window.open_job.job.align.protrusion.left) == 3
