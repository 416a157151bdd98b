"""What the findings come to: numbers against limits, what is due, what comes next, in words."""

from datetime import UTC, date, datetime

import pytest

from aligner.assessment import Level, Stage, StageState, assess
from aligner.assessment.findings import findings, number_words, verdict_advice
from aligner.assessment.inspection import assess_inspection, looked_at_of
from aligner.gauging import Verdict
from aligner.job import Gauge, Job
from aligner.job.edits_inspect import (
    with_carried,
    with_finding,
    with_gauge,
    with_limit,
    with_note,
    with_part_fitted,
    with_photograph,
    with_readings,
)
from aligner.job.inspect import Finding
from aligner.job.inspection_points import places_of
from aligner.sheet import Side
from aligner.sheet.inspection import LimitOf
from aligner.sheet.quantities import Length
from aligner.units.preferred import Preferred

TUBE = ("tube_runout", Side.LEFT)
PLAY = ("bush_play", Side.RIGHT)
SPRING = ("spring_free_length", Side.LEFT)
SEAL = ("oil_seal", Side.LEFT)
AT = datetime(2026, 5, 2, 10, tzinfo=UTC)
DIAL = Gauge(
    resolution=Length.typed("0.01 mm"),
    limit_of_error=Length.typed("0.02 mm"),
    repeatability=Length.typed("0.01 mm"),
)
RULE = Gauge(
    resolution=Length.typed("0.5 mm"),
    limit_of_error=Length.typed("0.3 mm"),
    repeatability=Length.typed("0.2 mm"),
)


def _mm(*texts):
    return tuple(Length.typed(text, "mm") for text in texts)


def _measured(place, readings, limit=None, *, gauge=DIAL, of=LimitOf.INDICATED):
    job = with_gauge(Job(), place, "the gauge", gauge)
    job = with_readings(job, place, _mm(*readings))
    return with_limit(job, place[0], value=Length.typed(limit, "mm"), of=of) if limit else job


def _standing(job, place):
    return assess_inspection(job).at_place(place)


def test_a_bend_is_half_of_the_greatest_swing_and_its_uncertainty_half_as_well():
    """0.24 indicated: u = sqrt(2 x 0.01^2 + 2 x 0.01^2/12 + 0.02^2/3) / 2, by hand 0.009354."""
    measured = _standing(_measured(TUBE, ["0.18", "0.24", "0.10"]), TUBE).measured
    assert (measured.read_mm, measured.value_mm) == (0.24, 0.12)
    assert measured.standard_uncertainty_mm == pytest.approx(0.009354, abs=1e-6)


@pytest.mark.parametrize(
    ("of", "verdict"),
    [
        pytest.param(LimitOf.INDICATED, Verdict.WITHIN, id="printed for what is indicated"),
        pytest.param(LimitOf.BEND, Verdict.WITHIN, id="printed for the bend"),
    ],
)
def test_a_runout_well_inside_is_within_whichever_its_limit_is_printed_for(of, verdict):
    assert _standing(_measured(TUBE, ["0.10"], "0.20", of=of), TUBE).measured.verdict is verdict


def test_the_same_number_is_out_of_an_indicated_limit_and_within_one_of_the_bend():
    out = _standing(_measured(TUBE, ["0.30"], "0.20", of=LimitOf.INDICATED), TUBE)
    within = _standing(_measured(TUBE, ["0.30"], "0.20", of=LimitOf.BEND), TUBE)
    assert (out.measured.verdict, within.measured.verdict) == (Verdict.OUT, Verdict.WITHIN)


def test_bush_play_counts_at_its_worst_height_and_is_not_halved():
    measured = _standing(_measured(PLAY, ["0.10", "0.31", "0.12"], "0.25"), PLAY).measured
    assert measured.value_mm == 0.31
    assert measured.verdict is Verdict.OUT


