"""On the Tighten stage every text is said, also what is asked, refused or folded out."""

import pytest

from aligner.assessment import Stage, assess
from aligner.data_files import demo
from aligner.sheet.quantities import Torque
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred
from aligner.window.steps.seen_value import doubt, wanted_of
from aligner.window.steps.step_words import done_words
from tests.window.hands import type_into
from tests.window.tighten_jobs import at_joint, ticked_until, true_job


@pytest.fixture
def page(bracketed, window):
    window.show_job(load_job(demo("fellside-left-leg-high.job.json"))[0])
    window.go_to(Stage.TIGHTEN)
    return window.page(Stage.TIGHTEN)


def test_the_wrenches_and_their_forms_are_said(page):
    page.door.wrenches.setChecked(True)
    card = page.wrench_card
    for begin, form in (
        (card._change_wrench, card.wrench_form),
        (card._change_adapter, card.adapter_form),
    ):
        begin("")
        assert form.accessibleName().startswith("⟦")
        assert all(line.accessibleName().startswith("⟦") for line in form.lines.values())
        form.keep()
        assert form.refusal.text().startswith("⟦")
        form.leave()


def test_what_the_door_asks_is_said(page):
    page.list.setCurrentRow(5)
    page.door.act()
    assert page.door.words.text().startswith("⟦Out of order")
    page.door.leave()
    page.door.value.setText("no number")
    page.door.act()
    assert page.door.words.text().startswith("⟦")


@pytest.mark.usefixtures("bracketed")
def test_a_doubt_about_a_value_is_said_with_the_sign_of_the_language():
    goal = wanted_of(23.0, None, None, None, "23 N·m")
    said = doubt(Torque.typed("23.5 lbf·ft"), goal, Preferred())
    assert said.startswith("⟦23,5 lbf·ft, which is 31,9 N·m")


@pytest.mark.usefixtures("bracketed")
def test_how_a_step_was_done_is_said():
    job = ticked_until(true_job(), at_joint("left lower clamp", 2))
    standings = assess(job).tightening.steps
    assert done_words(standings[0]).startswith("⟦Done ")


@pytest.mark.parametrize(
    ("typed", "asked"),
    [
        ("3 1/2", "3 1/2 N·m is far under 40 N·m. Is it 3 1/2 daN·m?"),
        ("31", "31 N·m is far under 40 N·m. Is it 31 lbf·ft?"),
        ("2.3 daNm", "2.3 daN·m, which is 23 N·m, is far under 40 N·m."),
    ],
)
def test_a_value_far_out_is_asked_about_however_it_is_typed(window, typed, asked):
    window.go_to(Stage.TIGHTEN)
    type_into("value seen on the wrench", typed)
    assert window.page(Stage.TIGHTEN).door.words.text().startswith(asked)
    assert not window.open_job.job.log


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        (" ", "Type the value seen."),
        ("31 lb", "The value seen was not understood: “lb” is not clear; write lbf·ft or lbf·in."),
    ],
)
def test_a_value_that_is_none_is_refused_in_a_sentence(window, typed, said):
    window.go_to(Stage.TIGHTEN)
    type_into("value seen on the wrench", typed)
    assert window.page(Stage.TIGHTEN).door.words.text() == said
    assert not window.open_job.job.log
