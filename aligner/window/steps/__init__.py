"""The ordered lists of steps on the screen: what Strip, Tighten, Prove and the bench share."""