@pytest.mark.parametrize(
    ("readings", "verdict"),
    [
        pytest.param(["492", "492.5", "492"], Verdict.WITHIN, id="longer"),
        pytest.param(["490.5"], Verdict.UNSETTLED, id="just longer"),
        pytest.param(["487", "487"], Verdict.OUT, id="shorter"),
    ],
)
def test_a_spring_is_held_against_its_least_length_by_the_mean_of_its_readings(readings, verdict):
    standing = _standing(_measured(SPRING, readings, "490", gauge=RULE), SPRING)
    assert standing.measured.verdict is verdict


def test_without_a_limit_the_number_is_shown_and_the_verdict_is_missing():
    standing = _standing(_measured(TUBE, ["0.10"]), TUBE)
    assert standing.measured.verdict is Verdict.MISSING
    assert "limit missing" in number_words(standing, Preferred())
    assert any("Take it from the manual" in notice.text for notice in standing.notices)


def test_without_a_gauge_nothing_is_settled_and_that_is_said():
    job = with_limit(with_readings(Job(), TUBE, _mm("0.10")), "tube_runout", value=_mm("2")[0])
    standing = _standing(job, TUBE)
    assert standing.measured.verdict is Verdict.UNSETTLED
    assert any("No gauge is named" in notice.text for notice in standing.notices)


def test_scatter_alone_proves_no_spring_within_and_asks_for_the_gauge():
    job = with_readings(Job(), SPRING, _mm("495", "495.2", "494.9", "495.1"))
    standing = _standing(with_limit(job, SPRING[0], value=_mm("490")[0]), SPRING)
    assert standing.measured.verdict is Verdict.UNSETTLED
    assert verdict_advice(standing).startswith("Name the gauge")


def test_scatter_alone_tells_a_spring_that_is_far_out():
    job = with_readings(Job(), SPRING, _mm("485", "485.2", "484.9", "485.1"))
    standing = _standing(with_limit(job, SPRING[0], value=_mm("490")[0]), SPRING)
    assert standing.measured.verdict is Verdict.OUT


def test_out_and_marked_good_is_said_and_weighs_less_once_the_note_says_why():
    job = with_finding(_measured(TUBE, ["0.30"], "0.20"), TUBE, Finding.GOOD, AT)
    (notice,) = _standing(job, TUBE).notices
    assert notice.level is Level.ATTENTION
    assert "measures out and is marked good" in notice.text
    (notice,) = _standing(with_note(job, TUBE, "oval, not bent"), TUBE).notices
    assert notice.level is Level.NOTE


@pytest.mark.parametrize("finding", [Finding.WATCH, Finding.REPLACE])
def test_out_and_not_marked_good_is_no_disagreement(finding):
    job = with_finding(_measured(TUBE, ["0.30"], "0.20"), TUBE, finding, AT)
    assert not any("marked good" in notice.text for notice in _standing(job, TUBE).notices)


def test_the_person_s_finding_is_never_made_by_the_number():
    assert _standing(_measured(TUBE, ["0.30"], "0.20"), TUBE).found.finding is None
    assert assess_inspection(_measured(TUBE, ["0.30"], "0.20")).looked_at == 0


def test_a_part_stays_due_until_its_new_one_is_fitted():
    job = with_finding(Job(), SEAL, Finding.REPLACE, AT)
    assert [each.place for each in assess_inspection(job).open_parts] == [SEAL]
    assert "no new part is fitted yet" in assess_inspection(job).notices[0].text
    done = with_part_fitted(job, SEAL, True)
    assert assess_inspection(done).open_parts == ()
    assert assess_inspection(done).notices == ()


def test_the_next_place_is_the_first_without_a_finding_and_what_was_watched_comes_before():
    job = with_finding(Job(), TUBE, Finding.GOOD, AT)
    assert assess_inspection(job).next_place.place == ("tube_surface", Side.LEFT)
    carried = with_carried(job, with_finding(Job(), PLAY, Finding.WATCH, AT))
    assert assess_inspection(carried).next_place.place == PLAY


def test_the_short_count_is_that_of_the_whole_assessment():
    job = with_finding(with_finding(Job(), TUBE, Finding.GOOD, AT), SEAL, Finding.REPLACE, AT)
    whole = assess(job).inspection
    assert looked_at_of(job) == (whole.looked_at, len(whole.places), len(whole.open_parts))
    assert looked_at_of(job)[0] == 2


