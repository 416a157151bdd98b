"""The bench view: one thing in very large type."""
