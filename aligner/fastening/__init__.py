"""Threads and bolts, wrench settings, and the order in which a front end is done up."""
