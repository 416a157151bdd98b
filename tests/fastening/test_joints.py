from __future__ import annotations

import pytest

from aligner.errors import AlignerError
from aligner.fastening.joints import (
    Joint,
    TorqueRange,
    UnusableJoint,
    default_passes,
    joint_kinds,
    pass_reasons,
)
from aligner.fastening.order_tables import UnusableTable, checked
from aligner.fastening.steps import activities

PLANNED = """stem_nut stem_head_bolt stem_pinch lower_clamp top_clamp fork_cap air_manifold_fitting
spacer_fitting damping_unit_bolt anti_dive_unit_bolt damper_rod_bolt handlebar_clamp_above
handlebar_clamp_between handlebar_clamp_below instrument_bracket lamp_bracket fork_brace mudguard
axle axle_in_clamp_caps axle_nut axle_clamp_cap axle_pinch brake_caliper hose_guide"""


def test_every_joint_of_a_front_end_has_a_kind():
    assert set(joint_kinds()) == set(PLANNED.split())


def test_no_two_names_that_rules_can_use_are_the_same():
    kinds = list(joint_kinds())
    groups = list({kind.group for kind in joint_kinds().values()})
    names = [*kinds, *groups, *activities()]
    assert len(names) == len(set(names))


@pytest.mark.parametrize("kind", joint_kinds().values(), ids=lambda kind: kind.kind)
def test_each_kind_gives_its_reasons_as_sentences_and_its_source(kind):
    for text in (kind.reason, kind.reason_loosening, kind.description):
        assert text[0].isupper()
        assert text.endswith(".")
    assert kind.sided in ("always", "never", "either")
    assert kind.source


def test_no_kind_and_no_activity_carries_a_torque():
    for row in (*joint_kinds().values(), *activities().values()):
        assert "N·m" not in repr(row)


@pytest.mark.parametrize(
    ("bolts", "kind", "fractions"),
    [
        (2, "lower_clamp", (0.5, 1.0, 1.0)),
        (1, "lower_clamp", (1.0,)),
        (2, "brake_caliper", (1.0,)),
    ],
    ids=["two bolts close one gap", "one bolt", "two bolts, no gap between them"],
)
def test_passes_are_for_clamps_with_more_than_one_bolt(bolts, kind, fractions):
    assert Joint("it", kind, bolts=bolts).fractions == fractions


def test_the_sheets_own_passes_go_before_the_default():
    assert Joint("it", "lower_clamp", bolts=2, passes=(0.3, 1.0)).fractions == (0.3, 1.0)


def test_default_passes_rise_to_the_full_torque_and_have_reasons():
    assert default_passes()[-1] == 1.0
    assert set(pass_reasons()) == {"part", "full", "again"}


@pytest.mark.parametrize(
    ("fields", "said"),
    [
        ({"kind": "clamp"}, "unknown kind “clamp”"),
        ({"side": "port"}, "side “port”"),
        ({"bolts": 0}, "0 bolts"),
        ({"pattern": "random"}, "pattern “random”"),
        ({"passes": (0.5,)}, "passes 0.5"),
        ({"passes": ()}, "passes none"),
        ({"passes": (1.0, 0.5, 1.0)}, "passes 1, 0.5, 1"),
        ({"back_off_deg": 0.0}, "back off by 0°"),
        ({"recheck_km": -1.0}, "check again after -1 km"),
    ],
    ids=lambda value: str(value) if isinstance(value, dict) else "",
)
def test_a_joint_that_cannot_be_planned_is_refused_by_name(fields, said):
    with pytest.raises(UnusableJoint) as refused:
        Joint(**{"name": "left lower clamp", "kind": "lower_clamp", **fields})
    assert refused.value.where == "left lower clamp"
    assert said in str(refused.value)
    assert refused.value.wanted


def test_a_joint_without_a_name_is_refused():
    with pytest.raises(AlignerError, match="without a name"):
        Joint(" ", "lower_clamp")


@pytest.mark.parametrize(
    "torques",
    [(0, 0, 0), (20, 21, 25), (26, 21, 25), (23, 25, 21), (float("nan"), 1, 2), (5, 1, 1e999)],
    ids=["nothing", "under the range", "over it", "upside down", "no number", "endless"],
)
def test_a_torque_outside_its_own_range_is_refused(torques):
    with pytest.raises(UnusableJoint):
        TorqueRange(*torques)


@pytest.mark.parametrize(
    ("row", "said"),
    [
        ({"reason": "So.", "place": 1}, "without source"),
        ({"reason": "So.", "source": "x", "why": "x"}, "unknown field why"),
        ({"reason": "", "source": "x"}, "reason: empty"),
        ({"reason": "So.", "source": 3}, "source: 3"),
        ({"reason": "So.", "source": "x", "place": True}, "place: True"),
        ("a text", "not an object"),
    ],
    ids=["no source", "misspelt field", "no reason", "number for text", "yes for number", "text"],
)
def test_a_row_of_a_table_without_reason_or_source_is_refused(row, said):
    with pytest.raises(UnusableTable, match=said):
        checked("row 1", row, {"reason": str, "source": str}, {"place": int})
