survey-before-after = Before and after
survey-few-pairs = Fewer than two spots were read both before and after, so the change is not known.
survey-counts-visit = Counts for this visit
survey-one-pair = One panel was read before and after; with two or more, a mean over the vehicle can be given.
survey-at-most = { $film } at most
survey-taken-measured = Taken as measured. The readings have to be taken with the same gauge.
survey-taken-planned = Taken as planned, since the readings don't show it. The readings have to be taken with the same gauge.
survey-thinner = Over { $count } panels the film is { $mean } µm thinner on average, with 95 % confidence between { $low } and { $high } µm.
survey-more-panels = { $change } That does not show a removal; about { $count } panels would.
survey-not-measurable = { $change } A removal this small is not measurable with this gauge: it would take more than { $most } panels.
survey-back-to-panel = Back to the panel
survey-depth = Depth
survey-note = Note
survey-anything-else = Anything else
survey-pictures = Pictures
survey-add-picture = Add picture…
survey-add-picture-hint = Or drop it on the window; a copy is kept beside the job, without place and time
survey-taking-in = Taking in the picture…
survey-remove-defect = Remove this defect
survey-kind = Kind
survey-how-many = How many
survey-size-across = Size across
survey-length = Length
survey-nail-not-tried = not tried
survey-nail-catches = catches
survey-nail-slides = slides over
survey-fingernail = Fingernail
survey-least = Least
survey-most = Most
survey-use-it = Use it
survey-picture-gone = The picture is not in the folder beside the job.
survey-remove = Remove
survey-class-visible = just visible
survey-class-small = smaller than 0.5 mm
survey-class-middle = 0.5 to 5 mm
survey-class-large = larger than 5 mm
survey-drawn-point = A point on the map. Size class { $number }, { $class } (after ISO 4628-1).
survey-drawn-line = A line on the map. Size class { $number }, { $class } (after ISO 4628-1).
survey-drawn-area = An area on the map. Size class { $number }, { $class } (after ISO 4628-1).
survey-usual-depth = Usual for this kind: { $low } to { $high }
survey-our-estimate = { $what } (our estimate).
survey-picture = Picture { $number }
survey-remove-picture = Remove picture { $number }
survey-open-defect = Open this defect
survey-new-defect = New defect
survey-draw = Draw on the map (D)
survey-escape = Escape
survey-click-where = Click on the map where it is.
survey-drag-line = Drag on the map from one end to the other.
survey-drag-area = Drag on the map round it.
survey-letter-kind = A letter takes the next kind that begins with it.
survey-quantity-none = none
survey-quantity-very-few = very few
survey-quantity-few = few
survey-quantity-moderate = moderate
survey-quantity-considerable = considerable
survey-quantity-dense = dense
survey-in-short = { $quantity }, { $size }
survey-in-short-long = { $quantity }, { $size } long
survey-with-pictures =
    { $count ->
        [one] { $defect }, 1 picture
       *[other] { $defect }, { $count } pictures
    }
survey-at-least = at least { $film }
survey-mean = mean { $film }
survey-plot =
    { $count ->
        [one] 1 reading from { $low } to { $high } µm, mean { $mean } µm, at least { $least } µm
       *[other] { $count } readings from { $low } to { $high } µm, mean { $mean } µm, at least { $least } µm
    }
survey-skip-hint = Leave this spot for later
survey-repeat-hint = Measure this spot again; where it has no reading yet, the one before
survey-skipped-hint = Back to the first spot that was skipped
survey-panel-read = This panel has its readings.
survey-all-read = Every panel that the gauge can read has its readings.
survey-all-or-skipped = Every spot is read or skipped.
survey-keypad = Keypad
survey-keypad-hint = Large keys on the screen, for gloves
survey-unit-hint = What the gauge shows; the job keeps micrometres
survey-readings = Readings
survey-doubtful = Those with ? were taken with a gauge that then failed its check; they don't count.
survey-edge = edge
survey-edge-hint = Taken on an edge or a body line
survey-remove-reading = Remove this reading
survey-skip = Skip (S)
survey-repeat = Repeat (R)
survey-skipped = { $count } skipped (B)
survey-spot-of = Spot { $number } of { $all }
survey-spots-read = { $count } of { $all } spots read
survey-field = Spot { $number } of { $all }, reading { $reading } of { $of }, in { $unit }
survey-reading-of = reading { $reading } of { $of }, Enter
survey-spot-none = This spot has no reading yet
survey-spot-so-far = This spot so far { $values }
survey-spot = Spot { $number }
survey-not-read = Not read yet.
survey-three-mean = mean
survey-three-least = at least
survey-three-may-go = may go
survey-not-read-why = Not read: { $why }.
survey-read-undecided = Read as { $film } on average, but nothing is decided by it.
survey-gauge = Gauge
survey-principle = Principle
survey-accuracy-fixed = Accuracy, fixed part ±
survey-accuracy-share = and of the reading ±
survey-smallest-step = Smallest step shown
survey-gauges-read = These gauges read everything above the metal. The clear coat is assumed from it, as a range.
survey-check-of-gauge = Check of the gauge
survey-certified = Certified, 0 for the bare plate
survey-gauge-shows = Gauge shows
survey-note-check = Note check
survey-remove-check = Take a check away that was noted by mistake
survey-gauge-doubtful =
    { $count ->
        [one] 1 reading doesn't count, because the gauge failed. It stays where it is; read that spot again.
       *[other] { $count } readings don't count, because the gauge failed. They stay where they are; read those spots again.
    }
