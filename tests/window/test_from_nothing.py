"""One job from an empty window to the signed card and the next job, by key presses alone.

The tests are one chain, each the next hour of the same work. After each the job is saved, the
window closed, and another opened on the file: it must hold what the last one held, to the
character, and open at the stage where the work stands. All figures are invented.
"""

from datetime import UTC, datetime, timedelta

import pytest
from pypdf import PdfReader
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from aligner.drawing.theme import Appearance, theme_for
from aligner.storage.document_file import load_job
from aligner.window.main_window import MainWindow
from tests.window.hands import (
    choose,
    go_to,
    here,
    press,
    press_while,
    read,
    said,
    stage_on_screen,
    tab_to,
    type_into,
    write,
)

TORQUES = (20, 60, 20, 20, 23, 23, 15, 15, 22, 22, 20, 20, 62)
CHECKS = (
    "Brake lever pumped and held",
    "Brake pads and fluid looked at",
    "Steering free from lock to lock",
    "Hoses and cables free at full lock",
    "Axle and wheel free",
    "Fork works smoothly",
    "Lamps and instruments work",
)


class Bench:
    """The window of the day, its clock, and the folder the files lie in."""

    def __init__(self, folder):
        self.folder = folder
        self.time = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)
        self.answer = ""  # what the person types into the next file dialog
        self.window = None

    def now(self):
        self.time += timedelta(minutes=1)
        return self.time

    @property
    def job(self):
        return self.window.open_job.job

    def open(self, name=""):
        self.window = MainWindow(theme_for(Appearance.LIGHT), now=self.now)
        if name:
            self.window.open_path(self.folder / name)
        self.window.resize(1280, 720)
        self.window.show()
        self.window.activateWindow()
        assert QTest.qWaitForWindowActive(self.window)

    def save_and_open_again(self, name, stage):
        press("Ctrl+S")
        before = self.job
        press("Ctrl+W")
        assert not self.window.isVisible(), "closing asked, so something was not saved"
        assert load_job(self.folder / name)[0] == before
        self.open(name)
        assert self.job == before
        assert stage_on_screen().startswith(stage)


@pytest.fixture(scope="module")
def bench(tmp_path_factory):
    made = Bench(tmp_path_factory.mktemp("jobs"))
    with pytest.MonkeyPatch.context() as patch:
        for ask in ("getSaveFileName", "getOpenFileName"):
            patch.setattr(QFileDialog, ask, lambda *_, **__: (str(made.answer), ""))
        patch.setattr(QFileDialog, "getExistingDirectory", lambda *_, **__: str(made.answer))
        made.open()
        yield made
        made.window.open_job.edits.setClean()
        made.window.close()


def answer(question, wanted):
    """Take one of the answers side by side, as in a row of the start card."""
    while not here().startswith(f"{question}: "):
        press("Tab")
    for _ in range(4):
        if here() != f"{question}: {wanted}":
            press("Right")
    assert here() == f"{question}: {wanted}"


def test_a_sheet_is_begun_from_a_pattern_and_completed(bench):
    assert said() == "Name the bike and choose its pattern."
    assert here() == "Name of the bike"
    for text in ("Thornbeck 500", "front end refit"):
        write(text)
        press("Enter")
    answer("Front brake", "none on the legs")
    answer("Stem, at the top", "head bolt alone")
    press("Enter")
    assert here() == "Start this sheet"
    press("Enter")
    assert said() == "16 values are missing."

    tab_to("leg spacing, centre to centre")
    for size in [
        "180 mm",
        "200 mm",
        "430 mm",
        "38 mm",
        "37 mm",
        "27 deg",
        "60 mm",
        "300",
        "310",
        "1450",
    ]:
        write(size)
        press("Enter")
    for limit in ("4 mm", "0,5 mm", "0.5 mm", ""):
        write(limit)
        press("Enter")
    assert here() == "stem nut, torque as printed"
    for torque in TORQUES:
        write(f"{torque} N·m")
        press("Enter")

    assert here() == "Missing: stem nut: seating torque. Go to its box"
    press("Enter")
    for text in ("25 N·m", "1/8 turn"):
        write(text)
        press("Enter")
    type_into("stem nut, seating torque, source", "manual p. 6-14")
    tab_to("axle, open it")
    press("Space")
    type_into("axle, again after, on the road", "100 km")
    type_into("axle, torque as printed", "62 N·m")
    assert said() == "Sheet complete."
    assert here() == "Go on to Strip   Enter"

    bench.answer = bench.folder / "refit.job.json"
    bench.save_and_open_again("refit.job.json", "Strip")
    assert (bench.job.sheet.name, bench.job.title) == ("Thornbeck 500", "front end refit")


