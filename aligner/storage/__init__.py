"""Documents on disk: read with a clear refusal, written so that nothing can be lost."""