survey-gauge-unchecked = Not checked yet. Check on the bare plate and a shim before the first reading and after the last.
survey-gauge-failed = The gauge failed. Check it again on the same shim before the next reading.
survey-gauge-passed-last = Passed, also after the last reading.
survey-gauge-passed = Passed so far. Check again after the last reading.
survey-check-before = before the first reading
survey-check-after = after reading { $number }
survey-bare-plate = bare plate
survey-check-good = { $on } shown as { $shown }: good
survey-check-fails = { $on } shown as { $shown }: fails
survey-check-allowed = { $when }, ±{ $allowed } allowed
survey-gloss = Gloss
survey-angle = Angle
survey-gloss-reading = Gloss reading
survey-gloss-at = { $gloss } at { $angle }°, { $stage }
survey-gloss-compare = Compare on one panel, at one spot, in one direction. 100 is a polished glass, not perfect paint: a perfect clear coat shows about 82 to 90 at 20°.
survey-visits = Earlier visits
survey-visits-left = Visits left at the cap for one
survey-add-to-panel = Add to this panel
survey-visits-none = None noted. Clear coat that went does not come back, so what earlier visits took counts.
survey-add-visit = Add an earlier visit
survey-add-to-all = Add to every painted panel
survey-next-visit-hint = A new job of the same vehicle; what this visit takes stands in its ledger
survey-next-visit = Next visit of this vehicle
survey-visit-name = Day or name of the visit
survey-probably-went = Probably went
survey-at-most-went = At most went
survey-known-from = Known from
survey-visits-most = Earlier visits, at most { $film } in all
survey-visit = { $went }, at most { $most }, { $source }
survey-most-film = at most { $film }
survey-visit-panels =
    { $count ->
        [one] on 1 panel, { $source }
       *[other] on { $count } panels, { $source }
    }
survey-defects = Defects
survey-paint = Paint
survey-survey = Survey
survey-how-to = Type a reading and press Enter. The next spot lights up by itself, once round the vehicle; or choose a panel on the map.
survey-pad-back = Back
survey-pad-back-name = Digit or reading back
survey-pad-skip = Skip
survey-pad-skip-name = Skip this spot
survey-pad-again = Again
survey-pad-again-name = Measure this spot again
survey-pad-sign = Decimal sign
survey-pad-take = Take the reading
survey-on-it = On it already
survey-hardness = Hardness
survey-is-coated = is coated
survey-finish = Finish
survey-history = History
survey-painted-on = Painted on
survey-taken-before = Taken before
survey-day-of-work = Day of the work
survey-is-today = It is today
survey-under-paint = Under the paint
survey-finish-clear = clear coat
survey-finish-single = single-stage
survey-finish-matte = matte
survey-finish-film = under protective film
survey-finish-wrapped = wrapped
survey-history-unknown = not known
survey-history-factory = factory paint
survey-history-again = painted again
survey-history-fresh = freshly painted
survey-history-polished = polished before
survey-hardness-usual = usual or not known
survey-hardness-soft = soft, marks easily
survey-hardness-hard = hard, slow to correct
survey-give-days = Give both days, so that its age is known; until then it counts as quite fresh.
survey-as-usual-of = as usual: { $substrate }
survey-as-usual = as usual
survey-differ = they differ
survey-days-old =
    { $count ->
        [one] 1 day old; it counts as fresh for { $limit } days.
       *[other] { $count } days old; it counts as fresh for { $limit } days.
    }
