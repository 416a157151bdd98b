"""Each demo through the command: exit status, verdicts, the sentence of what to do, the notices."""

import json

import pytest

from aligner.__main__ import main
from aligner.data_files import demo


def assessed(name, capsys):
    path = str(demo(f"fellside-{name}.job.json"))
    status = main(["assess", path])
    words = capsys.readouterr().out
    assert main(["assess", path, "--json"]) == status
    return status, words, json.loads(capsys.readouterr().out)


@pytest.mark.parametrize(
    ("name", "status", "heights", "square", "sentence"),
    [
        pytest.param("true", 0, "within", "within", "Nothing left to correct.", id="true"),
        pytest.param(
            "left-leg-high", 1, "out", "out", "Let the left leg down 1.6 mm.", id="left leg high"
        ),
        pytest.param(
            "unsettled",
            1,
            "unsettled",
            "unsettled",
            "The heights are not settled yet: use the depth gauge.",
            id="unsettled",
        ),
        pytest.param(
            "pairs-disagree",
            1,
            "within",
            "unsettled",
            "Measure “engine bar lugs” again.",
            id="pairs disagree",
        ),
    ],
)
def test_what_each_demo_comes_to(name, status, heights, square, sentence, capsys):
    found, words, fields = assessed(name, capsys)
    assert found == status
    assert fields["protrusion"]["verdict"] == heights
    assert fields["squaring"]["verdict"] == square
    assert sentence in words


def test_the_unsettled_demo_points_out_the_distance_that_stands_off(capsys):
    _, _, fields = assessed("unsettled", capsys)
    notices = {notice["where"]: notice["text"] for notice in fields["notices"]}
    assert "184.1 mm stands off from its fellows" in notices["align.squaring[0].right[2]"]
    allowed, heights = 0.5, fields["protrusion"]
    assert abs(heights["difference_mm"]) < allowed < heights["expanded_uncertainty_mm"]


def test_the_pairs_that_disagree_name_the_odd_one(capsys):
    _, _, fields = assessed("pairs-disagree", capsys)
    squaring = fields["squaring"]
    assert len(squaring["pairs"]) == 3
    assert squaring["consistency_p"] < 0.05
    odd = max(squaring["pairs"], key=lambda pair: abs(pair["normalized_residual"]))
    assert odd["name"] == "engine bar lugs"
    others = [pair["turn_deg"] for pair in squaring["pairs"] if pair is not odd]
    assert abs(others[0] - others[1]) < 0.1 < abs(odd["turn_deg"] - others[0])
    assert any("“engine bar lugs” stands out" in notice["text"] for notice in fields["notices"])


@pytest.mark.parametrize("name", ["true", "left-leg-high", "unsettled", "pairs-disagree"])
def test_each_demo_says_that_it_is_invented(name):
    text = demo(f"fellside-{name}.job.json").read_text(encoding="utf-8")
    document = json.loads(text)
    assert document["note"].startswith("Invented for the demo")
    assert document["sheet"]["name"] == "Fellside 650"
    sources = [*document["sheet"]["sources"].values()]
    sources += [gauge["source"] for gauge in document["gauges"].values()]
    sources += [f["torque"]["source"] for f in document["sheet"]["fasteners"]]
    assert set(sources) == {"invented for the demo"}
