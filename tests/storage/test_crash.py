"""A program killed while it saves loses nothing: the short form of the crash harness."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

TOP = Path(__file__).parents[2]


pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="the harness forks")


def _harness(*arguments: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-m", "tests.storage.crash_harness", *arguments],
        cwd=TOP,
        capture_output=True,
        text=True,
        timeout=120,
        check=False,
    )


@pytest.mark.parametrize("way", [(), ("autosave",)], ids=["saving", "autosaving"])
def test_twenty_kills_lose_and_damage_nothing(way: tuple[str, ...]) -> None:
    run = _harness("20", "7", *way)

    assert run.returncode == 0, run.stdout + run.stderr
    assert "20 kills" in run.stdout
    assert "0 lost, 0 damaged, 0 unclear" in run.stdout


def test_the_harness_finds_the_damage_that_careless_saving_does() -> None:
    run = _harness("20", "7", "in-place")

    assert run.returncode == 1, run.stdout + run.stderr
    assert "0 lost, 0 damaged" not in run.stdout