def test_it_is_written_down_as_found(bench):
    assert here() == "left leg, reading 1"
    write("4.")
    press("Ctrl+S")  # saved in the middle of a number, and typed on
    write("6")
    press("Enter")
    for reading in ("4,5", "4.6 mm"):
        write(reading)
        press("Enter")
    read("right leg", "3.2", "3.2", "3.3")
    choose("gauge of the heights as found", "depth gauge")
    read("left side", "183.0", "183.1", "183.0")
    read("right side", "184.6", "184.6", "184.7")
    choose("gauge of the bracket as found", "vernier caliper")
    press("Enter")
    for text in ("21 mm from stop to lever", "2 rings", "2 rings", "a notch straight ahead"):
        write(text)
        press("Enter")
    tab_to("Show: Parts off")
    press("Enter")
    for text in ("Front wheel", "bag 1, with its spacers", "arrow forward", "Mudguard", "tin 2"):
        write(text)
        press("Enter")
    press("Enter")

    bench.save_and_open_again("refit.job.json", "Strip")
    assert [part.name for part in bench.job.strip.removed] == ["Front wheel", "Mudguard"]
    left = [reading.text for reading in bench.job.as_found.protrusion.left]
    assert left == ["4.6 mm", "4.5 mm", "4.6 mm"]


def test_it_is_loosened_in_order_but_for_one_step_with_its_reason(bench):
    tab_to("loosening list")
    press("Space", "Down", "Down", "Down", "Space")
    assert here() == "reason"
    write("wheel was out already for a tyre")
    press("Enter")
    press_while("loosening list", "Space")
    assert said() == "Everything is loosened."
    assert here() == "Go on to Inspect   Enter"

    bench.save_and_open_again("refit.job.json", "Strip")
    reasons = [entry.reason for entry in bench.job.strip.log if entry.reason]
    assert reasons == ["wheel was out already for a tyre"]


def measure(limit, *readings):
    """Readings of a place, then its limit and where that is printed."""
    read(here().removesuffix(", reading 1"), *readings)
    for text in (limit, "manual p. 6-9"):
        write(text)
        press("Enter")


def test_every_place_is_looked_at_with_one_to_watch_and_one_replaced(bench):
    go_to("inspect")
    measure("0.2", "0.06", "0.04", "0.06")
    press("1", "Enter", "1", "Enter")
    measure("0.3", "0.1", "0.12", "0.1")
    press("2")
    type_into("Bush play, left leg: note", "a trace more at half travel")
    for _ in range(120):
        if not said().startswith(("Look at", "Measure")):
            break
        if "oil seal, left" in said():
            press("3")
            tab_to("Oil seal, left leg: new part fitted")
            press("Space")
            type_into("Oil seal, left leg: note", "lip cut")
        elif "reading" in here():
            press("Enter")  # not measured today
        else:
            press("1", "Enter")
    assert said() == "All looked at, nothing left to fit."
    assert here() == "Go on to Build   Enter"

    bench.save_and_open_again("refit.job.json", "Inspect")
    noted = {found.note: found for found in bench.job.inspect.found if found.note}
    assert noted["a trace more at half travel"].finding.value == "watch"
    assert noted["lip cut"].finding.value == "replace"
    assert noted["lip cut"].is_fitted


def test_both_legs_are_built_up_and_the_bearing_set(bench):
    go_to("build")
    press(*["Space"] * 8)
    assert said().startswith("Missing on the sheet: air gap")
    assert here() == "where these values come from"
    write("manual p. 13-4")
    press("Enter")
    read("air gap", "140")
    read("gap, plus or minus", "2")
    read("bore of the tube", "32.5")
    read("left gap", "152", "152", "153")
    read("right gap", "140", "140.5", "140")
    assert said().startswith("Add ")
    choose("gauge of the air gaps", "steel rule")
    press("Enter")
    for text in ("10W fork oil", "250", "245"):
        write(text)
        press("Enter")
    assert here() == "Read the gaps again"
    press("Enter")
    read("left gap", "140", "140", "140.5")
    read("right gap", "140", "140.5", "140")
    assert said().startswith("Spring and parts in")

    bench.save_and_open_again("refit.job.json", "Build")
    assert len(bench.job.build.earlier) == 1
    assert bench.job.sheet.sources["legs.bore"] == "manual p. 13-4"
    assert here().startswith("Spring and parts in")
    for _ in range(11):
        press("Space")
    assert said() == "Steps of Tighten come before the stem nut."
    go_to("tighten")
    press("Space", "Space")
    go_to("build")
    press("Space", "Space", "Space")
    assert said() == "Check the head bearing."
    for text in ("12", "12", "12.5", "350"):
        write(text)
        press("Enter")
    press("Down", "Enter")
    assert said() == "The legs and the head bearing are built."
    assert here() == "Go on to Align   Enter"

    bench.save_and_open_again("refit.job.json", "Build")


