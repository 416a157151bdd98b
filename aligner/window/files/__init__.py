"""Opening, saving, recovery, the lock, printing."""
