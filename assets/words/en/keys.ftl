### Keys

rear-easier = Rear: easier
rear-harder = Rear: harder
# With one lever there is nothing to tell it from.
only-rear-easier = Easier
only-rear-harder = Harder
front-smaller = Front: smaller ring
front-bigger = Front: bigger ring
ease = Soft feet
press = Push hard
coast = Coast
brake = Brake
pause = Pause
name-Space = Space
name-Escape = Esc
name-Enter = Enter
name-Tab = Tab
# When it is said aloud.
spoken-ArrowUp = arrow up
spoken-ArrowDown = arrow down
spoken-ArrowLeft = arrow left
spoken-ArrowRight = arrow right
