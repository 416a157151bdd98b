"""The Strip stage: as found, loosening, parts off and back on."""
