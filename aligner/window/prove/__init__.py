"""The Prove stage: final checks, sign-off, re-checks."""
