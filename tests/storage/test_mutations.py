"""Damaged documents load or are refused in one clear line; the file is never touched."""

from __future__ import annotations

import random
from pathlib import Path

import pytest

from aligner.storage.document_file import load_job
from aligner.storage.documents import job_from
from aligner.storage.refusal import UnusableDocument
from tests.storage.mutation_harness import SAMPLE, mutated, run


def test_three_hundred_mutated_documents_load_or_are_refused_clearly() -> None:
    counted = run(300, seed=20)

    assert counted["crashed"] == counted["unclear"] == 0
    assert counted["refused"] > 150
    assert counted["loaded"] > 10


def test_every_way_of_cutting_a_document_short_is_refused() -> None:
    whole = SAMPLE.read_bytes().rstrip()
    cut = [whole[:length] for length in range(len(whole))]

    for content in cut:
        with pytest.raises(UnusableDocument):
            job_from(content)


def test_a_refused_file_is_left_as_it_was(tmp_path: Path) -> None:
    chance = random.Random(4)
    path = tmp_path / "refit.job.json"
    refusals = 0
    for _ in range(60):
        content = mutated(SAMPLE.read_bytes(), chance)
        path.write_bytes(content)
        before = path.stat()
        try:
            load_job(path)
        except UnusableDocument:
            refusals += 1
        assert path.read_bytes() == content
        assert path.stat().st_mtime_ns == before.st_mtime_ns
        assert list(tmp_path.iterdir()) == [path]
    assert refusals > 30
