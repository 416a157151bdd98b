"""The owner's wrenches and adapters: given, changed, chosen and taken away in the window."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel

from aligner.assessment import Stage
from aligner.job import WrenchChoice
from aligner.sheet.quantities import Ratio
from aligner.storage.document_file import load_job
from tests.window.tighten_jobs import (
    HOOK,
    SMALL,
    SOCKET,
    a_wrench,
    at_joint,
    ticked_until,
    true_job,
)


@pytest.fixture
def opened(qtbot, window):
    """Opens a job with the wrenches folded out; gives the page and the card."""

    def fold_out(job):
        window.show_job(ticked_until(job, at_joint("left lower clamp", 2)))
        window.go_to(Stage.TIGHTEN)
        page = window.page(Stage.TIGHTEN)
        qtbot.keyClick(page.door.wrenches, Qt.Key.Key_Space)
        return page, page.wrench_card

    return fold_out


def type_down(qtbot, form, texts):
    """Type a line after the other, Enter after each."""
    for line, text in zip(form.lines.values(), texts, strict=True):
        line.selectAll()
        qtbot.keyClicks(line, text) if text else line.clear()
        qtbot.keyClick(line, Qt.Key.Key_Return)


def choose(qtbot, choice, name):
    choice.setFocus()
    while choice.value != name:
        before = choice.currentIndex()
        qtbot.keyClick(choice, Qt.Key.Key_Down)
        assert choice.currentIndex() != before


def test_a_wrench_is_added_by_typing_down_the_form(qtbot, window, opened):
    page, card = opened(true_job(wrenches={}))
    assert "No wrench on the list" in page.card.tool.text()

    qtbot.keyClick(card.wrenches.add, Qt.Key.Key_Space)
    lines = ["click", "10 lbf ft", "80", "1/2", "4 %", "", "380", "1/2 in"]
    type_down(qtbot, card.wrench_form, lines)

    wrench = window.open_job.job.wrenches["click"]
    assert (str(wrench.low), str(wrench.high), str(wrench.graduation)) == (
        "10 lbf·ft",
        "80 lbf·ft",
        "1/2 lbf·ft",
    )
    assert str(wrench.grip_length) == "380 mm"
    assert page.card.setting.text == "Set 17.0 lbf·ft"
    assert not card.wrench_form.isVisible()


def test_what_cannot_be_kept_stays_in_its_line_with_the_reason(qtbot, window, opened):
    _, card = opened(true_job(wrenches={}))
    qtbot.keyClick(card.wrenches.add, Qt.Key.Key_Space)
    type_down(qtbot, card.wrench_form, ["click", "25", "80 N·m", "1", "", "", "", ""])

    assert window.open_job.job.wrenches == {}
    assert card.wrench_form.isVisible()
    assert card.wrench_form.lines["low"].text() == "25"
    assert "without a unit" in card.wrench_form.refusal.text()
    assert card.wrench_form.lines["low"].accessibleDescription()


def test_a_scale_that_runs_backwards_is_refused_in_words(qtbot, window, opened):
    _, card = opened(true_job(wrenches={}))
    qtbot.keyClick(card.wrenches.add, Qt.Key.Key_Space)
    type_down(qtbot, card.wrench_form, ["click", "80 N·m", "10 N·m", "1 N·m", "", "", "", ""])

    assert window.open_job.job.wrenches == {}
    assert "lowest mark" in card.wrench_form.refusal.text()


@pytest.mark.parametrize(
    ("lines", "key", "said"),
    [
        (["click", "5 N·m", "60 N·m", "1", "0 %", "", "", ""], "permissible_deviation", "exact"),
        (["click", "10 lbf ft", "80 N·m", "1", "4", "", "", ""], "high", "in two units"),
        (["click", "5 N·m", "25 N·m", "25", "4", "", "", ""], "graduation", "25 N·m apart"),
    ],
    ids=["no deviation", "two units", "coarser than its range"],
)
def test_a_scale_that_no_wrench_has_is_refused_at_the_field(
    qtbot, window, opened, lines, key, said
):
    _, card = opened(true_job(wrenches={}))
    qtbot.keyClick(card.wrenches.add, Qt.Key.Key_Space)
    type_down(qtbot, card.wrench_form, lines)

    assert window.open_job.job.wrenches == {}
    assert said in card.wrench_form.refusal.text()
    marked = [name for name, line in card.wrench_form.lines.items() if line.accessibleDescription()]
    assert marked == [key]


def test_a_wrench_of_an_older_document_that_cannot_be_trusted_says_why_and_cannot_be_taken(opened):
    exact = SMALL.with_changes(permissible_deviation=Ratio.typed("0 %"))
    _, card = opened(true_job(wrenches={"exact": exact, "click": SMALL}))
    choice = card.choice.wrench
    row = choice.findText("exact", Qt.MatchFlag.MatchStartsWith)
    assert "not to be chosen, its deviation is 0 %" in choice.itemText(row)
    assert not choice.model().item(row).isEnabled()
    assert choice.model().item(choice.findText("click", Qt.MatchFlag.MatchStartsWith)).isEnabled()
    said = [each.text() for each in card.wrenches.findChildren(QLabel)]
    assert any("Not chosen: its deviation is 0 %" in text for text in said)


def test_two_wrenches_cannot_have_one_name(qtbot, window, opened):
    _, card = opened(true_job(wrenches={"click": SMALL}))
    qtbot.keyClick(card.wrenches.add, Qt.Key.Key_Space)
    type_down(qtbot, card.wrench_form, ["click", "5 N·m", "25 N·m", "1 N·m", "", "", "", ""])

    assert list(window.open_job.job.wrenches) == ["click"]
    assert "another wrench has that name" in card.wrench_form.refusal.text().lower()


def test_a_wrench_is_changed_and_the_setting_follows(qtbot, window, opened):
    page, card = opened(true_job(wrenches={"click": SMALL}))
    assert page.card.setting.text == "Set 23.0 N·m"

    qtbot.keyClick(card.wrenches.buttons["click"][0], Qt.Key.Key_Space)
    line = card.wrench_form.lines["graduation"]
    line.selectAll()
    qtbot.keyClicks(line, "2 N·m")
    qtbot.keyClick(card.wrench_form.keep_button, Qt.Key.Key_Return)

    assert str(window.open_job.job.wrenches["click"].graduation) == "2 N·m"
    assert page.card.setting.text == "Set 23 N·m"
    window.open_job.edits.undo()
    assert page.card.setting.text == "Set 23.0 N·m"


def test_a_wrench_is_removed_and_undo_brings_it_back(qtbot, window, opened):
    page, card = opened(true_job(wrenches={"click": SMALL}))
    qtbot.keyClick(card.wrenches.buttons["click"][1], Qt.Key.Key_Space)
    assert window.open_job.job.wrenches == {}
    assert page.card.setting.text == ""

    window.open_job.edits.undo()
    assert list(window.open_job.job.wrenches) == ["click"]
    assert "click" in card.wrenches.buttons


def test_another_wrench_is_chosen_for_the_joint_in_hand(qtbot, window, opened):
    page, card = opened(true_job())
    choose(qtbot, card.choice.wrench, "large")

    assert window.open_job.job.wrench_choices == {"left lower clamp": WrenchChoice(wrench="large")}
    assert page.card.tool.text() == "on the large"
    assert page.door.value.text() == page.card.setting.text.removeprefix("Set ")


def test_a_hook_is_reckoned_with_and_its_sketch_shows_the_lengths(qtbot, opened):
    page, card = opened(true_job(adapters={"hook": HOOK}))
    choose(qtbot, card.choice.wrench, "small")
    choose(qtbot, card.choice.adapter, "hook")

    # S = T L / (L + E cos a) = 23 * 215 / (215 + 45 * 0.5) = 20.82, next mark 21.0 or 20.5
    assert page.card.setting.text == "Set 21.0 N·m"
    assert page.card.sketch.isVisible()
    said = page.card.sketch.accessibleName()
    assert "L 215 mm" in said
    assert "E 45 mm at 60°" in said
    assert "Set lower" in page.card.adapter.text()


def test_a_concentric_socket_changes_nothing_and_it_is_said(qtbot, opened):
    page, card = opened(true_job(adapters={"home-made": SOCKET}))
    before = page.card.setting.text
    choose(qtbot, card.choice.adapter, "home-made")

    assert page.card.setting.text == before
    assert "changes nothing" in page.card.adapter.text()


def test_an_adapter_is_added_and_sketched_while_it_is_typed(qtbot, window, opened):
    _, card = opened(true_job())
    qtbot.keyClick(card.adapters.add, Qt.Key.Key_Space)
    type_down(qtbot, card.adapter_form, ["foot", "30", "90", "3/8 in"])

    adapter = window.open_job.job.adapters["foot"]
    assert (str(adapter.effective_length), str(adapter.angle)) == ("30 mm", "90 deg")
    qtbot.keyClick(card.adapters.buttons["foot"][0], Qt.Key.Key_Space)
    assert card.adapter_form.lines["angle"].text() == "90 deg"
    qtbot.keyClick(card.adapter_form.lines["name"], Qt.Key.Key_Escape)
    assert not card.adapter_form.isVisible()


def test_a_concentric_adapter_needs_no_length(qtbot, window, opened):
    _, card = opened(true_job())
    qtbot.keyClick(card.adapters.add, Qt.Key.Key_Space)
    qtbot.keyClicks(card.adapter_form.lines["name"], "socket")
    qtbot.keyClick(card.adapter_form.tick, Qt.Key.Key_Space)
    qtbot.keyClick(card.adapter_form.keep_button, Qt.Key.Key_Return)

    assert window.open_job.job.adapters["socket"].concentric


def test_a_wrench_that_cannot_do_it_is_said_in_words(opened):
    page, _ = opened(true_job(wrenches={"tiny": a_wrench("1 N·m", "5 N·m", "0.1 N·m")}))

    assert page.card.setting.text == ""
    assert "outside its usable scale" in page.card.problem.text()
    assert page.door.value.text() == "23 N·m"


def test_escape_folds_the_card_away_and_the_list_has_the_keyboard_again(qtbot, opened):
    page, card = opened(true_job())
    assert not page.list.isVisible()

    qtbot.keyClick(card.back, Qt.Key.Key_Escape)

    assert not card.isVisible()
    assert page.list.isVisible()


def test_wrenches_and_choices_are_saved_with_the_job(qtbot, window, opened, tmp_path):
    _, card = opened(true_job(adapters={"hook": HOOK}))
    choose(qtbot, card.choice.adapter, "hook")
    path = tmp_path / "job.job.json"
    assert window.save_to(path)

    assert load_job(path)[0].wrench_choices == {"left lower clamp": WrenchChoice(adapter="hook")}


def test_a_step_can_be_ticked_with_the_wrenches_folded_out(qtbot, window, opened):
    page, card = opened(true_job())
    before = len(window.open_job.job.log)

    qtbot.keyClick(page.done, Qt.Key.Key_Space)
    qtbot.keyClick(page.done, Qt.Key.Key_Space)

    assert len(window.open_job.job.log) == before + 2
    assert card.isVisible()
