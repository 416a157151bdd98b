"""Frozen dataclasses that are made quickly, for the values the window starts with.

The trap: for each class `dataclasses` writes six methods as text and has them compiled, and a
hundred classes take a twelfth of the start. Only what makes an instance must be compiled to be
quick. What compares, hashes, shows and guards one is the same for all, and stands here once.
"""

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import MISSING, Field, FrozenInstanceError, fields
from dataclasses import dataclass as _with_fields
from operator import attrgetter
from typing import TYPE_CHECKING, Any, Literal, TypeVar

Value = TypeVar("Value")


def _quick(*, frozen: Literal[True]) -> Callable[[type[Value]], type[Value]]:
    """As `dataclasses.dataclass(frozen=True)`, which is what it is to a type checker."""

    def made(cls: type[Value]) -> type[Value]:
        members = fields(_with_fields(init=False, repr=False, eq=False)(cls))  # type: ignore[arg-type]
        compared = [each.name for each in members if each.compare]
        parts: Callable[[Any], Any] = attrgetter(*compared) if compared else _nothing
        shown = [each.name for each in members if each.repr]

        def equal(self: Any, other: object) -> Any:
            return parts(self) == parts(other) if other.__class__ is cls else NotImplemented

        def hashed(self: Any) -> int:
            return hash(parts(self))

        def described(self: Any) -> str:
            inside = ", ".join(f"{name}={getattr(self, name)!r}" for name in shown)
            return f"{cls.__qualname__}({inside})"

        own = {
            "__init__": _constructor(cls, members),
            "__eq__": equal,
            "__hash__": hashed,
            "__repr__": described,
            "__setattr__": _refuse_to_set,
            "__delattr__": _refuse_to_delete,
        }
        for name, method in own.items():
            setattr(cls, name, method)
        return cls

    return made


def _constructor(cls: type, members: tuple[Field[Any], ...]) -> Any:
    given: dict[str, Any] = {"_put": object.__setattr__, "_left_out": MISSING}
    parameters, lines = ["self"], []
    for each in members:
        value = name = each.name
        if each.default_factory is not MISSING:
            given[f"_{name}_made"] = each.default_factory
            value = f"_{name}_made() if {name} is _left_out else {name}"
            parameters.append(f"{name}=_left_out")
        elif each.default is not MISSING:
            given[f"_{name}"] = each.default
            parameters.append(f"{name}=_{name}")
        else:
            parameters.append(name)
        lines.append(f"_put(self, {name!r}, {value})")
    if hasattr(cls, "__post_init__"):
        lines.append("self.__post_init__()")
    body = "\n  ".join(lines or ["pass"])
    text = (
        f"def maker({', '.join(given)}):\n"
        f" def __init__({', '.join(parameters)}):\n  {body}\n"
        " return __init__"
    )
    local: dict[str, Any] = {}
    exec(text, vars(sys.modules[cls.__module__]), local)
    made = local["maker"](**given)
    made.__annotations__ = {each.name: each.type for each in members} | {"return": None}
    return made


def _nothing(_value: Any) -> tuple[()]:
    return ()


def _refuse_to_set(_self: Any, name: str, _value: Any) -> None:
    raise FrozenInstanceError(f"cannot assign to field {name!r}")


def _refuse_to_delete(_self: Any, name: str) -> None:
    raise FrozenInstanceError(f"cannot delete field {name!r}")


if TYPE_CHECKING:
    from dataclasses import dataclass as dataclass
else:
    dataclass = _quick
