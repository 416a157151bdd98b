"""A rigid front end in coordinates: what a gauge would read, without any of the closed forms.

Axes after ISO 8855: x forward, y to the rider's left, z up along the steering axis, origin
where it meets the lower bracket; lengths in mm. Everything is built from points, rotation
matrices and tangent planes, and what has to be solved is left to a root finder, so that a
slip of sign or a wrong formula in the program cannot be repeated here.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import brentq, root  # type: ignore[import-untyped]  # scipy has no types

Vector = NDArray[np.float64]
Matrix = NDArray[np.float64]

LEFT, RIGHT = 1, -1
UP = np.array([0.0, 0.0, 1.0])


def vector(x: float, y: float, z: float) -> Vector:
    return np.array([x, y, z], dtype=np.float64)


def about_y(angle_deg: float) -> Matrix:
    """Positive lowers the nose."""
    s, c = math.sin(math.radians(angle_deg)), math.cos(math.radians(angle_deg))
    return np.array([[c, 0, s], [0, 1, 0], [-s, 0, c]], dtype=np.float64)


def about_z(angle_deg: float) -> Matrix:
    """Positive turns to the left."""
    s, c = math.sin(math.radians(angle_deg)), math.cos(math.radians(angle_deg))
    return np.array([[c, -s, 0], [s, c, 0], [0, 0, 1]], dtype=np.float64)


def solved(function: Any, low: float, high: float) -> float:
    """The root of a function of one number, as far as floats go."""
    return float(brentq(function, low, high, xtol=1e-14, rtol=8.9e-16, maxiter=300))


@dataclass(frozen=True)
class RigidPair:
    """Reference points on frame and lower bracket, the bracket turned by so much."""

    reach: float
    half_width: float
    setback: float
    frame_half_width: float
    height: float = 0.0
    turn_deg: float = 0.0
    asymmetry: float = 0.0

    def bracket_point(self, side: int) -> Vector:
        straight = vector(self.reach, side * self.half_width, 0)
        return np.asarray(about_z(self.turn_deg) @ straight)

    def frame_point(self, side: int) -> Vector:
        return vector(-self.setback, side * self.frame_half_width, self.height)

    def distance(self, side: int) -> float:
        """What the gauge reads; the asymmetry stands for pads or lugs of unequal thickness."""
        apart = np.linalg.norm(self.bracket_point(side) - self.frame_point(side))
        return float(apart) + side * self.asymmetry / 2

    def turned(self, by_deg: float) -> RigidPair:
        return replace(self, turn_deg=self.turn_deg + by_deg)


def pair_that_reads(left: float, right: float, pair: RigidPair) -> RigidPair:
    """The same points at the one turn and height that give these readings, by root finder."""

    def at(turn_deg: float) -> RigidPair:
        flat = replace(pair, turn_deg=turn_deg, height=0.0)
        return replace(flat, height=math.sqrt(left**2 - flat.distance(LEFT) ** 2))

    return at(solved(lambda turn: at(turn).distance(RIGHT) - right, -45, 45))


@dataclass(frozen=True)
class RigidFork:
    """Two tubes through the clamp centres of two brackets, the top one twisted on the lower."""

    leg_spacing: float = 200.0
    bracket_spacing: float = 190.0
    to_axle: float = 430.0
    bracket_offset: float = 50.0
    tube_radius: float = 20.5
    twist_deg: float = 0.0
    left_rise: float = 0.0
    right_rise: float = 0.0

    def lower_clamp(self, side: int) -> Vector:
        return vector(self.bracket_offset, side * self.leg_spacing / 2, 0)

    def top_clamp(self, side: int) -> Vector:
        turned = about_z(self.twist_deg) @ self.lower_clamp(side)
        return np.asarray(turned + self.bracket_spacing * UP)

    def down(self, side: int) -> Vector:
        """Unit vector along a tube, towards the axle."""
        along = self.lower_clamp(side) - self.top_clamp(side)
        return np.asarray(along / np.linalg.norm(along))

    def on_tube(self, side: int, below: float) -> Vector:
        """The point of a tube's middle line so far below the lower bracket, along the tube."""
        return np.asarray(self.lower_clamp(side) + below * self.down(side))

    def at_height(self, side: int, z: float) -> Vector:
        """The point of a tube's middle line at a height."""
        return self.on_tube(side, -z / -self.down(side)[2])

    def axle_end(self, side: int) -> Vector:
        rise = self.left_rise if side == LEFT else self.right_rise
        return self.at_height(side, rise - self.to_axle)

    def axle_direction(self) -> Vector:
        """Unit vector along the axle, from the right end to the left."""
        along = self.axle_end(LEFT) - self.axle_end(RIGHT)
        return np.asarray(along / np.linalg.norm(along))

    def axle_middle(self) -> Vector:
        return np.asarray((self.axle_end(LEFT) + self.axle_end(RIGHT)) / 2)

    def wheel_heading_deg(self) -> float:
        """Which way the wheel rolls, seen from above; positive to the left."""
        forward = np.cross(self.axle_direction(), UP)
        return math.degrees(math.atan2(forward[1], forward[0]))

    def fore_and_aft_skew(self, upper: float, lower: float) -> float:
        """How far ahead the left tube comes against the right one between two depths."""

        def ahead(depth: float) -> float:
            return float(self.at_height(LEFT, -depth)[0] - self.at_height(RIGHT, -depth)[0])

        return ahead(lower) - ahead(upper)

    def plate_gap(
        self, upper: float, length: float, open_corner: tuple[int, bool], ahead: int
    ) -> float:
        """The gap at one corner of a plate that touches the tubes at the other three.

        `open_corner` is (side, is_lower); `ahead` is 1 for a plate on the front of the tubes,
        -1 on the rear. Negative if the plate cannot lie so.
        """
        places = [(side, is_lower) for side in (LEFT, RIGHT) for is_lower in (False, True)]

        def reach(place: tuple[int, bool], normal: Vector) -> float:
            side, is_lower = place
            axis = self.down(side)
            square = normal - (normal @ axis) * axis
            point = self.on_tube(side, upper + length * is_lower)
            return float(normal @ point + self.tube_radius * np.linalg.norm(square))

        def plane(unknowns: Vector) -> tuple[Vector, float]:
            normal = vector(ahead, unknowns[1], unknowns[2])
            size = np.linalg.norm(normal)
            return normal / size, float(unknowns[0] / size)

        def misses(unknowns: Vector) -> list[float]:
            normal, distance = plane(unknowns)
            return [distance - reach(place, normal) for place in places if place != open_corner]

        start = [ahead * self.bracket_offset + self.tube_radius, 0.0, 0.0]
        solution = root(misses, start, tol=1e-13)
        assert max(abs(miss) for miss in misses(solution.x)) < 1e-9
        normal, distance = plane(solution.x)
        return distance - reach(open_corner, normal)

    def bar_left_end_ahead(self, depth: float, half_length: float) -> float:
        """How far ahead of its middle the left end of a bar lies, laid level on both tubes."""

        def reach(side: int, angle: float) -> float:
            normal = np.array([math.cos(angle), math.sin(angle)])
            axis = self.down(side)
            slope = axis[:2] / axis[2]
            # A level cut through a leaning cylinder is an ellipse: its support in a direction.
            ellipse = self.tube_radius * math.sqrt(1 + float(normal @ slope) ** 2)
            return float(normal @ self.at_height(side, -depth)[:2]) + ellipse

        angle = solved(lambda t: reach(LEFT, t) - reach(RIGHT, t), -0.7, 0.7)
        return -half_length * math.sin(angle)