def test_it_is_aligned_at_the_second_attempt(bench):
    assert here() == "Go on to Align   Enter"
    press("Enter")
    assert here() == "left leg, reading 1"
    read("left leg", "5.4", "5.4", "5.5")
    read("right leg", "4", "4", "4.1")
    assert said() == "Let the left leg down 1.4 mm."
    tab_to("Add a pair of points")
    press("Enter")
    read("left side", "183.0", "183.1", "183.0")
    read("right side", "184.6", "184.6", "184.7")
    tab_to("Measure again   Enter")
    press("Enter")
    read("left leg", "4.1", "4", "4.1")
    read("right leg", "4", "4", "4.1")
    read("left side", "183.9", "183.8", "183.8")
    read("right side", "183.8", "183.8", "183.8")
    assert said() == "The heights are not settled yet: name the gauge."
    tab_to("Show: Gauges")
    press("Enter")
    choose("gauge for heights", "depth gauge")
    choose("gauge for pair 1", "vernier caliper")
    press("Enter")
    assert said() == "Nothing left to correct."
    bench.save_and_open_again("refit.job.json", "Align")
    assert [len(attempt.align.protrusion.left) for attempt in bench.job.attempts] == [3]


def test_the_whole_list_is_done_up_and_measured_again_at_its_hold_point(bench):
    assert here() == "Go on to Tighten   Enter"
    press("Enter")
    press_while("tightening list", "Space")
    assert here() == "reason"
    assert said() == "Measure both heights again."
    tab_to("Read the heights again")
    press("Enter")
    read("left leg", "4.1", "4", "4.1")
    read("right leg", "4", "4", "4.1")
    assert said() == "Nothing left to correct."
    bench.save_and_open_again("refit.job.json", "Tighten")

    press_while("tightening list", "Space")
    assert said() == "Everything is done up."
    assert not [entry for entry in bench.job.log if entry.reason]
    bench.save_and_open_again("refit.job.json", "Tighten")


def test_it_is_proved_and_signed_and_its_card_reads_as_the_job(bench):
    go_to("prove")
    for check in CHECKS:
        tab_to(check)
        press("Space")
    type_into("Road test", "pulls straight, no knock", enter=False)
    assert said() == "Not ready to sign off."
    bench.save_and_open_again("refit.job.json", "Prove")
    assert bench.job.prove.road_test == "pulls straight, no knock"

    go_to("strip")
    for part in ("Mudguard", "Front wheel"):
        assert here().startswith(f"{part}, to go back")
        press("Space")
    assert said() == "Everything that came off is back on."
    go_to("prove")
    type_into("Name for the sign-off", "R. Holm")
    assert said() == "1 fastener is still to be checked again."
    assert bench.job.prove.sign_off.name == "R. Holm"

    bench.answer = bench.folder / "card.pdf"
    press("Alt+F", "D")
    assert here() == "Understood"
    press("Enter")
    pages = PdfReader(bench.answer).pages
    card = " ".join(word for page in pages for word in page.extract_text().split())
    for words in ("Thornbeck 500", "front end refit", "R. Holm", "lip cut", "62 N·m"):
        assert words in card, words
    bench.save_and_open_again("refit.job.json", "Prove")


def test_the_fasteners_are_checked_again_at_a_later_date(bench):
    bench.time += timedelta(days=9)
    tab_to("Axle...")
    press("Space")
    bench.save_and_open_again("refit.job.json", "Prove")
    assert [entry.at.date().isoformat() for entry in bench.job.prove.rechecks] == ["2026-05-11"]


def test_the_next_job_begins_from_it_and_what_was_watched_comes_back(bench, qtbot):
    bench.time += timedelta(days=300)
    press("Ctrl+H")
    bench.answer = bench.folder
    tab_to("Another folder...")
    press("Enter")
    qtbot.waitUntil(lambda: said() == "1 job.")
    tab_to("search the jobs")
    write("thornbeck")
    press("Enter")
    tab_to("Next job on this bike")
    press("Enter")
    assert bench.job.sheet.name == "Thornbeck 500"
    assert bench.job.log == ()
    go_to("bike")
    type_into("this job", "fork oil and a look at the bushes")
    tab_to("Inspect: 1 from last time")
    press("Enter")
    assert said() == "Measure the bush play, left leg."
    assert here() == "swing, one a height, reading 1"

    bench.answer = bench.folder / "next.job.json"
    bench.save_and_open_again("next.job.json", "Strip")
    assert bench.job.title == "fork oil and a look at the bushes"
    assert [carried.note for carried in bench.job.inspect.carried] == [
        "a trace more at half travel"
    ]
