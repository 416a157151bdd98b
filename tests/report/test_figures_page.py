"""The manual's page of figures names every key that is printed, and none that is not."""

import re

import pytest

from aligner.assessment import assess
from aligner.data_files import demo, resource
from aligner.job import BarReadings, Gauge, PlateReadings, SpreadReadings
from aligner.job.align import Align, ProtrusionReadings, SquaringPair
from aligner.report.as_json import as_fields
from aligner.sheet.dimensions import Fork, ProtrusionLimits, Steering, TurnLimits
from aligner.storage.document_file import load_job

PAGE = resource("manual/figures.md").read_text(encoding="utf-8")
PRINTED = ("protrusion", "squaring", "in_line", "steering", "tightening", "notices")


def named_in(section):
    """What stands in the first column of the section's tables, as code."""
    text = re.search(rf"^## {re.escape(section)}\n(.*?)(?=^## |\Z)", PAGE, re.M | re.S)
    assert text is not None, f"the page has no section {section}"
    return re.findall(r"^\| `([^`]+)` \|", text.group(1), re.M)


def paths(value, path=""):
    """Every key below a value, a list standing for each of its members."""
    if isinstance(value, dict):
        for key, inner in value.items():
            yield from paths(inner, f"{path}.{key}" if path else key)
    elif isinstance(value, list) and any(isinstance(member, dict) for member in value):
        for member in value:
            yield from paths(member, f"{path}[]" if path else "")
    else:
        yield path


@pytest.fixture(scope="module")
def printed():
    job, _ = load_job(demo("fellside-pairs-disagree.job.json"))
    return as_fields(assess(job))


def test_the_sections_are_those_of_the_object(printed):
    assert tuple(printed) == PRINTED


@pytest.mark.parametrize("section", PRINTED)
def test_each_section_names_its_keys_and_no_other(printed, section):
    named = named_in(section)
    assert len(named) == len(set(named))
    assert set(named) == set(paths(printed[section]))


def fields(path, model, leave_out=()):
    return {f"{path}.{name}" for name in model.model_fields if name not in leave_out}


def test_the_alignment_fields_are_those_of_a_document():
    wanted = (
        fields("sheet.fork", Fork, ("handlebars",))
        | fields("sheet.steering", Steering)
        | fields("sheet.protrusion", ProtrusionLimits)
        | fields("sheet.squaring", TurnLimits)
        | fields("sheet.in_line", TurnLimits)
        | fields("gauges.*", Gauge)
        | fields("align", Align, ("protrusion", "squaring", "in_line"))
        | fields("align.protrusion", ProtrusionReadings)
        | fields("align.squaring[]", SquaringPair)
        | fields("align.in_line", PlateReadings)
        | fields("align.in_line", BarReadings)
        | fields("align.in_line", SpreadReadings)
    )
    assert set(named_in("The alignment part of a document")) == wanted


def test_every_verdict_is_explained():
    section = re.search(r"^## Verdicts\n(.*?)(?=^## )", PAGE, re.M | re.S).group(1)
    assert re.findall(r"^\| (\w+) \|", section, re.M)[1:] == [
        "within",
        "out",
        "unsettled",
        "missing",
    ]
