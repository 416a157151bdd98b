"""The joints of one invented front end, for tests that plan it."""

from __future__ import annotations

from hypothesis import strategies as st

from aligner.fastening.joints import Joint, TorqueRange, joint_kinds

TORQUE = TorqueRange(23.0, 21.0, 25.0)


def front_end() -> list[Joint]:
    """Stem, two lower clamps of two bolts, caps, top clamps, handlebars, wheel and brakes."""
    joints = [
        Joint("stem nut", "stem_nut", torque=TORQUE, seating=TORQUE, back_off_deg=45.0),
        Joint("stem head bolt", "stem_head_bolt", torque=TORQUE),
        Joint("stem pinch bolt", "stem_pinch", torque=TORQUE),
        Joint("fork brace", "fork_brace", bolts=4, torque=TORQUE, pattern="crosswise"),
        Joint("axle", "axle", torque=TORQUE),
        Joint("axle pinch bolt", "axle_pinch", "right", torque=TORQUE),
    ]
    for side in ("left", "right"):
        joints += [
            Joint(f"{side} lower clamp", "lower_clamp", side, 2, TORQUE),
            Joint(f"{side} fork cap", "fork_cap", side, torque=TORQUE),
            Joint(f"{side} top clamp", "top_clamp", side, torque=TORQUE),
            Joint(f"{side} handlebar clamp", "handlebar_clamp_above", side, torque=TORQUE),
            Joint(f"{side} caliper", "brake_caliper", side, 2, TORQUE),
        ]
    return joints


@st.composite
def any_joints(draw: st.DrawFn, most: int = 14) -> list[Joint]:
    """Joints of any kinds, sides and numbers of bolts, each with its own name."""
    kinds = draw(st.lists(st.sampled_from(list(joint_kinds())), min_size=1, max_size=most))
    return [
        Joint(
            f"{kind} {number}",
            kind,
            draw(st.sampled_from(["left", "right", ""])),
            draw(st.integers(1, 3)),
            draw(st.sampled_from([None, TORQUE])),
        )
        for number, kind in enumerate(kinds)
    ]
