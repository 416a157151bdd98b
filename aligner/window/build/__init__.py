"""The Build stage: oil, springs, head bearing."""
