"""What a job comes to on paper: the plain text, the JSON object and the job card.

Import the module that is needed: only `card` knows Qt, and the command that assesses must
not load it.
"""
