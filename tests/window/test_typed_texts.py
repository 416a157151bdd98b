"""What is typed and not kept outlives a change of language, units, size of text and colours."""

from dataclasses import replace

import pytest

from aligner.assessment import Stage
from aligner.drawing.theme import Appearance
from aligner.job import Job
from aligner.window.language import speak_language
from aligner.window.preferences import Preferences
from aligner.window.widgets.typed_line import ValueLine
from tests.window.hands import at_hand, here, press, tab_to, write

CHOICES = {
    "language": "de",
    "length": "in",
    "torque": "lbf·ft",
    "text_size": 150,
    "appearance": Appearance.DARK,
}


@pytest.fixture(autouse=True)
def _english_after():
    yield
    speak_language("en")


def change(window, **choices):
    """Change what is preferred, one choice after the other, and go back to the stage."""
    chosen = Preferences()
    window.show_preferences()
    for name, value in choices.items():
        chosen = replace(chosen, **{name: value})
        window.take_preferences(chosen)
    window.go_back()


@pytest.mark.parametrize(
    ("stage", "name", "typed"),
    [
        (Stage.ALIGN, "left leg, reading 1", "4.x2"),
        (Stage.ALIGN, "left side, reading 2", "18{3}"),
        (Stage.BIKE, "leg spacing, centre to centre", "18x"),
        (Stage.BUILD, "left gap, reading 1", "18&"),
    ],
)
def test_a_text_that_was_refused_stands_there_again(window, stage, name, typed):
    window.go_to(stage)
    tab_to(name)
    press("Ctrl+A")
    write(typed)
    press("Enter")
    line = at_hand()
    press("Tab")
    place = [each for each in window.findChildren(type(line)) if each.isVisible()].index(line)
    before = window.open_job.job
    change(window, **CHOICES)
    lines = [each for each in window.findChildren(type(line)) if each.isVisible()]
    assert [at for at, each in enumerate(lines) if each.text() == typed] == [place]
    assert lines[place].property("refused") == "true"
    assert window.open_job.job is before


def test_a_refused_text_waits_behind_the_bench_view(window):
    tab_to("left leg, reading 1")
    press("Ctrl+A")
    write("4.x2")
    kind = type(at_hand())
    for language in ("de", "en"):
        window.show_bench()
        change(window, language=language)  # goes back to the stage
        window.show_bench()
        window.take_preferences(Preferences(text_size=150))
        window.show_bench()
        window.take_preferences(Preferences())
    window.go_to(Stage.ALIGN)
    cells = [cell for cell in window.findChildren(kind) if cell.isVisible()]
    assert "4.x2" in [cell.text() for cell in cells]


@pytest.mark.parametrize("choices", [{"language": "de"}, {"language": "de", "length": "in"}])
def test_a_refused_text_that_could_be_read_now_is_not_taken_for_meant(window, choices):
    tab_to("left leg, reading 1")
    press("Ctrl+A")
    write("1,450")
    press("Tab")
    before = window.open_job.job
    change(window, **choices)
    assert window.open_job.job == before
    cells = [cell.text() for cell in window.findChildren(ValueLine) if cell.isVisible()]
    assert cells[0].startswith("6,7")  # as kept before, and said in German
    assert "1,450" not in cells


def test_a_text_is_not_carried_into_another_job(window):
    window.go_to(Stage.BIKE)
    tab_to("leg spacing, centre to centre")
    press("Ctrl+A")
    write("18x")
    change(window, language="de")
    window.go_to(Stage.ALIGN)
    window.show_job(Job())
    window.go_to(Stage.BIKE)
    assert "18x" not in [line.text() for line in window.findChildren(type(at_hand()))]


@pytest.mark.parametrize(
    ("stage", "steps"), [(Stage.TIGHTEN, "tightening list"), (Stage.STRIP, "loosening list")]
)
def test_a_reason_half_written_is_there_when_its_step_is_ticked(window, stage, steps):
    window.go_to(stage)
    tab_to(steps)
    press("Down", "Down", "Space")
    write("the {clamp} was loose & wet")
    change(window, **CHOICES)
    press("Down", "Down", "Space")
    assert at_hand().text() == "the {clamp} was loose & wet"
    press("Enter")
    job = window.open_job.job
    log = job.log if stage is Stage.TIGHTEN else job.strip.log
    assert [entry.reason for entry in log] == ["the {clamp} was loose & wet"]


def test_a_name_half_typed_for_the_sign_off_is_there_again(window):
    window.go_to(Stage.PROVE)
    tab_to("Name for the sign-off")
    write("A. Test")
    change(window, **CHOICES)
    assert window.page(Stage.PROVE).sign_off_card.name.text() == "A. Test"
    assert window.open_job.job.prove.sign_off is None


def test_a_value_seen_keeps_the_unit_it_was_typed_in(window):
    window.go_to(Stage.TIGHTEN)
    tab_to("value seen on the wrench")
    press("Ctrl+A")
    write("17.5")
    change(window, **CHOICES)
    assert window.page(Stage.TIGHTEN).door.value.text() == "17,5 N·m"


def test_what_is_typed_for_a_step_stays_while_the_manual_is_read(window):
    window.go_to(Stage.TIGHTEN)
    tab_to("value seen on the wrench")
    press("Ctrl+A")
    write("17.5")
    window.show_manual()
    window.go_back()
    assert window.page(Stage.TIGHTEN).door.value.text() == "17.5"


def test_the_form_of_a_wrench_is_open_again_as_it_was_left(window):
    window.go_to(Stage.TIGHTEN)
    tab_to("Wrenches")
    press("Enter")
    tab_to("Add a wrench")
    press("Enter")
    write("long {one}")
    press("Enter")
    write("5 N")
    change(window, **CHOICES)
    assert here() == "Name"
    assert at_hand().text() == "long {one}"
    press("Enter")
    assert at_hand().text() == "5 N"
    assert window.open_job.job.wrenches.keys() == {
        "small wrench", "large wrench", "old wrench in lbf·ft",
    }  # fmt: skip
