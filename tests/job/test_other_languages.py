"""What the program writes into a job in another language, and finds again there."""

from datetime import UTC, datetime

import pytest

from aligner.job import Job
from aligner.job.edits_align import with_another_pair
from aligner.job.edits_sheet import with_fastener, with_fastener_on_other_side
from aligner.job.edits_sheet_ticks import what_of_the_sheet
from aligner.job.known_gauges import known_gauge, known_gauges, not_listed
from aligner.job.listed_gauges import gauge_choices, with_gauge_known
from aligner.job.log import LogEntry
from aligner.job.wrenches import TorqueWrench
from aligner.language import speak
from aligner.language.every_language import in_other_languages
from aligner.sheet import Fastener, Sheet, Side
from aligner.sheet.quantities import Ratio, Torque

AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
GERMAN = {
    "depth gauge": "Tiefenmaß",
    "common practice, no source": "allgemeine Praxis, ohne Quelle",
    "feeler gauges": "Fühlerlehre",
    "pair {number}": "Messpaar {number}",
    "left:right": "links:rechts linker:rechter linke:rechte",
    "right {fastener}": "{fastener} rechts",
    "the sheet was changed": "das Datenblatt wurde geändert",
    "the number of bolts of the {fastener}": "Schraubenzahl von „{fastener}“",
}


@pytest.mark.usefixtures("german")
def test_a_known_gauge_goes_on_the_list_under_its_name_in_the_language():
    assert (None, "which gauge?") in gauge_choices(Job(), None)
    assert ("Tiefenmaß", "Tiefenmaß") in gauge_choices(Job(), None)
    job = with_gauge_known(Job(), "Fühlerlehre")
    assert job.gauges["Fühlerlehre"].source == "allgemeine Praxis, ohne Quelle"
    speak("en")
    assert "depth gauge" in known_gauges()
    assert ("Fühlerlehre", "Fühlerlehre") in gauge_choices(job, None)


@pytest.mark.usefixtures("german")
def test_a_new_pair_has_a_name_in_the_language():
    job = with_another_pair(with_another_pair(Job()))
    assert [pair.name for pair in job.align.squaring] == ["Messpaar 1", "Messpaar 2"]


@pytest.mark.usefixtures("german")
@pytest.mark.parametrize(
    ("name", "other"),
    [
        ("linke untere Klemmung", "rechte untere Klemmung"),
        ("Linker Bremssattel", "Rechter Bremssattel"),
        ("Klemmung links", "Klemmung rechts"),
        ("left lower clamp", "right lower clamp"),
        ("Schraube A", "Schraube A rechts"),
    ],
)
def test_a_copy_on_the_other_side_bends_its_word_for_the_side(name, other):
    fastener = Fastener(name=name, kind="lower_clamp", side=Side.LEFT)
    job = with_fastener_on_other_side(Job(sheet=Sheet(fasteners=(fastener,))), 0)
    assert job.sheet.fasteners[1].name == other


@pytest.mark.usefixtures("german")
def test_what_of_the_sheet_was_changed_is_found_in_the_language_and_in_english():
    clamp = Fastener(name="Klemmung", kind="lower_clamp", side=Side.LEFT, bolts=2)
    log = (LogEntry(step="lower_clamp/Klemmung", at=AT),)
    job = Job(sheet=Sheet(fasteners=(clamp,)), log=log)
    reason = with_fastener(job, 0, AT, bolts=1).log[-1].reason
    assert reason == "das Datenblatt wurde geändert: Schraubenzahl von „Klemmung“"
    assert what_of_the_sheet(reason) == "Schraubenzahl von „Klemmung“"
    assert what_of_the_sheet("the sheet was changed: x") == "x"
    assert what_of_the_sheet("the heights changed") is None
    speak("en")
    kept = in_other_languages("the sheet was changed")[0]
    assert what_of_the_sheet(f"{kept}: x") == "x", "written in German, read in English"


def test_a_known_gauge_is_known_under_its_name_in_every_language(german):
    english = known_gauge("depth gauge")
    assert english.how_to.startswith("Hold the foot flat"), "an English job, opened in German"
    speak("en")
    assert in_other_languages("depth gauge") == ("Tiefenmaß",), "of the real translations"
    assert known_gauge("Tiefenmaß") == english, "a German job, opened in English"
    assert known_gauge("my depth gauge") is None


def test_a_known_gauge_is_not_offered_a_second_time_in_another_language(german):
    job = with_gauge_known(Job(), "depth gauge")
    assert list(job.gauges) == ["depth gauge"]
    offered = [name for name, _ in gauge_choices(job, None)]
    assert "depth gauge" in offered
    assert "Tiefenmaß" not in offered
    assert "Fühlerlehre" in offered
    assert not_listed([])[:1] == ["steel rule"]


@pytest.mark.usefixtures("german")
def test_a_wrench_is_doubted_with_the_decimal_sign_of_the_language():
    wrench = TorqueWrench(
        low=Torque.typed("5.5 N·m", decimal="."),
        high=Torque.typed("25 lbf·ft"),
        graduation=Torque.typed("0.5 N·m", decimal="."),
        permissible_deviation=Ratio.typed("4 %"),
    )
    _, error = wrench.doubt
    assert error.understood == "its scale runs from 5,5 N·m to 25 lbf·ft, in two units"
