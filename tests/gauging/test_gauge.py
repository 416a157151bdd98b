import json
from math import inf, nan

import pytest

from aligner.data_files import resource
from aligner.errors import AlignerError
from aligner.gauging import Gauge, UnusableGauge
from aligner.units.dimension import LENGTH
from aligner.units.typed import read_quantity


@pytest.mark.parametrize(
    ("quantities", "named"),
    [
        pytest.param((-0.1, 0, 0), "resolution", id="negative resolution"),
        pytest.param((0.1, -0.1, 0), "limit of error", id="negative limit of error"),
        pytest.param((0.1, 0.1, -0.1), "repeatability", id="negative repeatability"),
        pytest.param((nan, 0.1, 0.1), "resolution", id="no number"),
        pytest.param((0.1, inf, 0.1), "limit of error", id="endless"),
        pytest.param((0, 0, 0), "no gauge is exact", id="exact"),
    ],
)
def test_a_gauge_that_cannot_be_is_refused_by_field(quantities, named):
    with pytest.raises(UnusableGauge, match=named):
        Gauge("rule", *quantities)


def test_a_gauge_without_a_name_is_refused():
    with pytest.raises(AlignerError, match="no name"):
        Gauge("  ", 0.1, 0.1, 0.1)


def test_the_built_in_gauges_are_gauges_with_a_source_each():
    entries = json.loads(resource("gauges.json").read_text(encoding="utf-8"))
    assert len({entry["name"] for entry in entries}) == len(entries) >= 7
    for entry in entries:
        assert set(entry) == {
            *("name", "resolution", "limit_of_error", "repeatability", "source", "how_to")
        }
        quantities = [
            read_quantity(entry[field], LENGTH).value
            for field in ("resolution", "limit_of_error", "repeatability")
        ]
        gauge = Gauge(entry["name"], *quantities)
        assert 0 < gauge.repeatability_mm <= gauge.resolution_mm * 2 <= 2
        assert entry["source"]
        assert entry["how_to"].endswith(".")