def test_the_history_of_a_number_has_its_earlier_days_and_today_s():
    first = with_finding(_measured(TUBE, ["0.10"]), TUBE, Finding.WATCH, AT)
    second = with_carried(_measured(TUBE, ["0.16"]), first)
    second = with_finding(second, TUBE, Finding.WATCH, datetime(2028, 3, 1, tzinfo=UTC))
    history = _standing(second, TUBE).history
    assert history == ((date(2026, 5, 2), 0.05), (date(2028, 3, 1), 0.08))


@pytest.mark.parametrize(
    ("job", "place", "said"),
    [
        pytest.param(
            _measured(TUBE, ["0.24"], "0.20"),
            TUBE,
            "bend 0.12 ± 0.02 mm (0.24 mm indicated), at most 0.20 mm indicated: out",
            id="bend against a limit on the dial",
        ),
        pytest.param(
            _measured(TUBE, ["0.04"], "0.10", of=LimitOf.BEND),
            TUBE,
            "bend 0.02 ± 0.02 mm (0.04 mm indicated), at most 0.10 mm bend: within",
            id="bend against a limit on the bend",
        ),
        pytest.param(
            _measured(PLAY, ["0.10"], "0.25"),
            PLAY,
            "0.10 ± 0.04 mm, at most 0.25 mm: within",
            id="play",
        ),
        pytest.param(
            _measured(SPRING, ["495"], "490", gauge=RULE),
            SPRING,
            "495.0 ± 0.6 mm, at least 490.0 mm: within",
            id="spring",
        ),
    ],
)
def test_the_number_in_words(job, place, said):
    assert number_words(_standing(job, place), Preferred()) == said


def test_the_rows_for_the_card_hold_everything_found_and_nothing_else():
    job = with_finding(_measured(TUBE, ["0.24"], "0.20"), TUBE, Finding.REPLACE, AT)
    job = with_photograph(with_note(job, SEAL, "weeping"), SEAL, "photographs/a.jpg")
    tube, seal = findings(assess_inspection(job), Preferred())
    assert (tube.point, tube.side, tube.finding) == (
        "Tube runout",
        "left leg",
        "replace, still due",
    )
    assert tube.numbers.endswith(": out")
    assert (seal.finding, seal.note) == ("not looked at", "weeping")
    assert seal.photographs == ("photographs/a.jpg",)
    assert findings(assess_inspection(Job()), Preferred()) == ()


@pytest.mark.parametrize(
    ("found", "carried", "state", "line"),
    [
        pytest.param({}, {}, StageState.OPEN, "not begun", id="nothing"),
        pytest.param({}, {TUBE: Finding.WATCH}, StageState.OPEN, "1 from last time", id="back"),
        pytest.param({SEAL: Finding.GOOD}, {}, StageState.IN_HAND, "1 of 32 seen", id="one"),
        pytest.param(
            {SEAL: Finding.REPLACE}, {}, StageState.IN_HAND, "1 of 32 seen, 1 due", id="one due"
        ),
        pytest.param(
            dict.fromkeys(places_of(Job()), Finding.GOOD),
            {},
            StageState.DONE,
            "all 32 seen",
            id="all",
        ),
        pytest.param(
            {**dict.fromkeys(places_of(Job()), Finding.GOOD), SEAL: Finding.REPLACE},
            {},
            StageState.IN_HAND,
            "all 32 seen, 1 due",
            id="all but one fitted",
        ),
    ],
)
def test_where_the_stage_stands(found, carried, state, line):
    earlier = Job()
    for place, finding in carried.items():
        earlier = with_finding(earlier, place, finding, AT)
    job = with_carried(Job(), earlier)
    for place, finding in found.items():
        job = with_finding(job, place, finding, AT)
    standing = next(each for each in assess(job).stages if each.stage is Stage.INSPECT)
    assert (standing.state, standing.line) == (state, line)
