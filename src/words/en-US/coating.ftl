coating-clean-from = Leveled cleanly from
coating-top-before-bottom = Top before bottom is always kept where one leans over a panel: a fresh film is not leaned on, leveled or not.
coating-per-metre = For a square meter and layer
coating-apply-metre = Apply a square meter in
coating-level-metre = Level a square meter in
