"""All the jobs of a folder, and what was set on a bike."""
