"""Putting a motorcycle's front end back together: straight, in order, to the right torque."""

__version__ = "0.1.0"
