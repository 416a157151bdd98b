"""Quickly made frozen dataclasses against Python's own, which are the reference."""

import copy
import dataclasses
import inspect
import pickle
from dataclasses import FrozenInstanceError, field, replace

import pytest

from aligner.frozen import dataclass


def twins(fields, **members):
    """The same class made both ways; fields with types, members as a class body has them."""

    def body():
        return {"__annotations__": dict(fields), "__doc__": "A twin.", "__module__": __name__} | (
            members
        )

    quick = dataclass(frozen=True)(type("Twin", (), body()))
    return quick, dataclasses.dataclass(frozen=True)(type("Twin", (), body()))


def parameters_of(made):
    signature = inspect.signature(made)
    named = [(each.name, each.annotation) for each in signature.parameters.values()]
    return [*named, signature.return_annotation]


@dataclass(frozen=True)
class Reading:
    """At module level, as `pickle` wants it."""

    value: float
    unit: str = "mm"


PAIR = {"value": float, "unit": str}


@pytest.mark.parametrize(
    ("fields", "members", "given"),
    [
        pytest.param({}, {}, (), id="no field"),
        pytest.param({"value": float}, {}, (1.5,), id="one field"),
        pytest.param(PAIR, {"unit": "mm"}, (1.5,), id="a default"),
        pytest.param(PAIR, {"unit": "mm"}, (1.5, "in"), id="a default not taken"),
        pytest.param({"all": list}, {"all": field(default_factory=list)}, (), id="made anew"),
        pytest.param({"all": list}, {"all": field(default_factory=list)}, ([1],), id="not made"),
        pytest.param(PAIR, {"unit": field(default="", repr=False)}, (1.5, "x"), id="not shown"),
    ],
)
def test_it_is_made_and_shown_as_pythons_own(fields, members, given):
    quick, own = twins(fields, **members)

    assert repr(quick(*given)) == repr(own(*given))
    assert vars(quick(*given)) == vars(own(*given))
    assert parameters_of(quick) == parameters_of(own)
    assert quick.__match_args__ == own.__match_args__
    assert [each.name for each in dataclasses.fields(quick)] == list(fields)


def test_too_few_and_too_many_are_refused():
    for given in ((), (1.5, "mm", 3)):
        with pytest.raises(TypeError, match=r"__init__\(\)"):
            Reading(*given)


def test_two_are_equal_where_every_compared_field_is():
    quick, own = twins(PAIR, unit=field(default="mm", compare=False))
    for made in (quick, own):
        assert made(1.5, "mm") == made(1.5, "in")
        assert hash(made(1.5, "mm")) == hash(made(1.5, "in"))
        assert made(1.5) != made(1.6)
    assert Reading(1.5) != Reading(1.5, "in")


def test_one_of_another_class_is_not_equal_whatever_it_holds():
    other, _ = twins(PAIR)
    assert Reading(1.5, "mm") != other(1.5, "mm")


def test_equal_ones_are_one_key_and_a_list_makes_none():
    assert len({Reading(1.5), Reading(1.5), Reading(1.6)}) == 2
    with pytest.raises(TypeError, match="unhashable"):
        hash(Reading([1.5]))


def test_nothing_of_it_can_be_set_or_deleted():
    made = Reading(1.5)
    for name in ("value", "another"):
        with pytest.raises(FrozenInstanceError, match=name):
            setattr(made, name, 2.0)
        with pytest.raises(FrozenInstanceError, match=name):
            delattr(made, name)
    assert made == Reading(1.5)


def test_each_gets_a_default_of_its_own():
    quick, _ = twins({"all": list}, all=field(default_factory=list))
    assert quick().all is not quick().all


def test_it_is_looked_at_once_it_is_made():
    def check(self):
        if self.value < 0:
            raise ValueError("below nought")

    quick, _ = twins(PAIR, unit="mm", __post_init__=check)
    with pytest.raises(ValueError, match="below nought"):
        replace(quick(1.5), value=-1.0)


def test_it_is_replaced_copied_and_kept_as_pythons_own():
    assert replace(Reading(1.5), unit="in") == Reading(1.5, "in")
    assert dataclasses.asdict(Reading(1.5)) == {"value": 1.5, "unit": "mm"}
    assert copy.deepcopy(Reading(1.5)) == Reading(1.5)
    assert pickle.loads(pickle.dumps(Reading(1.5))) == Reading(1.5)
