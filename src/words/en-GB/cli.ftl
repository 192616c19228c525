cli-report = report this as a fault of the program
cli-no-thread = cannot start a thread: { $why }
cli-no-thread-do = close other programs and try again
cli-planner-stopped = the planner stopped unexpectedly
cli-planner-stopped-do = try another --seed, and report this as a fault of the program
cli-crew-no-plan = no plan was found in { $seconds } s; a lower bound of the cost is { $bound }
cli-mend-place = mend the place named
cli-lists-more = { $first }; lapwright check lists { $count } more
cli-not-usable = { $name }: not a usable problem
cli-check-file = check the file
cli-check-nothing = { $name }: nothing to complain about
cli-check-findings =
    { $count ->
        [one] { $name }: 1 finding
       *[other] { $name }: { $count } findings
    }
cli-check-suggest =
    { $count ->
        [one] { $name }: its readings suggest 1 thing about the paint
       *[other] { $name }: its readings suggest { $count } things about the paint
    }
cli-mend-or-other = mend the file, or choose another one
cli-import-no-panel = the vehicle has no panel “{ $panel }”
cli-import-no-rows = it has no rows
cli-import-line = line { $line }: { $reason }
cli-import-none = { $name }: none of its { $count } rows can be taken ({ $why })
cli-import-none-do = nothing was written; mend the rows, panels are named as `lapwright plan` lists them
cli-nothing-written = nothing was written
cli-import-not-taken = { $name }:{ $line }: not taken: { $reason }
cli-import-summary = { $taken } added, { $count } not taken
cli-readings =
    { $count ->
        [one] 1 reading
       *[other] { $count } readings
    }
