# What the map shows.
scene-overlay-film = Film
scene-overlay-defects = Defects
scene-overlay-polish = Polish
scene-overlay-order = Order
scene-overlay-body = Body

# What is known of a panel, joined by semicolons. $mean, $lower: in µm
scene-film = film { $mean } µm, at least { $lower } µm
scene-no-reading = no reading, { $reason }
scene-no-reading-counts = no reading that counts, { $reason }
scene-unread = not read
scene-defects = { $count ->
    [0] no defects
    [one] { $count } defect
   *[other] { $count } defects
}
# $who: a worker; $does: “applies”
scene-stop = { $who } { $does } as number { $number }

# The legend of the map.
scene-film-ramp = Mean film, { $low } µm or less to { $high } µm or more; ≥ is at least
scene-spot-mean = Spot, mean in µm
scene-spot-suspect = Doesn't count, gauge failed
scene-not-read = Painted, not read
scene-defect-fine = Fine, polishes out
scene-defect-deep = Deep, may only fade
scene-defect-on-top = On the surface, cleans off
scene-defect-broken = Through the clear, needs paint
scene-budget-used = Budget used at most
scene-left-uncoated = Left uncoated
scene-not-polished = Not polished
scene-first-to-last = First to last
# Somebody and what they do, in the legend and beside a lane of the time chart; $does: “applies and levels”
scene-who-does = { $who } { $does }
scene-does-here = { $who } { $does } here
scene-stops-of = { $who }’s stops
scene-at-panels = { $time } at panels

# What a polishing step is, said of somebody: “Anna cuts”.
scene-sands = sands
scene-cuts = cuts
scene-polishes = polishes
scene-finishes = finishes

# The map while the vehicle itself is changed. $area: in m²; $substrate: “steel”
scene-made-of = { $substrate }, about { $area } m²
scene-painted-usual = Painted, { $substrate } where nothing is said
scene-glass = Glass
scene-lamp = Lamp
scene-trim = Bare trim
scene-left-out = Left out

# The map of an exercise.
scene-not-in-exercise = not part of this exercise
scene-to-do = nothing done yet
scene-is-wet = wet
# $window: what is said of the window of this panel
scene-wet-window = wet, { $window }
scene-wet = Wet
scene-level = Levelled
scene-out-of-exercise = Not in this exercise
scene-nothing-done = Nothing done yet

# The map and the cards of a day in the bay.
scene-is-done = done
scene-done = Done
scene-wet-left = wet, { $time } left to level it
scene-wet-time-left = Wet, time left to level
# 1 is the number on the map
scene-one-is-now = { $who }, 1 is now
scene-one-is-next = { $who }, 1 is next
# What is to be done at a panel.
scene-role-apply = Apply
scene-role-level = Level
scene-role-sand = Sand
scene-role-cut = Cut
scene-role-polish = Polish
scene-role-finish = Finish
# $does: “polish”; $panel: “roof left”
scene-in-short = { $does } { $panel }
# What is called out: “Bonnet left is on, roof left next”
scene-said = { $done }, { $next }
scene-said-applied = { $panel } is on
scene-said-level = { $panel } is levelled
scene-said-sanded = { $panel } is sanded
scene-said-cut = { $panel } is cut
scene-said-polished = { $panel } is polished
scene-said-finished = { $panel } is finished
scene-said-done = { $panel } is done
scene-said-next = { $what } next
scene-said-nothing-left = nothing left for me
# Why something can't begin yet. $does: “Apply”; $panel: “roof left”
scene-hold-first = { $does } { $panel } comes first
scene-hold-early = { $seconds } s too early
scene-hold-wet = { $panel } is still wet
scene-hold-near = { $who } works too near
# $time: a duration
scene-late = { $panel } will be about { $time } late. Level it first; where it drags, wet it with the used applicator and level at once.
# $cause: why it does not count
scene-odd-taps = { $count ->
    [one] One tap does not count: { $cause }.
   *[other] { $count } taps do not count. The first: { $cause }.
}

# The last lap.
scene-look-here = To look at from here
scene-look-later = To look at later
scene-high-spot = High spot
# Places to stand, by what is worked from there; $place: one of them, perhaps with a number
scene-stance-at-left = { $place } left
scene-stance-at-right = { $place } right
scene-stance-front = Front
scene-stance-wing = Wing
scene-stance-door-front = Door front
scene-stance-b-pillar = B pillar
scene-stance-door-rear = Door rear
scene-stance-door-side = Door side
scene-stance-rear-quarter = Rear quarter
scene-stance-rear = Rear
scene-stance-load = Load
scene-stance-load-rear = Load rear
scene-stance-bed = Bed
scene-stance-bay = Bay
