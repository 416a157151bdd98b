"""The front end drawn to proportion: pure painting, data in, picture out.

Drawing practice is that of engineering drawings (ISO 128 for the lines, ISO 129-1 for the
dimensions); every view says whence it is seen and how far an error is exaggerated.
"""
