"""Damage documents in every way that chance offers, and see that each loads or is refused.

By hand: `python -m tests.storage.mutation_harness 10000 [SEED]`. Bytes are changed, taken
out, put in twice, cut off; values in the JSON structure are swapped for others, renamed,
doubled, removed. Whatever comes out must load or give one line that a person can read.
"""

from __future__ import annotations

import copy
import json
import random
import sys
from collections import Counter
from pathlib import Path
from typing import Any

from aligner.job import Job
from aligner.storage.documents import as_bytes, job_from
from aligner.storage.refusal import UnusableDocument

_SAMPLES = Path(__file__).parent / "samples"
SAMPLE = _SAMPLES / "job.version-1.job.json"
#: What is damaged: the first version, the present one, one of a newer minor version.
SAMPLES = (
    SAMPLE,
    _SAMPLES / "job.version-1.1.job.json",
    _SAMPLES / "job.version-1.2.job.json",
    _SAMPLES / "invented-version-1.99.job.json",
)

#: Words of the validator or of the language that no person should meet.
FOREIGN_WORDS = ("Input should", "input should", "Traceback", "pydantic", "object at 0x", "tuple")

_VALUES: tuple[Any, ...] = (
    None, True, False, 0, -1, 2, 13, 10**30, 1.5, "", " ", "x", "4.2 mm", "-4.2 mm", "31 lbf ft",
    "10 %", "0.5 deg", "1,450 mm", "1/0 in", "9" * 59 + " mm", "2026-02-30",
    "2026-11-25T14:02:00Z", "2026-11-25T14:02:00", "left", "plate", "bars", "\x00", "\u202e", "🔧",
    "e" * 3000,
    [], {}, [[]],
    {"low": "1 N·m", "high": "2 N·m"}, {"nominal": "1 N·m", "low": "1 N·m"}, {"method": "spread"},
    ["4.2 mm"], ["4.2 mm", 4.2], {"": ""}, {"document": "sheet", "version": 2}, 10**400,
    float("nan"), float("inf"), "\ud800",
)  # fmt: skip
_BYTES = (
    b"", b'"', b"{", b"}", b"[", b"]", b",", b":", b"\\", b"\x00", b"\xff", b"\xed\xa0\x80",
    b"NaN", b"1e999", b"\\ud800", b"\xef\xbb\xbf", b"\n", b"[" * 300, b'{"a":' * 50,
)  # fmt: skip


def mutated(whole: bytes, chance: random.Random) -> bytes:
    """The document with one to four things wrong with it (some of which do no harm)."""
    if chance.random() < 0.5:
        document = json.loads(whole)
        for _ in range(chance.randint(1, 4)):
            document = _other_structure(document, chance)
        whole = json.dumps(document, ensure_ascii=chance.random() < 0.5).encode(
            errors="surrogatepass"
        )
        if chance.random() < 0.7:
            return whole
    for _ in range(chance.randint(1, 4)):
        whole = _other_bytes(whole, chance)
    return whole


def outcome(content: bytes) -> str:
    """Whether it "loaded" or was "refused"; an `AssertionError` where that is not clear."""
    try:
        job = job_from(content)
    except UnusableDocument as refused:
        sentence = str(refused)
        assert "\n" not in sentence, sentence
        assert 10 < len(sentence) < 400, sentence
        assert not any(word in sentence for word in FOREIGN_WORDS), sentence
        assert "cannot be used here" not in sentence, sentence
        return "refused"
    assert isinstance(job, Job)
    assert job_from(as_bytes(job)) == job
    return "loaded"


def _other_bytes(whole: bytes, chance: random.Random) -> bytes:
    at = chance.randint(0, len(whole))
    to = min(len(whole), at + chance.choice((1, 1, 2, 10, 100)))
    match chance.randrange(6):
        case 0:
            return whole[:at]
        case 1:
            return whole[:at] + whole[to:]
        case 2:
            return whole[:at] + whole[at:to] + whole[at:]
        case 3:
            return whole[:at] + bytes([chance.randrange(256)]) + whole[at + 1 :]
        case 4:
            return whole[:at] + chance.choice(_BYTES) + whole[at:]
        case _:
            return whole[to:]


def _other_structure(document: Any, chance: random.Random) -> Any:
    places = list(_places(document))
    if not places:
        return chance.choice(_VALUES)
    holder, key = chance.choice(places)
    match chance.randrange(6):
        case 0:
            del holder[key]
        case 1 if isinstance(holder, dict):
            holder[str(key) + chance.choice(("x", " ", "s", "\x00"))] = holder.pop(key)
        case 2 if isinstance(holder, list):
            holder.append(copy.deepcopy(holder[key]))
        case 3:
            other, other_key = chance.choice(places)
            holder[key] = copy.deepcopy(other[other_key])
        case 4:
            holder[key] = [holder[key]]
        case _:
            holder[key] = copy.deepcopy(chance.choice(_VALUES))
    return document


def _places(document: Any) -> list[tuple[Any, Any]]:
    found: list[tuple[Any, Any]] = []
    waiting = [document]
    while waiting:
        here = waiting.pop()
        keys: list[Any] = []
        if isinstance(here, dict):
            keys = list(here)
        elif isinstance(here, list):
            keys = list(range(len(here)))
        for key in keys:
            found.append((here, key))
            waiting.append(here[key])
    return found


def run(count: int, seed: int) -> Counter[str]:
    """How many of so many mutated documents loaded and were refused, and how many crashed."""
    chance = random.Random(seed)
    wholes = [sample.read_bytes() for sample in SAMPLES]
    counted: Counter[str] = Counter(loaded=0, refused=0, crashed=0, unclear=0)
    for number in range(count):
        content = mutated(wholes[number % len(wholes)], chance)
        try:
            counted[outcome(content)] += 1
        except AssertionError as error:
            counted["unclear"] += 1
            print(f"{number}: unclear: {error}", file=sys.stderr)
        except Exception as error:
            counted["crashed"] += 1
            print(f"{number}: {type(error).__name__}: {error}", file=sys.stderr)
    return counted


def main() -> int:
    """Run as a command: how many documents, and with which seed."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    counted = run(count, int(sys.argv[2]) if len(sys.argv) > 2 else 1)
    print(", ".join(f"{number} {name}" for name, number in counted.items()))
    return 1 if counted["crashed"] or counted["unclear"] else 0


if __name__ == "__main__":
    sys.exit(main())