cli-costs-customer = --costs is for the customer sheet
cli-costs-do = leave --costs out
cli-no-day = the job has no day, so there is nothing to count the care times from
cli-no-day-do = enter the day of the work in Job, or as `date` in the file
cli-no-order = no valid order: { $why }
cli-no-order-polishing = no valid order of polishing: { $why }
cli-sheet-ending = "{ $file }" has no ending that this sheet can be written as
cli-ending-customer = let the name end in .pdf or .html, or .ics for the care times
cli-ending-crew = let the name end in .pdf or .html, or .csv for the order as a list
cli-ending-record = let the name end in .pdf or .html
cli-font-lacks = the font of the sheets lacks some characters: { $places }
cli-font-lacks-do = write these texts in Latin, Greek or Cyrillic letters, or write the sheet as .html
cli-map-ending = "{ $file }" has no ending that a map can be written as
cli-map-ending-do = let the name end in .svg or .png
cli-exists = "{ $file }" exists already
cli-exists-do = choose another name, so that nothing is overwritten
cli-codes = the codes are { $codes }
cli-no-output = cannot write the output: { $why }
cli-no-output-do = check where the output goes
cli-see-help = lapwright --help shows the commands and their options
cli-the-sample = the sample
cli-plan-head-polishing = Polishing
cli-plan-column-panel = panel
cli-plan-column-film = film at least
cli-plan-column-may-lose = may lose
cli-plan-column-level = level
cli-plan-column-will-lose = will lose
cli-plan-not-read = not read
cli-plan-will-lose = { $mean } µm, at most { $most } µm
cli-plan-head-open = Open points
cli-plan-head-coating = Coating
cli-plan-air-right = The air is right.
cli-plan-air-stop = Stop: do not coat in this air.
cli-plan-air = Dew point { $dew } °C, surface { $margin } K above it; level { $from } to { $to } after applying; { $ml } ml.
cli-plan-order-takes = The order takes { $time }; proven: none takes less than { $share } % of its cost.
cli-plan-all-uncoated = Every panel is left uncoated.
cli-plan-head-cautions = Cautions
cli-plan-gauge = Gauge
cli-plan-head-suggest = What the readings suggest (borders are trade practice)
cli-plan-head-polishing-order = Order of polishing
cli-plan-day = Day { $day }
cli-plan-at-one-place = { $step }, at one place
cli-plan-head-exposure = Hands and ears (declared values plus their uncertainty; local rules and the makers' sheets come first)
cli-plan-no-machine = no machine
cli-plan-exposure = { $worker } vibration A(8) { $vibration } m/s², { $points } points ({ $standing }); noise { $noise } ({ $noise_standing })
cli-plan-day-exposure = day { $day } { $exposure }
cli-plan-spread = In one day somebody would pass an action value, so the work is spread over { $days } days.
cli-plan-handed = { $panel } goes to { $worker }, so that nobody passes an action value.
cli-plan-head-materials = Materials
cli-plan-sheets =
    { $count ->
        [one] 1 sheet
       *[other] { $count } sheets
    }
cli-plan-pads =
    { $count ->
        [one] 1 pad
       *[other] { $count } pads
    }
cli-plan-towels =
    { $count ->
        [one] 1 towel
       *[other] { $count } towels
    }
cli-plan-polishing-takes =
    { $people ->
        [one] { $time } for { $people } person; proven: none takes less than { $share } % of its cost.
       *[other] { $time } for { $people } people; proven: none takes less than { $share } % of its cost.
    }
cli-help = Plan a light paint correction and the coating of a vehicle by two people
cli-help-job = The job to open in the window; without one, the sample. Where there is no display, its plan is printed instead
cli-help-sample = Write the sample job as a file to start from
cli-help-plan = Print the polish plan and the order of coating
cli-help-check = Check jobs, vehicle templates and crew problems; lists all findings
cli-help-crew = Solve a crew problem; prints a line per improvement on stderr: seconds, cost, bound
cli-help-import = Add readings from a CSV file to a job; lists every row that is not taken
cli-help-sheet = Write the sheet for the customer, the cards of the crew, or the technical record
cli-help-map = Write the map of the vehicle as a picture
cli-help-explain = Explain a finding: what it means and what to do
cli-help-sample-out = The file to write; it must not exist yet
cli-help-job-or-sample = The job; without one, the sample
cli-help-json = Print one JSON object instead of text
cli-help-plan-seconds = How long to look for a better order
cli-help-plan-seed = Seed of the search; the same seed looks in the same places
cli-help-files = The files
cli-help-problem = The problem, format crew-problem/1
cli-help-crew-seconds = How long to search
cli-help-threads = How many threads search
cli-help-crew-seed = Seed of the search
cli-help-crew-plan = Write the plan here instead of printing it
cli-help-the-job = The job
cli-help-readings = The readings: a header row with panel, reading, and thickness_um or thickness_mil
cli-help-import-out = The file to write the job to; it may be the same
cli-help-which = Which one
cli-help-sheet-out = The file to write: .pdf or .html; for the crew also .csv, for the customer also .ics with the care times
cli-help-paper = Size of the paper
cli-help-locale = British or American dates and names of panels
cli-help-costs = Say on the customer sheet what the polishing costs at the shop's prices
cli-help-done = When the last panel will be level on the day of the job; care times count from then
cli-help-customer = For the customer: what was found, what will be done, how to look after it
cli-help-crew-card = A card for everybody in the crew, with their own order
cli-help-record = All that a later visit needs
cli-help-a4 = 210 × 297 mm
cli-help-letter = 8.5 × 11 in
cli-help-uk = Thu 26 November 2026; bonnet, wing, boot
cli-help-us = Thu, November 26, 2026; hood, fender, trunk
cli-help-show = What it shows
cli-help-map-out = The file to write: .svg or .png
cli-help-film = Film thickness
cli-help-defects = What is wrong, where
cli-help-polish = How hard each panel will be worked
cli-help-order = Who coats what, in which order
cli-help-code = The code of a finding, for example template-gap
cli-bad-seconds = give a number of seconds from 0 to 86400
cli-bad-time = give a time of day as hours and minutes, for example 17:00
cli-help-language = Language of what is printed and of sheets; without it, that of the system
cli-bad-language = give one of { $tags }
cli-job-before-command = "{ $job }" stands before the command; name the job behind it
