"""The Prove stage: final checks, road test, a summary of the job, and the sign-off.

The trap: a job that is signed off with something open. What is open is said in words under
the button, and whether the list is ticked is read off the list, never ticked here as well.
"""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtGui import QFocusEvent
from PySide6.QtWidgets import QPlainTextEdit, QVBoxLayout, QWidget

from aligner.assessment import Level
from aligner.drawing.theme import GAP
from aligner.job import Job, SignOff
from aligner.job.edits_prove import (
    with_check,
    with_check_note,
    with_road_test,
    with_sign_off,
    without_sign_off,
)
from aligner.job.final_checks import checks_of, final_checks, open_checks
from aligner.language import begun, inside, marked, say, say_count
from aligner.window.prove.check_row import CheckRow
from aligner.window.prove.job_summary import summary_rows
from aligner.window.prove.recheck_card import RecheckCard
from aligner.window.prove.sign_off_card import SignOffCard
from aligner.window.setting import Setting
from aligner.window.widgets.labels import Card, set_tone
from aligner.window.widgets.page import Cell, Page, table_card, wrapping
from aligner.window.widgets.tab_order import walk_by_tab


class RoadTestNote(QPlainTextEdit):
    """A note of several lines that is kept when it is left; Tab leaves it."""

    def __init__(self, keep: Callable[[], None]) -> None:
        super().__init__()
        self._keep = keep
        self.setTabChangesFocus(True)
        self.setAccessibleName(say("Road test"))
        self.setPlaceholderText(say("where, how far, what was felt, what was changed after it"))

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Keep the note."""
        super().focusOutEvent(event)
        self._keep()


_AFTERWARDS = marked(
    "The job card is printed from the File menu; the next job on this bike begins under All jobs."
)


class ProveStage(QWidget):
    """Everything between the last step of the list and the name under the job."""

    def __init__(self, setting: Setting) -> None:
        super().__init__()
        theme = setting.theme
        self._open_job = setting.open_job
        self._theme = setting.theme
        self._show = setting.show
        self._now = setting.now
        self._summary: list[list[Cell]] = []
        self.rows: dict[str, CheckRow] = {}
        self.page = Page(say("Final checks and sign-off"))
        self._checks_card = Card(say("Final checks, brakes first"))
        self._checks = QVBoxLayout()
        self._checks.setSpacing(GAP)
        self._checks_card.column.addLayout(self._checks)
        self.list_ticked = wrapping("")
        self._checks_card.column.addWidget(self.list_ticked)
        self.road_test = RoadTestNote(self._keep_typing)
        self.road_test.setFixedHeight(theme.px(96))
        self.road_test.textChanged.connect(self._road_test_typed)
        road_card = Card(say("Road test"))
        road_card.column.addWidget(self.road_test)
        self.summary_place = QVBoxLayout()
        summary = QWidget()
        summary.setLayout(self.summary_place)
        self.summary_place.setContentsMargins(0, 0, 0, 0)
        self.sign_off_card = SignOffCard(theme)
        self.sign_off_card.asked.connect(self._keep_typing)
        self.sign_off_card.signed.connect(self._sign)
        self.sign_off_card.opened_again.connect(self._open_again)
        self.recheck_card = RecheckCard(setting)
        cards = (self._checks_card, road_card, summary, self.sign_off_card, self.recheck_card)
        for card in cards:
            self.page.add(card)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.page)
        setting.open_job.started.connect(self._take_another_job)
        self.refresh()

    def sentence(self) -> tuple[str, str]:
        """What to do now, and its detail."""
        job, tightening = self._open_job.job, self._open_job.assessment.tightening
        signed = job.prove.sign_off
        if signed is not None:
            return self._after_sign_off(signed)
        if not tightening.is_finished:
            return (
                say("Finish the tightening list first."),
                f"{begun(self._list_words())}. {say('The checks can be begun meanwhile.')}",
            )
        waiting = open_checks(job)
        if waiting:
            how = {check.name: check.how for check in final_checks()}
            name = inside(say(waiting[0]))
            return say("Next check: {name}.", name=name), say(how.get(waiting[0], ""))
        left = self._left_undone()
        if left:
            return say("Not ready to sign off."), f"{begun(left[0])}."
        return (
            say("Ready to sign off."),
            say("Every check is done and every step of the list is ticked."),
        )

    def _after_sign_off(self, signed: SignOff) -> tuple[str, str]:
        still_open = self.what_is_open()
        if still_open:
            return (
                say("The sign-off does not hold any more."),
                f"{begun(still_open)}. {say('Open it again, and finish it.')}",
            )
        waiting = [row for row in self._open_job.assessment.rechecks if not row.is_done]
        by = say("Signed off by {name} on {day}.", name=signed.name, day=signed.on)
        by = f"{by} {say(_AFTERWARDS)}"
        if not waiting:
            return say("Signed off."), by
        distance = self._show.show_distance(waiting[0].after_km)
        first = say("After {distance}: {title}.", distance=distance, title=waiting[0].title)
        left = say_count(
            "{count} fastener is still to be checked again.",
            "{count} fasteners are still to be checked again.",
            len(waiting),
        )
        return left, f"{first} {by}"

    def _left_undone(self) -> list[str]:
        """What the other stages leave open: parts to fit, and things not back on the bike."""
        assessment = self._open_job.assessment
        found = []
        parts = assessment.inspection.open_parts
        if parts:
            found.append(
                say_count(
                    "{count} part to replace not fitted yet (see Inspect)",
                    "{count} parts to replace not fitted yet (see Inspect)",
                    len(parts),
                )
            )
        not_back = assessment.strip.not_back
        if not_back:
            found.append(
                say("not back on the bike yet: {parts} (see Strip)", parts=", ".join(not_back))
            )
        for notice in assessment.tightening.notices:
            if notice.where == "log" and notice.level is Level.ATTENTION:
                found.append(notice.text.removesuffix("."))
        return found

    def begin(self) -> None:
        """Put the keyboard on the first check that is open and bring it into sight."""
        is_signed = self._open_job.job.prove.sign_off is not None
        rows = self.recheck_card.rows.values() if is_signed else self.rows.values()
        first = next((row for row in rows if not row.tick.isChecked()), None)
        if first is None:
            self.page.setFocus(Qt.FocusReason.OtherFocusReason)
            self.page.verticalScrollBar().setValue(0)
        else:
            first.tick.setFocus(Qt.FocusReason.OtherFocusReason)
            self.page.widget().layout().activate()
            self.page.ensureWidgetVisible(first, 0, self._theme.px(90))

    def refresh(self) -> None:
        """Show the job as it is now; nothing that is being typed is touched."""
        job = self._open_job.job
        signed = job.prove.sign_off
        self._show_checks(is_signed=signed is not None)
        is_finished = self._open_job.assessment.tightening.is_finished
        how_far = self._list_words()
        self.list_ticked.setText(say("Every step of the list ticked: {how_far}", how_far=how_far))
        self.list_ticked.setAccessibleName(self.list_ticked.text())
        set_tone(self.list_ticked, "tone", "" if is_finished else "attention")
        if self.road_test.toPlainText() != job.prove.road_test and not self._is_typing_road_test():
            self._set_road_test(job.prove.road_test)
        self.road_test.setReadOnly(signed is not None)
        self._show_summary()
        self.recheck_card.show_job(job, self._open_job.assessment)
        self.sign_off_card.show_sign_off(signed, self.what_is_open(), self._now().date())

    def what_is_open(self) -> str:
        """What keeps the job from being signed off, in words; "" if nothing does."""
        tightening = self._open_job.assessment.tightening
        found = []
        checks = open_checks(self._open_job.job)
        if checks:
            found.append(
                say_count(
                    "one final check is open: {first}",
                    "{count} final checks are open, the first: {first}",
                    len(checks),
                    first=inside(say(checks[0])),
                )
            )
        if not tightening.is_finished:
            found.append(say("the list is open ({how_far})", how_far=self._list_words()))
        found += self._left_undone()
        return f"; {say('and', meaning='between clauses')} ".join(found)

    def _list_words(self) -> str:
        tightening = self._open_job.assessment.tightening
        if not tightening.steps:
            none_yet = say("it has no steps yet")
            why = tightening.notices[0].text if tightening.notices else none_yet
            return why.removesuffix(".")
        done, total = tightening.done_count, len(tightening.steps)
        return say("{done} of {total} steps", done=done, total=total)

    def _show_checks(self, *, is_signed: bool) -> None:
        checks = checks_of(self._open_job.job)
        if [check.name for check in checks] != list(self.rows):
            self._lay_out_rows([check.name for check in checks])
        for check in checks:
            self.rows[check.name].show_check(check, is_signed=is_signed)

    def _lay_out_rows(self, names: list[str]) -> None:
        about = {check.name: check for check in final_checks()}
        for gone in [name for name in self.rows if name not in names]:
            row = self.rows.pop(gone)
            self._checks.removeWidget(row)
            row.hide()
            row.deleteLater()
        rows = {
            name: self.rows.get(name) or self._new_row(CheckRow(self._theme, name, about.get(name)))
            for name in names
        }
        for place, row in enumerate(rows.values()):
            if self._checks.indexOf(row) != place:
                self._checks.insertWidget(place, row)
        self.rows = rows
        self._order_for_tab()

    def _order_for_tab(self) -> None:
        order: list[QWidget] = [self.page]
        for row in self.rows.values():
            order += [row.tick, row.note]
        card = self.sign_off_card
        order += [self.road_test, card.name, card.button, card.open_again]
        walk_by_tab(order)

    def _new_row(self, row: CheckRow) -> CheckRow:
        row.ticked.connect(self._tick)
        row.typed.connect(
            lambda name, note: self._open_job.draft(lambda job: with_check_note(job, name, note))
        )
        row.kept.connect(
            lambda name, note: self._open_job.edit(
                say("note"), lambda job: with_check_note(job, name, note)
            )
        )
        return row

    def _tick(self, name: str, is_done: bool) -> None:
        self._keep_typing()
        self._open_job.edit(
            say("final check") if is_done else say("final check opened"),
            lambda job: with_check(job, name, is_done),
        )
        if is_done:
            self._go_to_next_check(name)

    def _go_to_next_check(self, name: str) -> None:
        """The next check that is open, or the name; the key that ticked must not untick."""
        names = list(self.rows)
        after = names[names.index(name) + 1 :]
        following = next((each for each in after if not self.rows[each].tick.isChecked()), None)
        if following is not None:
            self.rows[following].tick.setFocus(Qt.FocusReason.TabFocusReason)
        elif not self.what_is_open():
            self.sign_off_card.name.setFocus(Qt.FocusReason.TabFocusReason)

    def _with_road_test(self, job: Job) -> Job:
        return with_road_test(job, self.road_test.toPlainText())

    def _keep_typing(self) -> None:
        for row in self.rows.values():
            row.note.keep()
        if self._is_typing_road_test():
            self._open_job.edit(say("note"), self._with_road_test)
            self._end_typing()

    def _end_typing(self) -> None:
        for row in self.rows.values():
            row.note.end_typing()
        self.road_test.document().setModified(False)
        self.refresh()

    def _take_another_job(self) -> None:
        """Another job is opened: what was typed was not for it, and no name is put to it."""
        self.sign_off_card.forget_typing()
        self._end_typing()

    def _is_typing_road_test(self) -> bool:
        return self.road_test.document().isModified()

    def _set_road_test(self, text: str) -> None:
        self.road_test.blockSignals(True)
        self.road_test.setPlainText(text)
        self.road_test.document().setModified(False)
        self.road_test.blockSignals(False)

    def _road_test_typed(self) -> None:
        if self._is_typing_road_test():
            self._open_job.draft(self._with_road_test)

    def _show_summary(self) -> None:
        rows = summary_rows(self._open_job.assessment, self._show)
        if rows == self._summary:
            return
        self._summary = rows
        while (item := self.summary_place.takeAt(0)) is not None:
            old = item.widget()
            if old is not None:
                old.hide()
                old.deleteLater()
        self.summary_place.addWidget(table_card(say("The job"), ("", ""), rows, (3, 9)))

    def _sign(self, name: str) -> None:
        on = self._now().date()
        self._open_job.edit(say("sign-off"), lambda job: with_sign_off(job, name, on))

    def _open_again(self) -> None:
        self._open_job.edit(say("open again"), without_sign_off)
