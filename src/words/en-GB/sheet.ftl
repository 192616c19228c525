sheet-before-after = Before and after
sheet-panel = Panel
sheet-paint-before = Paint before
sheet-after = After
sheet-polished-off = Polished off
sheet-gloss-units = Gloss, in gloss units
sheet-about = about { $film }
sheet-too-little = too little to read
sheet-no-marks = No marks were noted.
sheet-mark-where = { $mark }: { $panels }.
sheet-not-read = The thickness of the paint was not read, so nothing is polished off.
sheet-read =
    { $count ->
        [one] The thickness of the paint was read once on { $on } of { $all } painted panels. What may be polished off follows from the thinnest that is to be expected there.
       *[other] The thickness of the paint was read { $count } times on { $on } of { $all } painted panels. What may be polished off follows from the thinnest that is to be expected there.
    }
sheet-read-on =
    { $count ->
        [one] The thickness of the paint was read once on { $on } of { $all } painted panels ({ $date }). What may be polished off follows from the thinnest that is to be expected there.
       *[other] The thickness of the paint was read { $count } times on { $on } of { $all } painted panels ({ $date }). What may be polished off follows from the thinnest that is to be expected there.
    }
sheet-blind = Our gauge can't read these, because of what lies under their paint: { $panels }.
sheet-painted-before = Painted again at some time before: { $panels }.
sheet-consent = I have read this sheet and agree to the work described here. I know that polishing takes off a little of the clear coat for good.
sheet-received = I have looked at the vehicle and received this sheet.
sheet-coating-does = A coating makes washing easier and keeps gloss longer. It doesn't stop stone chips, dents or scratches from keys and brushes, and it still wants washing.
sheet-handed-over = Handed over
sheet-your-consent = Your consent
sheet-title-picture-polish = How hard each panel is polished
sheet-title-picture-found = What was found, and where
sheet-title-done = Your vehicle: what was done
sheet-title = Your vehicle: what we found and what we will do
sheet-vehicle = Vehicle
sheet-plate = Number plate
sheet-for = For
sheet-shop = Work by
sheet-asked = You asked for
sheet-date = Date
sheet-found = What we found
sheet-was-done = What was done
sheet-will-be-done = What will be done
sheet-please-mind = Please mind
sheet-short-gloss = gloss
sheet-short-once = once
sheet-short-several = several steps
sheet-short-sanded = wet sanded
sheet-left = Left as it is
sheet-gently = Polished gently for gloss
sheet-once = Polished once
sheet-several = Polished in several steps
sheet-sanded = Wet sanded, then polished
sheet-work = Work
sheet-panels = Panels
sheet-cost-polishing = Cost of polishing
sheet-amount = Amount
sheet-costs = Costs
sheet-when = When
sheet-what = What
sheet-look-after = Looking after it
sheet-counted = Counted from the moment when the last panel is finished.
sheet-name = Name
sheet-signature = Signature
sheet-coated = Coated
sheet-coated-layers = Coated in { $count } layers
sheet-all-panels = All panels
sheet-all-but = All but: { $panels }
sheet-supplies = Pads, polish and towels
sheet-together = Together
sheet-counted-from = Counted from { $moment }, when the last panel is finished. If it gets later, all of it moves.
sheet-until-hard = Until it is fully hard: no strong cleaners, no washing brushes, and dry water off before it dries by itself.
sheet-polishing-cannot = Polishing can't fill chips, can't bring back paint that is gone, and can't make failing paint sound.
sheet-gauge-reads-all = Our gauge reads all layers above the metal together. How much of that is clear coat we assume, with care; we don't measure it.
sheet-wipers = Coated glass: try the wipers before you drive; if they judder, tell us.
sheet-rules-first = Local rules and the maker's sheet for the coating come before anything said here.
sheet-stays = What stays, and why
sheet-mark = Mark
sheet-where = Where
sheet-why = Why
sheet-why-missing = Paint is missing; only touching up or new paint helps.
sheet-why-broken = The paint itself is broken; only new paint helps.
sheet-why-proud = It stands proud; it can be levelled by hand if you ask.
sheet-why-thin = Not polished: too little paint to be sure of, or none was read.
sheet-why-deep = Deeper than is safe to polish out; painting would help.
sheet-why-fades = It gets fainter; the rest would cost too much clear coat.
sheet-from-moment = From { $moment }
sheet-after-work = { $span } after the work
sheet-days =
    { $count ->
        [one] 1 day
       *[other] { $count } days
    }
