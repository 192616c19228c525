# The price of ambition: what each goal costs. $wanted is a percentage.
correction-price-point = { $wanted } %: { $time }, { $gone }
correction-price = Price of ambition: { $points }
correction-time = Time
correction-clear-taken-off = Clear taken off

# The goal: how much of the defects shall go.
correction-gloss-only = Gloss only
correction-goal-share = Share of the defects that shall go
correction-machine-time = Time at the machine
correction-taken-off-mean = Taken off on average
correction-defects-go = Defects that go
correction-more-costs = What more would cost. No panel ever loses more than its budget, whatever is asked for.

# The whole vehicle.
correction-whole-vehicle = Whole vehicle
correction-title = Correction
correction-nothing-read = No panel has been read yet, so nothing may be taken off. Read the film first.
correction-test-spot = Test spot
correction-shop-steps = Steps of the shop
correction-rules = What may be taken off

# Open points: what somebody has to look at. $cause is one of polish-seam-….
correction-finish-differs =
    { $seams ->
        [one] Finish differs across { $seams } seam
       *[other] Finish differs across { $seams } seams
    }
correction-looks-different = Will look different from { $panel }: { $cause }.
correction-open-points = Open points
correction-seam-advice = Work the better one less, the other more where its budget allows, or tell the customer.
correction-beside = Beside it

