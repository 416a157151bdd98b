"""The card, the lists and the tables in another language: all said, and all on the paper."""

import re
from datetime import UTC, datetime
from io import BytesIO

import pytest
from pypdf import PdfReader

from aligner.assessment import assess
from aligner.assessment.inspection import assess_inspection
from aligner.data_files import demo
from aligner.job import Job
from aligner.job.edits_inspect import with_finding, with_note, with_readings
from aligner.job.inspect import Finding
from aligner.language import speak
from aligner.report.bench_list import bench_list_bytes
from aligner.report.card import card_bytes
from aligner.report.parts_list import parts_text, parts_to_replace
from aligner.report.tables import readings_table, torques_table
from aligner.sheet import Side
from aligner.sheet.quantities import Length
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred

AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
SHOW = Preferred()
DEMOS = ("fellside-left-leg-high", "fellside-pairs-disagree", "quernbeck-upside-down")
#: A few texts in a language that writes its nouns large and longer words than English.
GERMAN = {
    "Oil seal": "Gabeldichtring",
    "oil seal": "Gabeldichtring",
    "Tube runout": "Rundlauf Standrohr",
    "fork tube": "Standrohr",
    "both legs": "beide Holme",
    "Parts for {bike}": "Teile für {bike}",
    "To watch: nothing": "Zu beobachten: nichts",
    "unsettled": "nicht entschieden",
    "within": "in der Toleranz",
    "when_read,what,side,number,value_mm,as_typed,gauge,put_by_at,point": (
        "wann,was,wo,Nr,mm,so,mit,ab,Punkt"
    ),
}


@pytest.fixture
def longer():
    """Every text a quarter longer, in words that break between lines as any other."""

    def lengthened(text, meaning, count):
        spare = round(len(text) / 4)
        return text + (" " + "longer " * (spare // 7) if spare >= 7 else "o" * spare).rstrip()

    speak("longer", lengthened, ",")


def demo_job(name):
    return load_job(demo(f"{name}.job.json"))[0]


def pages_of(content):
    return [" ".join(page.extract_text().split()) for page in PdfReader(BytesIO(content)).pages]


@pytest.mark.usefixtures("longer")
@pytest.mark.parametrize("name", DEMOS)
def test_a_card_in_longer_words_is_still_two_pages_and_whole(name):
    pages = pages_of(card_bytes(demo_job(name)))
    assert len(pages) == 2
    # Of the words in the drawing none is cut off, and the signature comes last.
    assert re.search(r"Seen from the seat[^.]*\. longer", pages[0])
    assert "Signature, dateoooo" in pages[1]


@pytest.mark.usefixtures("longer")
@pytest.mark.parametrize("name", DEMOS)
def test_a_bench_list_in_longer_words_has_every_step(name):
    job = demo_job(name)
    text = " ".join(pages_of(bench_list_bytes(job)))
    for each in assess(job).tightening.steps:
        assert " ".join(each.step.title.split()) in text


@pytest.mark.usefixtures("german")
def test_a_verdict_of_two_words_stands_on_one_line():
    content = card_bytes(demo_job("fellside-pairs-disagree"))
    text = PdfReader(BytesIO(content)).pages[0].extract_text()
    lines = [" ".join(line.split()) for line in text.splitlines()]
    assert {"nicht entschieden", "in der Toleranz"} <= set(lines)


@pytest.mark.usefixtures("german")
def test_a_plainly_good_finding_goes_with_the_others_in_any_language():
    job = Job()
    for side in Side:
        job = with_finding(job, ("oil_seal", side), Finding.GOOD, AT)
    (page,) = pages_of(card_bytes(job))
    assert "Good, nothing to note Gabeldichtring" in page


@pytest.mark.usefixtures("german")
def test_the_parts_list_keeps_the_large_letters_of_the_language():
    job = Job()
    for place in (("oil_seal", Side.LEFT), ("oil_seal", Side.RIGHT), ("tube_runout", Side.LEFT)):
        job = with_finding(job, place, Finding.REPLACE, AT)
    job = with_note(job, ("tube_runout", Side.LEFT), "krumm")
    inspection = assess_inspection(job)
    tube, seal = sorted(parts_to_replace(inspection, SHOW), key=lambda row: row.count)
    assert (tube.part, tube.why) == ("Standrohr", "Rundlauf Standrohr: krumm")
    assert (seal.count, seal.part, seal.where, seal.why) == (2, "Gabeldichtring", "beide Holme", "")
    text = parts_text(inspection, SHOW, "Testrad")
    assert text.startswith("Teile für Testrad\n")
    assert text.endswith("\nZu beobachten: nichts\n")


@pytest.mark.usefixtures("german")
def test_tables_have_heads_in_the_language_and_numbers_a_machine_reads():
    job = demo_job("fellside-left-leg-high")
    head, first, *_ = readings_table(job).splitlines()
    assert head == "wann,was,wo,Nr,mm,so,mit,ab,Punkt"
    assert first.split(",")[4] == "5"
    assert ",5.1," in readings_table(job)
    assert ",11.5," in torques_table(assess(job))


def read_with_a_dial(point):
    readings = tuple(Length.typed(text) for text in ("0.08 mm", "0.1 mm"))
    return with_readings(Job(), (point, Side.LEFT), readings)


@pytest.mark.usefixtures("german")
def test_an_inspected_point_has_its_name_in_the_language_and_its_key_beside_it():
    job = read_with_a_dial("tube_runout")
    _, first, second = readings_table(job).splitlines()
    cells = first.split(",")
    assert (cells[1], cells[-1]) == ("Rundlauf Standrohr", "tube_runout")
    assert second.endswith(",tube_runout")
    speak("en")
    assert readings_table(job).splitlines()[1].split(",")[1] == "Tube runout"


def test_a_point_that_is_on_no_list_any_more_stands_by_its_key():
    cells = readings_table(read_with_a_dial("old_point")).splitlines()[1].split(",")
    assert (cells[1], cells[-1]) == ("Old point", "old_point")
