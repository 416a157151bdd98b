"""Everything that needs Qt: stages, drawing, widgets, theme. Nothing here computes."""
