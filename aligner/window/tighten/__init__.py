"""The Tighten stage: the list, ticked step by step."""
