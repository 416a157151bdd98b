"""Taking apart: what is next, the line in the stage list, the readings as found in words."""

from __future__ import annotations

import math
from datetime import UTC, datetime

import pytest

from aligner.assessment import Stage, StageState, assess
from aligner.assessment.as_found import has_air
from aligner.assessment.strip import StripSubject, assess_strip
from aligner.assessment.ticks import TickRefused, with_loosened
from aligner.data_files import demo
from aligner.errors import AlignerError
from aligner.job import AsFound, Gauge, Job
from aligner.job.edits_strip import with_as_found, with_put_back, with_removed, without_loosened
from aligner.sheet import ForkKind
from aligner.sheet.quantities import Length, SignedLength, Volume
from aligner.storage.document_file import load_job
from aligner.units.preferred import Preferred

AT = datetime(2026, 5, 2, 9, 0, tzinfo=UTC)
#: Student's t for 95 %, infinite degrees of freedom (any table of the t distribution).
T_95 = 1.960


def fresh(name="fellside-left-leg-high"):
    job = load_job(demo(f"{name}.job.json"))[0]
    return job.with_changes(as_found=AsFound(), strip=job.strip.with_changes(log=()))


def with_heights(job):
    for side in ("left", "right"):
        job = with_as_found(job, f"protrusion.{side}", (SignedLength.typed("5.0 mm"),))
    return job


def loosened(job, count):
    for _ in range(count):
        job = with_loosened(job, assess_strip(job).next_step.step.key, AT, "invented")
    return job


def strip_line(job):
    return next(each for each in assess(job).stages if each.stage is Stage.STRIP)


def test_the_heights_come_first_and_the_first_step_after_them():
    found = assess_strip(fresh())
    assert found.subject is StripSubject.HEIGHTS
    assert found.sentence[0] == "Read both heights as found."
    after = assess_strip(with_heights(fresh()))
    assert after.subject is StripSubject.LOOSEN
    assert after.sentence[0].startswith("Machine supported")
    assert "never by the exhaust" in after.sentence[2]


def test_where_the_handlebars_cover_the_tubes_the_sentence_says_to_loosen_up_to_them():
    assert "handlebars cover" in assess_strip(fresh("quernbeck-upside-down")).sentence[1]
    assert "handlebars cover" not in assess_strip(fresh()).sentence[1]


def test_the_list_asks_for_the_heights_again_until_a_clamp_is_slack():
    job = fresh()
    keys = [each.step.key for each in assess_strip(job).steps]
    before = loosened(job, keys.index("look/heights_as_found"))
    found = assess_strip(before)
    assert found.asks_for_heights
    assert found.next_step.waits_for == "the heights as found are not written down yet"
    with pytest.raises(TickRefused, match="not written down yet"):
        with_loosened(before, "look/heights_as_found", AT)
    clamp = "top_clamp/left top clamp/loosen"
    too_late = with_loosened(before, clamp, AT, "the wind blew")
    assert not assess_strip(too_late).asks_for_heights
    assert assess_strip(without_loosened(too_late, clamp, AT)).asks_for_heights


def test_out_of_order_wants_a_reason_and_keeps_it():
    job = with_heights(fresh())
    key = "fork_cap/left cap/loosen"
    with pytest.raises(TickRefused, match="out of its order"):
        with_loosened(job, key, AT)
    done = with_loosened(job, key, AT, "top clamp is off the bike")
    assert done.strip.log[-1].reason == "top clamp is off the bike"


def test_caps_are_cracked_between_top_and_lower_clamps_and_the_support_is_first():
    """Common practice, no source: the lower clamps hold the tubes while the caps are cracked."""
    for name in ("fellside-left-leg-high", "quernbeck-upside-down", "fellside-air-assist"):
        kinds = [each.step.joint_kind or each.step.key for each in assess_strip(fresh(name)).steps]
        caps = [place for place, kind in enumerate(kinds) if kind == "fork_cap"]
        tops = [place for place, kind in enumerate(kinds) if kind == "top_clamp"]
        lowers = [place for place, kind in enumerate(kinds) if kind == "lower_clamp"]
        assert kinds[0] == "act/machine_supported"
        assert max(tops) < min(caps) <= max(caps) < min(lowers), name


def test_the_stage_line_says_how_far_it_is():
    job = fresh()
    assert (strip_line(job).state, strip_line(job).line) == (StageState.OPEN, "not begun")
    noted = with_as_found(job, "steering", "heavy")
    assert strip_line(noted).line == "as found begun"
    read = with_heights(job)
    assert strip_line(read).line == "as found read"
    total = len(assess_strip(job).steps)
    four = loosened(read, 4)
    assert strip_line(four).line == f"4 of {total} loosened"
    assert strip_line(four).state is StageState.IN_HAND
    whole = loosened(read, total)
    assert (strip_line(whole).state, strip_line(whole).line) == (StageState.DONE, "all loosened")
    for name in ("Horn", "Front wheel", "Fuel tank"):
        whole = with_removed(whole, name, AT)
    assert strip_line(whole).line == "all loosened, 3 parts off"
    assert assess(whole).strip.sentence[1].startswith("3 parts are off")
    for place in range(3):
        whole = with_put_back(whole, place, AT)
    assert strip_line(whole).line == "all loosened, all back"


