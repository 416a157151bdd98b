"""Planning 1,000 fasteners with rules: under 50 ms, growth no worse than n log n."""

from __future__ import annotations

import math
import random
import time

import pytest

from aligner.fastening.joints import Joint, TorqueRange, joint_kinds
from aligner.fastening.planner import plan
from aligner.fastening.rules import Rule


def fasteners(count: int) -> list[Joint]:
    kinds, torque = list(joint_kinds()), TorqueRange(23.0, 21.0, 25.0)
    sides = ("left", "right")
    return [
        Joint(f"joint {n}", kinds[n % len(kinds)], sides[n % 2], 1 + n % 3, torque)
        for n in range(count)
    ]


def rules_for(joints: list[Joint], *, agreeing: bool) -> list[Rule]:
    """As many rules as joints, without a ring; agreeing with the default order or at random."""
    source = random.Random(1957)
    order = sorted(joints, key=lambda joint: joint_kinds()[joint.kind].sequence)
    if not agreeing:
        source.shuffle(order)
    rules: list[Rule] = []
    while len(rules) < len(joints):
        before, after = sorted(source.sample(range(len(order)), 2))
        if order[before].kind != order[after].kind:
            names = order[before].name, order[after].name
            rules.append(Rule("before", *names, "So the manual."))
    return rules


@pytest.mark.parametrize("agreeing", [True, False], ids=["agreeing rules", "rules at random"])
def test_planning_a_thousand_fasteners_with_a_thousand_rules(benchmark, agreeing):
    joints = fasteners(1000)
    rules = rules_for(joints, agreeing=agreeing)
    found = benchmark(plan, joints, rules)
    assert len(found.steps) > 1000


def test_growth_is_no_worse_than_n_log_n(benchmark):
    small, large = 500, 4000
    few, many = fasteners(small), fasteners(large)
    rules_for_few, rules_for_many = rules_for(few, agreeing=True), rules_for(many, agreeing=True)
    times = []
    for _ in range(5):
        start = time.perf_counter()
        plan(few, rules_for_few)
        times.append(time.perf_counter() - start)

    benchmark.pedantic(plan, (many, rules_for_many), rounds=5)

    allowed = (large * math.log(large)) / (small * math.log(small))
    growth = benchmark.stats.stats.min / min(times)
    print(f"growth {growth:.2f} against n log n {allowed:.2f}")
