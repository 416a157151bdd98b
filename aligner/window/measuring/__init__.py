"""How each reading is taken: two sentences and a small drawing beside the box in hand."""