survey-go-hint = Go to this panel
survey-borders-practice = Borders between thin, usual, refinished and filled are trade practice: they point, they prove nothing.
survey-open-points = Open points ({ $count })
survey-go-to = Go to { $panel }
survey-place-cause = { $place }, { $cause }
survey-how-sure = How sure
survey-share-of-panel = Share of the panel
survey-sure-of-that = Sure of that
survey-borders = Borders of the film, trade practice
survey-to-defaults = Back to the defaults
survey-border-no-cut = Too thin to cut, below
survey-border-finest = Finest polish only, below
survey-border-thin = Thin, below
survey-border-refinished = Refinished, above
survey-border-several = Several times, above
survey-border-filler = Filler, above
survey-border-uneven = Uneven, spots differ by
survey-border-mirror = Mirror panel differs by
survey-at-least-means = “At least” means: { $meaning }. Few spots make it a cautious number.
survey-borders-source = 70 to 200 µm are repeated on trade pages without a measurement behind them, 300 and 1000 µm are common practice; the two differences are our estimate. What the vehicle's maker says comes first.
survey-same-on-each = The same defect on each
survey-add-many = add defect to panels
survey-paint-each = Paint of each
survey-chosen = { $count } panels chosen
survey-add-to = Add to { $count } panels
survey-details = Details
survey-struck = Struck-through readings don't count: the gauge failed its check after them.
survey-thin-thick = Thinnest to thickest spot
survey-range = Range
survey-sd = Standard deviation
survey-uncertainty = Standard uncertainty
survey-dof = Effective degrees of freedom
survey-uncertainty-of = Standard uncertainty of the mean, with gauge, display and the spread between spots combined (JCGM 100).
survey-basis-bound = It comes from the spread of the spots; more spots bring it closer to the mean.
survey-basis-assumed = With fewer than three spots a spread is assumed; read more spots to know it.
survey-basis-one = It holds at this place only.
survey-show-large = Show it large on the map
survey-at-spots =
    { $spots ->
        [one] { $count } at 1 spot
       *[other] { $count } at { $spots } spots
    }
survey-from-to = { $low } to { $high } µm
survey-very-many = very many
survey-at-least-basis = At least { $film }: { $sure }. { $basis }
survey-spot-edge = Spot { $number }, edge
survey-spot-spread = mean { $mean }, spread { $sd }, uncertainty { $uncertainty }
survey-spot-figures = mean { $mean }, uncertainty { $uncertainty }
survey-spot-again = Spot { $number } again
survey-go-to-spot = Go to spot { $number }
survey-day-of-survey = Day of the survey
survey-held-by = Gauge held by
survey-drop = Drop this survey
survey-measure-after = Measure again after polishing
survey-measure-after-hint = At the same spots, with the same gauge
survey-anew-hint = The latest readings of a panel count; the earlier ones stay in the job
survey-anew = Read the vehicle anew
survey-number-stage = Survey { $number }, { $stage }
survey-number = Survey { $number }
survey-reading-count =
    { $count ->
        [one] 1 reading
       *[other] { $count } readings
    }
survey-cannot-read = this panel can't be read with this gauge
survey-wants-no-more = this panel wants no more readings; choose another, or press R to read its last spot again
survey-every-read = every spot is read or skipped
survey-not-taken = Not taken: { $why }.
survey-measure-again = Measure this spot again.
survey-hardly-paint = { $film } was taken. That is hardly any paint: does the gauge show { $unit }?
survey-more-than-filler = { $film } was taken. That is more than filler: does the gauge show { $unit }?
survey-photo-no-defect = a picture belongs to a defect, and none is open
survey-photo-no-defect-do = open a defect of a panel in the survey, then add the picture
survey-photo-again = try again
survey-photo-other = choose another picture; JPEG and PNG can be read
survey-photo-defect-gone = the defect of the picture is gone
survey-photo-defect-gone-do = add the picture to another one
survey-photo-unopened = the picture can't be opened: { $why }
survey-import-changed = the vehicle is being changed
survey-import-changed-do = save or drop its changes first
survey-import-one-step = One step, which undo takes back.
survey-import-none = No row can be taken.
survey-import-panel = Panel
survey-import-readings = Readings
survey-import-mean = Mean
survey-import-no-panel = No panel of this vehicle is called
survey-import-left-out = is left out
survey-import-from-file = Readings from a file…
survey-import-from-file-hint = A CSV file with the columns panel, reading, and thickness_um or thickness_mil
survey-pasted = what was pasted
survey-import-from = Readings from { $file }
survey-import-read-as = Recognised: { $what }.
survey-import-add =
    { $count ->
        [one] Add 1 reading
       *[other] Add { $count } readings
    }
survey-import-to =
    { $count ->
        [one] Will be added to 1 panel
       *[other] Will be added to { $count } panels
    }
survey-import-name-rows =
    { $count ->
        [one] “{ $name }”, 1 row
       *[other] “{ $name }”, { $count } rows
    }
survey-import-is = is { $panel }
survey-import-not-taken =
    { $count ->
        [one] Not taken: 1 row
       *[other] Not taken: { $count } rows
    }
survey-import-line = Line { $line }: { $why }.
survey-import-more = and { $count } more
