"""Generated jobs and sheets, made from the models' own fields, so that new fields are covered.

The trap: a strategy written out by hand stays behind when a model grows, and the round-trip
tests then prove less than they seem to.
"""

from __future__ import annotations

import math
import types
from collections.abc import Callable
from datetime import date, datetime, timedelta, timezone
from enum import StrEnum
from functools import cache
from typing import Annotated, Any, Literal, Union, get_args, get_origin, get_type_hints

from hypothesis import reject
from hypothesis import strategies as st
from pydantic import ValidationError

from aligner.job import Job
from aligner.sheet import Sheet, TorqueSpecification
from aligner.sheet.model import Part
from aligner.sheet.quantities import OneOf, Quantity, Ratio, Torque
from aligner.units.unit import factor

Strategy = st.SearchStrategy[Any]

#: Any text UTF-8 can hold, with what people and careless programs put into it.
TEXTS = st.one_of(
    st.text(st.characters(exclude_categories=["Cs"]), max_size=12),
    st.sampled_from(
        ["", "4.2 mm", 'a "quote"', "back\\slash", "two\nlines", "\u0000", "−½ “é” 🔧"]
    ),
)
_OFFSETS = st.integers(-23 * 60, 23 * 60).map(lambda minutes: timezone(timedelta(minutes=minutes)))
_TIMES = st.datetimes(
    datetime(1950, 1, 1), datetime(2120, 1, 1), timezones=st.one_of(st.none(), _OFFSETS)
)


@st.composite
def quantities(draw: st.DrawFn, kind: type[Quantity]) -> Quantity:
    """A quantity as a person might type it, in any of its units."""
    unit = draw(st.sampled_from(kind.dimension.units))
    largest = math.floor(kind.dimension.largest / factor(kind.dimension, unit.symbol))
    whole = draw(st.integers(0, min(largest - 1, 9_999)))
    after = draw(
        st.one_of(
            st.just(""),
            st.from_regex(r"[.][0-9]{0,6}", fullmatch=True),
            st.from_regex(r",[0-9]{1,2}", fullmatch=True),
            st.sampled_from([" 1/64", " 11/16"]),
        )
    )
    sign = draw(st.sampled_from(["", "-", "−", "+"])) if kind.signed else ""
    spelling = draw(st.sampled_from([unit.symbol, *unit.spellings]))
    gap = " " if after else draw(st.sampled_from(["", " "]))
    return kind.typed(f"{sign}{whole}{after}{gap}{spelling}")


@st.composite
def torques(draw: st.DrawFn) -> TorqueSpecification:
    """A torque as a manual prints it, one way or the other."""
    fields: dict[str, Any] = {"source": draw(TEXTS)}
    if draw(st.booleans()):
        fields["nominal"] = draw(quantities(Torque))
        fields["tolerance"] = draw(st.one_of(st.none(), quantities(Ratio), quantities(Torque)))
    else:
        ends = [draw(quantities(Torque)), draw(quantities(Torque))]
        fields["low"], fields["high"] = sorted(ends, key=lambda end: end.value)
    also = _models()["also_printed"]
    fields["also_printed"] = draw(st.one_of(st.none(), also))
    return TorqueSpecification(**fields)


@st.composite
def sheets(draw: st.DrawFn) -> Sheet:
    """A sheet with each fastener under its own name."""
    sheet: Sheet = draw(_parts(Sheet, leave_out=("fasteners",)))
    fastener = next(t for t in get_args(get_type_hints(Sheet)["fasteners"]) if t is not Ellipsis)
    fasteners = draw(st.lists(_parts(fastener), max_size=2, unique_by=lambda one: one.name))
    return sheet.with_changes(fasteners=tuple(fasteners))


def jobs() -> st.SearchStrategy[Job]:
    """A job, any part of which may be filled in."""
    return _parts(Job)


def _models() -> dict[str, Strategy]:
    hints = get_type_hints(TorqueSpecification, include_extras=True)
    also = next(t for t in get_args(hints["also_printed"]) if t is not type(None))
    return {"also_printed": _parts(also)}


@cache
def _parts(model: type[Part], leave_out: tuple[str, ...] = ()) -> Strategy:
    hints = get_type_hints(model, include_extras=True)
    needed: dict[str, Strategy] = {}
    optional: dict[str, Strategy] = {}
    for name, field in model.model_fields.items():
        if name in leave_out:
            continue
        bounded = _bounded(field.metadata)
        strategy = _values(hints[name]) if bounded is None else bounded
        if any(getattr(mark, "min_length", 0) for mark in field.metadata):
            strategy = strategy.filter(bool)
        if field.is_required() and hints[name] is Torque:
            strategy = strategy.filter(lambda torque: torque.value > 0)  # a mark on a scale
        (needed if field.is_required() else optional)[name] = strategy
    return _consistent(model, st.fixed_dictionaries(needed, optional=optional))


@st.composite
def _consistent(draw: st.DrawFn, model: type[Part], fields: Strategy) -> Part:
    """A part that its model takes; of what contradicts itself, something is left out."""
    drawn = draw(fields)
    low, high = drawn.get("low"), drawn.get("high")
    if low is not None and high is not None and low.value > high.value:
        drawn["low"], drawn["high"] = high, low
    while True:
        try:
            return model(**drawn)
        except ValidationError:
            optional = [name for name in drawn if not model.model_fields[name].is_required()]
            if not optional:
                reject()
            del drawn[optional[-1]]


def _bounded(metadata: list[Any]) -> Strategy | None:
    """Whole numbers within the bounds of a field; `None` where it has none."""
    low = next((mark.ge for mark in metadata if hasattr(mark, "ge")), None)
    high = next((mark.le for mark in metadata if hasattr(mark, "le")), None)
    return None if low is None or high is None else st.integers(low, high)


def _values(kind: Any) -> Strategy:
    origin, inside = get_origin(kind), get_args(kind)
    if origin is Annotated:
        for mark in inside[1:]:
            if isinstance(mark, OneOf):
                return st.one_of([quantities(one) for one in mark.kinds])
        bounded = _bounded(list(inside[1:]))
        return _values(inside[0]) if bounded is None else bounded
    if origin is Literal:
        return st.sampled_from(inside)
    if origin in (Union, types.UnionType):
        return st.one_of([_values(one) for one in inside])
    if origin is tuple:
        return st.lists(_values(inside[0]), max_size=3).map(tuple)
    if origin is dict:
        return st.dictionaries(TEXTS, _values(inside[1]), max_size=2)
    return _simple(kind)


def _simple(kind: Any) -> Strategy:
    special: dict[Any, Callable[[], Strategy]] = {
        TorqueSpecification: torques,
        Sheet: sheets,
        type(None): st.none,
        bool: st.booleans,
        int: lambda: st.integers(0, 100),
        str: lambda: TEXTS,
        datetime: lambda: _TIMES,
        date: lambda: st.dates(date(1950, 1, 1), date(2120, 1, 1)),
    }
    if kind in special:
        return special[kind]()
    if issubclass(kind, Quantity):
        return quantities(kind)
    if issubclass(kind, StrEnum):
        return st.sampled_from(list(kind))
    if issubclass(kind, Part):
        return st.deferred(lambda: _parts(kind))
    raise TypeError(f"no strategy for {kind}: add one")