sheet-hours =
    { $count ->
        [one] 1 hour
       *[other] { $count } hours
    }
sheet-minutes =
    { $count ->
        [one] 1 minute
       *[other] { $count } minutes
    }
sheet-crew-cards = Crew cards
sheet-nothing-planned = Nothing is planned for this person.
sheet-polishing = Polishing
sheet-coating = Coating
sheet-times-guide = Times are a guide, in minutes and seconds from the start. The window counts, not the clock.
sheet-watch-for = Watch for
sheet-product = Product
sheet-level = Level
sheet-stop-air = Stop
sheet-mind = Mind
sheet-number = No.
sheet-from = From
sheet-steps = Steps
sheet-does = { $person } { $does }
sheet-coating-of = Coating: { $person }
sheet-window = { $from } to { $to } after applying
sheet-quantity = Amount
sheet-in-all = { $amount } in all
sheet-apply-panel = Apply: { $panel }
sheet-level-panel = Level: { $panel }
sheet-panel-layer = { $panel }, layer { $layer }
sheet-stop = Stop
sheet-step-local = { $step }, at one place only
sheet-step-passes =
    { $count ->
        [one] { $step }, 1 pass
       *[other] { $step }, { $count } passes
    }
sheet-list-unwritten = the list could not be written: { $why }
sheet-foot = { $title }. Job code { $code }.
sheet-page = Page { $number } of { $count }
sheet-code = Job code { $code }
sheet-picture-film = Film thickness
sheet-picture-defects = What was found
sheet-picture-polish = What will be polished
sheet-picture-order = Order of coating
sheet-picture-body = The vehicle
sheet-where-read = Where it was read
sheet-where-works = Where { $person } works, in which order
sheet-where-polishes = Where { $person } polishes, in which order
sheet-unfolded = { $title }: the vehicle unfolded flat, front at the left.
sheet-marks =
    { $count ->
        [one] 1 mark
       *[other] { $count } marks
    }
sheet-no-pdf = the PDF could not be made: { $why }
sheet-no-font = the font can't be read
sheet-no-paper = the paper has no size
sheet-no-picture = a picture of { $width } by { $height } pixels can't be made
sheet-both-sides = { $panel } (both sides)
sheet-left-side = { $panel } left
sheet-right-side = { $panel } right
sheet-first-to-last = { $first } to { $last }
sheet-lacks = under "{ $place }", in "{ $text }": { $characters }
sheet-air = Air
sheet-coldest = Coldest surface
sheet-warmest = Warmest surface
sheet-dew-point = Dew point
sheet-verdict = Verdict
sheet-to-mind = To mind
sheet-layers = Layers
sheet-window-here = Window here
sheet-window-label = Window on the label
sheet-window-patch = Window tried on a patch
sheet-next-layer = Next layer
sheet-high-spots = High spots
sheet-makers-cautions = Maker's cautions
sheet-care-times = Care times
sheet-order-coating = Order of coating
sheet-to = To
sheet-who = Who
sheet-layer = Layer
sheet-air-now = { $temperature }, { $humidity } humidity
sheet-dew-margin = { $dew }; the surface is { $margin } above it
sheet-air-right = right for coating
sheet-bottles =
    { $count ->
        [one] { $amount } in all, 1 bottle of { $each }
       *[other] { $amount } in all, { $count } bottles of { $each }
    }
