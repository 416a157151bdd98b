"""The Align stage: readings in, corrections out."""
