"""Whether another program still runs is asked without disturbing it."""

from __future__ import annotations

import os
import subprocess
import sys

import pytest

from aligner.storage.process import Worker, this_worker


def test_this_program_runs() -> None:
    here = this_worker()

    assert here.process == os.getpid()
    assert here.user
    assert here.host
    assert not here.is_surely_gone()


def test_a_program_runs_until_it_ends_and_asking_does_not_end_it() -> None:
    with subprocess.Popen([sys.executable, "-c", "input()"], stdin=subprocess.PIPE) as other:
        worker = Worker("ann", this_worker().host, other.pid)
        assert not worker.is_surely_gone()
        assert other.poll() is None
        assert other.stdin is not None
        other.stdin.write(b"\n")
        other.stdin.close()
        assert other.wait() == 0

    assert worker.is_surely_gone()


@pytest.mark.parametrize("process", [0, -1, 10**30])
def test_a_number_that_is_no_process_is_gone(process: int) -> None:
    assert Worker("ann", this_worker().host, process).is_surely_gone()


def test_nothing_is_said_of_another_computer() -> None:
    assert not Worker("ann", "another computer", 0).is_surely_gone()


def test_a_worker_is_named_in_words() -> None:
    assert str(Worker("ann", "shed", 411)) == "ann on shed (process 411)"