sheet-level-window = level { $from } to { $to } after applying
sheet-window-at = { $from } to { $to } at { $temperature } and { $humidity } humidity
sheet-after-time = after { $time }
sheet-saved-for = can be saved for { $time }
sheet-window-tried = { $from } to { $to } at { $air } air, { $humidity } humidity, { $surface } surface; it counts instead of the label
sheet-record = Technical record
sheet-job = Job
sheet-job-code = Job code
sheet-template = Vehicle template
sheet-history = History
sheet-customer = Customer
sheet-wishes = Wishes
sheet-goal = Goal
sheet-crew = Crew
sheet-gauge-surveys = Gauge and surveys
sheet-gauge = Gauge
sheet-lower-bounds = Lower bounds
sheet-survey = Survey
sheet-by = By
sheet-gauge-checks = Checks of the gauge
sheet-member = { $person } ({ $does }; { $experience })
sheet-goal-gloss = Gloss only
sheet-goal-share = { $share } of the defects gone
sheet-gauge-facts = { $principle }; accuracy ±({ $fixed } + { $share }), display steps of { $step }
sheet-bounds = hold for { $coverage } of a panel with { $confidence } confidence
sheet-shim = shim of { $film }
sheet-bare-plate = bare plate
sheet-check-passed = after reading { $reading }: { $on } shown as { $shown }, passed
sheet-check-failed = after reading { $reading }: { $on } shown as { $shown }, failed
sheet-film-may-go = Film and what may go
sheet-film-small = µm. Mean and lower bound of the readings before polishing, number of readings, the clear coat that is assumed, the budget and what decides it.
sheet-readings = Readings
sheet-defects = Defects
sheet-gloss = Gloss
sheet-visits = Earlier visits
sheet-facts-notes = Facts and notes of panels
sheet-suggest = What the readings suggest
sheet-mean = Mean
sheet-at-least = At least
sheet-clear = Clear
sheet-budget = Budget
sheet-decided = Decided by
sheet-place-readings = Place on the map, mm: readings, µm
sheet-defect = Defect
sheet-place = Place, mm
sheet-size = Size
sheet-count = Number
sheet-depth = Depth
sheet-note = Note
sheet-angle = Angle
sheet-visit = Visit
sheet-went = Went
sheet-at-most = At most
sheet-known-from = Known from
sheet-noted = What is noted
sheet-to-do = What to do
sheet-over-vehicle = Over the vehicle: { $removal }
sheet-edge = { $spot }; edge
sheet-depth-range = { $low } to { $high }
sheet-pictures =
    { $count ->
        [one] 1 picture
       *[other] { $count } pictures
    }
sheet-uncoated = left uncoated
sheet-finish = finish: { $finish }
sheet-paint = paint: { $history }
sheet-painted-on = painted on { $day }
sheet-on-before = on it before: { $coating }
sheet-held = held at { $level } at most
sheet-made-of = made of { $substrate }
sheet-history-unknown = not known
sheet-history-original = never polished
sheet-history-again = painted again
sheet-history-fresh =
    { $count ->
        [one] painted again 1 day before
       *[other] painted again { $count } days before
    }
sheet-history-polished = polished before, { $film } in all
sheet-finish-clear-coat = clear coat
sheet-finish-single-stage = single stage
sheet-finish-matte = matte
sheet-finish-film-covered = film covered
sheet-finish-wrapped = wrapped
sheet-finish-bare = bare
sheet-finish-glass = glass
sheet-finish-lens = lens
sheet-test-spots = Test spots
sheet-order-polishing = Order of polishing
sheet-hands-ears = Hands and ears
sheet-used-up = Used up in polishing
sheet-polish-level = Level
sheet-takes-off = Takes off, µm
sheet-time = Time
sheet-step = Step
sheet-passes = Passes
sheet-took-off = Took off
sheet-what-went = What went
sheet-day = Day
sheet-vibration = Vibration A(8), m/s²
sheet-points = Points
sheet-noise = Noise LEX,8h, dB(A)
sheet-standing = Standing
sheet-area = Area
sheet-pads = Pads
sheet-sheets = Sheets
sheet-polish = Polish
sheet-towels = Towels
sheet-local-step = at one place: { $step }, { $passes } ×
sheet-give-or-take = { $film }, give or take { $give }
sheet-share-of = { $share } of the { $defect }
sheet-map-front = Front
sheet-map-left = Left side
sheet-map-right = Right side
