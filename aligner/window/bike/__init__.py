"""The Bike stage: the sheet, made and edited."""