def lowest_point(centre: Vector, axle: Vector, radius: float, up: Vector = UP) -> Vector:
    """Where a thin wheel touches a ground whose upward direction is given, by root finder."""
    first = np.cross(axle, vector(1, 0, 0))
    first = first / np.linalg.norm(first)
    second = np.cross(axle, first)

    def rim(t: float) -> Vector:
        return np.asarray(centre + radius * (math.cos(t) * first + math.sin(t) * second))

    def slope(t: float) -> float:
        return float(up @ (-math.sin(t) * first + math.cos(t) * second))

    coarse = min(np.linspace(0, 2 * math.pi, 64), key=lambda t: float(up @ rim(t)))
    return rim(solved(slope, coarse - 0.3, coarse + 0.3))


@dataclass(frozen=True)
class RigidBike:
    """A bike on its two tyres; the frame's axes start level, at the rear axle."""

    rake_deg: float
    offset: float
    front_radius: float
    rear_radius: float
    wheelbase: float

    def raised(self, rise: float) -> tuple[float, float, float]:
        """Rake in degrees, trail and wheelbase with the front axle so far up the steering axis."""
        upward = about_y(-self.rake_deg) @ UP
        forward = about_y(-self.rake_deg) @ vector(1, 0, 0)
        axle = vector(self.wheelbase, 0, self.front_radius - self.rear_radius)
        on_axis = axle - self.offset * forward
        axle = axle + rise * upward
        sideways = vector(0, 1, 0)

        def front_contact(pitch_deg: float) -> Vector:
            return lowest_point(about_y(pitch_deg) @ axle, sideways, self.front_radius)

        rear_contact = lowest_point(vector(0, 0, 0), sideways, self.rear_radius)
        ground = rear_contact[2]
        pitch_deg = solved(lambda p: front_contact(p)[2] - ground, -30, 30)
        contact = front_contact(pitch_deg)
        upward, on_axis = about_y(pitch_deg) @ upward, about_y(pitch_deg) @ on_axis
        meets = on_axis + upward * (ground - on_axis[2]) / upward[2]
        rake_deg = math.degrees(math.atan2(-upward[0], upward[2]))
        return rake_deg, float(meets[0] - contact[0]), float(contact[0] - rear_contact[0])
