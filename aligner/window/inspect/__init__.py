"""The Inspect stage: findings and photographs."""