# Steps of the shop. $speed is a number.
correction-pad-speed = The pad runs at { $speed } m/s on average. At the same force removal grows with this speed (Preston's law).
correction-add-step = Add a step
correction-back-to-start = Back to the starting set
correction-start-estimates = The figures of the starting set are our estimates. The maker's sheet says vibration and noise; a test spot says removal.
correction-copy = Copy
correction-up = Up
correction-down = Down
correction-remove = Remove
correction-new-step = New step
correction-step-name = Name of the step
correction-kind-sand = wet sanding
correction-kind-cut = cutting, leaves marks
correction-kind-polish = polishing, leaves gloss
correction-kind-finish = finishing
correction-kind = Kind
correction-pass-removal = Removal of a pass
correction-pass-spread = may be more by
correction-marks-left = Leaves marks as deep as
correction-clears-to = Clears defects down to
correction-pass-time = Time for 1 m² and pass
correction-setup = Getting ready, per panel
correction-passes-fewest = Passes, fewest
correction-passes-most = Passes, most
correction-machine = Machine
correction-orbit = Orbit across
correction-turns = Turns per minute
correction-pad-across = Pad across
correction-pad = Pad
correction-abrasive = Abrasive
correction-vibration-declared = Declared vibration
correction-vibration-k = its uncertainty K
correction-noise-declared = Noise at the ear
correction-clean-pad-after = A clean pad after
correction-polish-per-area = Polish for 1 m²
correction-zero-is-usual = 0 leaves pads and polish to the shop's usual figures.

# The plan of one panel. Amounts have their unit; $low is a number without one.
correction-from-to = { $low } to { $high }
correction-step = { $step }, { $passes ->
        [one] 1 pass
       *[other] { $passes } passes
    }
correction-at-defect = At one defect first: { $steps }

# $absorbance and $factor are numbers.
correction-ultraviolet = With { $gone } gone up to { $factor } times as much ultraviolet light reaches the colour (Beer-Lambert law, absorbance { $absorbance }, from memory).
correction-spot =
    Spot { $number }{ $edge ->
        [yes] , edge
       *[no] {""}
    }
correction-may-go = May go
correction-will-go = Will go
correction-steps = Steps
correction-why = Why
correction-mind = Mind
correction-what-stays = What stays
correction-as-planned = as planned
correction-at-most = At most
correction-limits = Limits
correction-at-spots = At the spots
correction-nothing = nothing
correction-spots-alone = From the readings at the spot alone. The plan keeps to the whole panel's budget; tape off what is lower.

# Rules for what may be taken off: groups, what is said of each, names of the rules.
correction-group-life = Life of the paint
correction-group-life-source = Our estimates around what trade pages repeat; a convention, not a law of nature.
correction-group-clear = Clear that is assumed
correction-group-clear-source = Gauges of this kind can't see the clear; it is taken as a share of the film.
correction-group-film = Thin and thick film
correction-group-film-source = Trade practice for the whole film on metal.
correction-group-places = Special places
correction-group-places-source = Our estimates. For sensors the vehicle maker's guidance comes first.
correction-rule-visit = Most in one visit
correction-rule-life = Most in its life
correction-rule-life-share = and of its clear
correction-rule-keep = Clear that is kept
correction-rule-unknown = Taken as used, history unknown
correction-rule-clear-least = At least, of the film
correction-rule-clear-least-cap = but no more than
correction-rule-clear-most = At most, of the film
correction-rule-clear-most-cap = and no more than
correction-rule-no-cut = No cutting below
correction-rule-finest-only = Finest polish only below
correction-rule-there-at-most = there at most
correction-rule-thin = Nothing strong below
correction-rule-painted-again-above = Painted again above
correction-rule-filler = Filler above
correction-rule-painted-again = Painted again, at most
correction-rule-fresh = Still hardening, at most
correction-rule-narrow = Narrow panel, at most
correction-rule-sensor = Over a sensor, at most
correction-rule-hardening = Hardening takes
correction-days = days
correction-back-to-defaults = Back to the defaults

# The test spot. $step is the name of a step.
correction-next = Next: { $step }, { $passes ->
        [one] 1 pass
       *[other] { $passes } passes
    }.
correction-enough = { $step } is enough for the goal; no harder step needs to be tried.
correction-test = Test { $number }
correction-step-gone = "{ $step }" is not in the list of steps any more, so this result does not count.
correction-pass-now = { $mean }, up to { $most }
correction-pass-was = was { $mean }
correction-deepest = Deepest { $defect }
correction-test-how = One place of two hands' breadth, taped off, least aggressive step first. Stop at the first that does.
correction-paint-soft = soft
correction-paint-usual = usual or not known
correction-paint-hard = hard
correction-this-paint = This paint is
correction-enter-result = Enter a result
correction-enter-another = Enter another result
correction-none-reaches = No step of the shop reaches the goal at the test spot. Lower the goal, or tell the customer.
correction-test-step = Step
correction-passes = Passes
correction-went = Defects that went
correction-went-of = of the
correction-finish-not-judged = not judged
correction-finish-can-stay = can stay
correction-finish-needs-finer = needs a finer step
correction-finish = Finish
correction-removed = Removed
correction-basis-gauge = by the gauge
correction-basis-estimated = estimated
correction-known = Known
correction-give-or-take = give or take
correction-pass-takes = A pass takes off, on this paint

# Heads of the table, and the same within a sentence.
correction-column-panel = Panel
correction-column-film = Least film
correction-column-may-go = May go
correction-column-needed = Needed
correction-column-will-go = Will go
correction-column-level = Level
correction-column-time = Time
correction-column-stays = Stays
correction-not-read = not read
correction-in-sentence-panel = panel
correction-in-sentence-film = least film
correction-in-sentence-may-go = may go
correction-in-sentence-needed = needed
correction-in-sentence-will-go = will go
correction-in-sentence-level = level
correction-in-sentence-time = time
correction-in-sentence-stays = stays
correction-sort =
    Sort by { $column }{ $order ->
        [rising] , rising
        [falling] , falling
       *[none] {""}
    }
correction-table = Panels and what is done to them

# Hands and ears. $vibration and the like are numbers.
correction-day = Day { $number }, { $time }
correction-machine-on = machine on { $time }
correction-vibration-points = { $vibration } m/s², { $points } points
correction-handed = { $panel } to { $who }
correction-handed-over = Handed over so that nobody reaches an action value: { $moves }.
correction-handed-costs = That costs { $time }.
correction-day-begins = “{ $verb } { $panel }” ({ $at })
correction-spread = In one day { $who } would reach { $points } points, and action is due from 100 on. Spread over { $days } days everybody stays below; a new day begins with { $starts }.
correction-osha = In the United States (29 CFR 1910.95), in one day: noise dose at most { $dose } %; from 50 % on a hearing conservation programme is due, 100 % is allowed. OSHA sets no value for vibration.
correction-exposure-basis = Machines as declared, a plus K, as long as they really run. Action from 2.5, limit 5 m/s² (Directive 2002/44/EC); 80 and 85, limit 87 dB(A) (2003/10/EC). Local rules and the makers’ sheets come first.
correction-hands-and-ears = Hands and ears
correction-vibration = Vibration
correction-noise = Noise
correction-no-machine = no machine
correction-below-action = below the action value
correction-action-reached = action value reached
correction-over-limit = over the limit
correction-all-below = Everybody stays below the action values in one day.

# The order of polishing. $most is a percentage.
correction-people =
    { $people ->
        [one] One person polishing
       *[other] { $people } people polishing
    }
correction-could-save = No other order could save more than { $most } %: that is proven.

# $does is what $who does ("polishes"), $local whether at one place only.
correction-row =
    { $at } { $who } { $does }{ $local ->
        [yes] {" "}one place
       *[no] {""}
    }
correction-nothing-polished = Nothing is polished.
correction-planning = Planning…
correction-no-order = There is no order.
correction-out-of-date = Out of date: a new order is being planned.
correction-looking = Still looking for a better one…
correction-takes = Takes
correction-walking-leads = Walking and laying leads
correction-walking = Walking
correction-alone = One person alone
correction-is-best = No other order of this work is better: that is proven.
correction-who-and-when = Who and when

# Stops of one worker; $verbs is a list such as "cut, finish".
correction-stops = { $who }, { $stops ->
        [one] 1 stop
       *[other] { $stops } stops
    }, { $time }
correction-stop = { $verbs } { $panel }

# What polishing uses up. $area and $polish have their unit.
correction-uses-sheets = { $area }: { $sheets } sheets, { $towels } towels
correction-uses-pads = { $area }: { $pads } pads, { $polish } polish, { $towels } towels
correction-leads-cost = With leads every change of side counts { $seconds } s for laying the lead round, so everybody tends to keep to a side. Where the sockets are is not known.
correction-nothing-used = Nothing is polished, so nothing is used.
correction-shop-uses = How much this shop uses (common practice and our estimates to start from)
correction-pad-serves = A pad serves
correction-polish-for-area = Polish for a square metre
correction-towel-serves = A towel serves
correction-sandpaper-for-area = Sandpaper for a square metre
correction-sheets = sheets
correction-on-leads = Machines are on leads
correction-back-to-usual = Back to the usual amounts
correction-people-time = Time of everybody together
correction-cost-labour = Labour
correction-cost-pads = Pads and sandpaper
correction-cost-polish = Polish
correction-cost-towels = Towels
correction-cost-total = Polishing costs
correction-no-prices = No prices yet: enter what the shop pays to see what polishing costs.
correction-currency = Currency
correction-price-hour = An hour of one person
correction-price-pad = A pad, each time
correction-price-sheet = A sheet of sandpaper
correction-price-litre = A litre of polish
correction-price-towel = A towel, each time
correction-prices-private = Saved with the job. On no sheet for the customer.

# The calculator for mixtures. $parts and $share are numbers.
correction-parts-water = 1 part to { $parts } parts of water
correction-parts-in-all = 1 part in { $parts } parts of the mixture
correction-mixture = { $concentrate } and { $water } of water, { $share } %
correction-ratio-hint = “1:10” is written for both: ask or read the label. 1 US fl oz in 2 US gal is 1 part to 256 of water, the usual rinseless wash for pads and towels (common practice).
correction-mixture-wanted = Mixture wanted
correction-one-part-to = 1 part to
correction-parts = parts
correction-what-to-mind = What to mind ({ $count })
correction-local-rules = Local rules and the makers’ sheets come first.
correction-materials = Materials
correction-cost = Cost, for the shop only
correction-dilution = Dilution