def test_without_fasteners_there_is_a_word_why_and_parts_can_come_off_all_the_same():
    job = with_removed(Job(), "Horn", AT)
    found = assess_strip(job)
    assert found.subject is StripSubject.SHEET
    assert "Bike" in found.sentence[1]
    assert found.line == "1 part off"


def test_only_what_was_noted_has_a_row():
    assert assess_strip(fresh()).as_found_rows() == ()
    job = with_as_found(fresh(), "left.oil", Volume.typed("240 ml"))
    job = with_as_found(job, "left.oil_look", "grey, no metal")
    job = with_as_found(job, "right.preload", "3 rings showing")
    rows = {row.name: row.words for row in assess_strip(job).as_found_rows()}
    assert rows == {"left oil": "240 ml, grey, no metal", "right preload": "3 rings showing"}


def test_the_gauge_counts_in_the_uncertainty_of_the_heights_as_found():
    """GUM (JCGM 100:2008) 4.3.7, 5.1.2: rectangular limits divide by root 3; root of squares.

    One reading of each leg; the stated scatter stands in. The limit of error is common to both
    readings with one gauge, so it falls out of their difference (JCGM 100:2008, 5.2.2).
    """
    gauge = Gauge(
        resolution=Length.typed("0.1 mm"),
        limit_of_error=Length.typed("0.2 mm"),
        repeatability=Length.typed("0.05 mm"),
    )
    job = with_heights(fresh()).with_changes(gauges={"rule": gauge})
    unnamed = {row.name: row.words for row in assess_strip(job).as_found_rows()}
    assert unnamed["left height"] == "5.00 mm"
    job = with_as_found(job, "protrusion.gauge", "rule")
    rows = {row.name: row.words for row in assess_strip(job).as_found_rows()}
    own = math.hypot(0.05, 0.05 / math.sqrt(3))
    each = T_95 * math.hypot(own, 0.2 / math.sqrt(3))
    both = T_95 * math.hypot(own, own)
    assert rows["left height"] == f"5.00 ± {each:.2f} mm"
    assert rows["heights, difference"] == f"left and right alike, 0.00 ± {both:.2f} mm"


def test_a_height_below_the_face_is_negative_and_the_difference_says_which_is_more():
    job = with_as_found(fresh(), "protrusion.left", (SignedLength.typed("-1.5 mm"),))
    job = with_as_found(job, "protrusion.right", (SignedLength.typed("1/16 in"),))
    rows = {row.name: row.words for row in assess_strip(job).as_found_rows()}
    assert rows["left height"].startswith("-1.50") or rows["left height"].startswith("−1.50")
    difference = "left 3.09 mm less than right"  # 1/16 in is 1.5875 mm
    assert rows["heights, difference"].startswith(difference)
    inches = {row.name: row.words for row in assess_strip(job).as_found_rows(Preferred("in"))}
    assert inches["right height"].endswith(" in")


def test_sag_is_the_extended_length_less_the_loaded_one_and_a_slip_is_said():
    job = fresh()
    for path, text in (("sag.extended", "200 mm"), ("sag.static", "168 mm")):
        job = with_as_found(job, path, (Length.typed(text),))
    job = with_as_found(job, "sag.rider", (Length.typed("210 mm"),))
    rows = {row.name: row.words for row in assess_strip(job).as_found_rows()}
    assert rows["static sag"] == "32.0 mm"
    assert "misread" in rows["rider sag"]


@pytest.mark.parametrize("kind", list(ForkKind))
def test_air_is_asked_for_where_the_fork_holds_it(kind):
    job = fresh()
    fork = job.sheet.fork.with_changes(kind=kind)
    job = job.with_changes(sheet=job.sheet.with_changes(fork=fork))
    assert has_air(job) is (kind is ForkKind.AIR_ASSISTED)
    assert has_air(with_as_found(job, "air_pressure", "none"))


def test_the_demo_bikes_heights_show_at_align_as_before():
    found = load_job(demo("fellside-left-leg-high.job.json"))[0].as_found
    assert (len(found.protrusion.left), found.handlebars, found.left.oil) == (2, "", None)


def test_unticking_what_is_not_ticked_is_refused():
    with pytest.raises(AlignerError, match="not ticked"):
        without_loosened(fresh(), "act/machine_supported", AT)
