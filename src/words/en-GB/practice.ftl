# The list of exercises.
practice-practice = Practice
practice-exercises = Exercises
practice-name-first = Enter a name above first; results are kept under it.
practice-on-what = On what
practice-lay-for = You lay for
# $person is a name.
practice-practises = { $person } practises.
practice-somebody-else = Somebody else
practice-who-practises = Lay the order of coating, watch it played, and see what a good order does. Who practises?
practice-new-name = A new name, then Enter
# How somebody has done so far: $best is whole per cent.
practice-best-so-far =
    { $count ->
        [one] { $best } %, once
       *[other] best { $best } %, { $count } times
    }
practice-of-the-job = that of the job
practice-vehicle = Vehicle
practice-other-air = In other air than the exercise says
practice-air-and-panels = Air and panels
practice-humidity = Humidity
# $from and $to are times on a stopwatch.
practice-level-from-to = Level after { $from } to { $to }.
# Exercises, as they stand on a button, and what each is about.
practice-one-side = One side
practice-alone = Whole vehicle alone
practice-partner = With a partner
practice-humid-day = Humid day
practice-surprise = A surprise
practice-next-panel = Which panel next
practice-how-hard = How hard to polish
practice-about-one-side = You apply and level the panels of one side by yourself.
practice-about-alone = You apply and level every panel by yourself.
practice-about-partner = One applies, the other levels, and neither gets in the other's way.
practice-about-humid-day = Warm, humid air: the film has to be levelled much sooner.
practice-about-surprise = Half is done, then one of you leaves for four minutes. Lay the rest.
practice-about-next-panel = Five quick questions from the middle of a day: where to go now?
practice-about-how-hard = Five panels with readings and defects: how hard may each be worked?
# For whom the order is laid.
practice-both = both of you
practice-who-applies = who applies
practice-who-levels = who levels
practice-all-exercises = All exercises
practice-working-out = The planner works out the best answer first…
practice-five-more = Five more
practice-kept-for = Kept for { $person }.
practice-hint = Hint
practice-hint-promise = A hint is a reason, never the answer, and costs nothing.
practice-go-on = Go on
# Laying an order.
practice-level-after = Level after
practice-from-to = { $from } to { $to }
practice-laid = Laid
practice-steps-of = { $done } of { $all } steps
practice-take-back = Take back
# The key on a keyboard.
practice-key-backspace = Backspace
practice-next-step = Next step
practice-check-order = Check this order
practice-first-check-counts = Once everything is laid, you can check it. The first check counts.
practice-show-best = Show the best order
practice-no-score-after = After that this exercise has no score.
practice-how-applies = Click panels in the order in which { $person } applies. How your partner levels is laid below.
practice-how-levels = Click panels in the order in which { $person } levels. How your partner applies is laid below.
practice-how-alone = Click a panel to apply it; click it again to level it. Arrow keys and Enter do the same.
# $first and $second are names of people.
practice-how-both = Click a panel and { $first } applies it; click it again and { $second } levels it. Arrow keys and Enter do the same.
practice-begins-at-once = It begins as soon as it can.
practice-waits-first = It waits for { $seconds } s first.
practice-wait = Wait { $seconds } s
practice-no-wait = No wait
practice-wait-for-other = Wait for the other
practice-laid-so-far = Laid so far
practice-step-apply = apply { $panel }
practice-step-level = level { $panel }
practice-watch-best = This is the best order the planner found. Watch where each of you goes, and where one of you waits.
practice-takes = Takes
practice-walking-all = Walking, all together
practice-better-at-most = Could be better by at most
practice-seen-best = Having seen it, this exercise has no score any more; begin a new one for that.
practice-back-to-mine = Back to my order
# What was laid against the clock. $time, $now and $end are times on a stopwatch.
practice-lanes = Order laid so far, { $count } steps, { $time }
practice-lane-apply = { $person } applies { $panel }
practice-lane-level = { $person } levels { $panel }
practice-stop = Stop
practice-play = Play
practice-speed = { $speed } seconds of the day in one second
practice-moment-of = { $now } of { $end }
practice-planners-order = The planner's order
practice-away = away
# After the check. $mine and $best are durations with their unit, $percent whole per cent.
practice-of-best = { $percent } % of the best
practice-against-best = { $mine }, the best { $best }
practice-walking = Walking
practice-broken-rules = Broken rules
practice-none-broken = none
# $time is a duration with its unit.
practice-broken-cost = { $count }, as { $time } more
practice-again = Again
practice-change-it = Change it
practice-change-it-means = Go on with what was laid; only the first check counts
practice-no-rule-broken = No rule broken
practice-all-good = Nobody leant, bumped or came too late.
practice-went-wrong = What went wrong
practice-long-walks = Long walks, { $count }
practice-long-walks-rule = Every walk across the bay is time in which windows run: finish what is in reach before changing the side.
practice-score-comes-about = How the score comes about
# $prices is a list of the five after it, $most a duration with its unit.
practice-score-rule = The time of the best order, walking counted a little, against yours. Being quicker than the best counts as the best. Each broken rule counts as more time: { $prices }; and as long as it lasted, up to { $most } more. These are our estimates of what it costs to put right. Hints cost nothing.
practice-price-lean = leaning over a wet panel { $time }
practice-price-top-last = top before bottom { $time }
practice-price-place = in each other's place { $time }
practice-price-window = window passed { $time }
practice-price-other = not possible { $time }
practice-broken-count =
    { $count ->
        [one] 1 broken rule
       *[other] { $count } broken rules
    }
# Kinds of broken rules, and each rule with its reason.
practice-lean = Leaning over a wet panel
practice-top-last = Top before bottom
practice-place = In each other's place
practice-window = Window passed
practice-other = Not possible
practice-lean-rule = Leaning over a fresh film smears it: reach over a panel before it is applied or after it is level.
practice-top-last-rule = Work from the top down: what you lean over to reach comes after what you reach, or sleeves go through it.
practice-place-rule = Two people at one place bump, and cords and towels touch wet paint: keep an arm's length and a half apart.
practice-window-rule = After its window a film has set: it drags, leaves high spots, and has to be polished off and done again.
practice-other-rule = This can't be done as laid.
# What somebody does, as a part of a sentence; $panel is a panel as it is said aloud.
practice-does-apply = applies { $panel }
practice-does-level = levels { $panel }
practice-is-away = is away
practice-doing-apply = applying { $panel }
practice-doing-level = levelling { $panel }
practice-being-away = away
practice-the-break = the break
# What happened. $does and $other are parts such as practice-does-apply, $doing such as practice-doing-apply.
practice-leans = { $person } leans over { $wet }, which is wet, while { $doing }, for { $seconds } s.
practice-above-not-level = { $person } { $does } although { $above } above it is not levelled yet.
practice-same-place = { $person } { $does } while { $partner } { $other }: for { $seconds } s both need the same place.
practice-window-closed = { $person } { $does }, { $seconds } s after the window has closed.
practice-walks = { $person } walks for { $seconds } s from { $from } to { $to }.
# What a good order does there. $comes is one of the next two; $at and $time are times on a stopwatch.
practice-comes-first = { $person } { $does } as number { $number }, to begin with, at { $at }
practice-comes-after = { $person } { $does } as number { $number }, right after { $before }, at { $at }
practice-better = A good order: { $comes }.
practice-better-window = A good order: { $comes }, { $seconds } s after it was applied.
practice-better-meanwhile = A good order: { $comes }; { $person } { $does } at { $time }.
practice-better-then = A good order: { $comes }; { $panel } is applied at { $time }.
# Hints for $person; the last may follow any of them.
practice-hint-window-first = { $person }: look at the windows. The one that closes first does so at { $time }; think of where that panel is.
practice-hint-window-later = { $person }: the first window closes only at { $time }. A wet panel on the way there can be levelled before it.
practice-hint-level-nearest = { $person }: level what has waited its shortest time and lies nearest.
practice-hint-apply-meanwhile = { $person }: the panel that is wet has not waited long enough, or there is time. Apply another one meanwhile, as near as possible.
practice-hint-begin-top = { $person }: from the top down. Begin with something that you have to lean over others to reach.
practice-hint-begin-end = { $person }: begin at one end of the vehicle, so that the other can follow behind you.
practice-hint-no-step = { $person }: something can still be done from where you stand, without a step.
practice-hint-top-down = { $person }: from the top down. Something { $seconds } s of walking away can only be reached by leaning over others, so it comes before them.
practice-hint-nearest = { $person }: the shortest way is the right one now, { $seconds } s of walking.
practice-hint-further = { $person }: not the nearest panel this time: { $seconds } s of walking lead to more free room.
practice-hint-further-apart = { $person }: not the nearest panel this time: { $seconds } s of walking lead to more free room and out of your partner's place.
practice-hint-one-direction = { $person }: go on along the vehicle in one direction.
practice-hint-wait = Wait a moment first: begun at once, it would be in somebody's way or let a window pass.
# Why a step can't be laid, and why there is no exercise; a capital and a full stop are added.
practice-not-in-play = there is nothing to do on this panel in this exercise
practice-laid-already = everything on this panel is laid already
practice-not-applied = this panel has to be applied before it can be levelled
practice-laid-by-partner = this is laid already by your partner
practice-no-panels = this vehicle has no panels for this lesson; choose another vehicle
# $why is a sentence without a full stop.
practice-impossible = nobody could keep every window in this air; choose cooler or drier air ({ $why })
practice-no-order-found = the planner found no order in its time; try again
practice-planner-failed = The planner could not be started: { $why }.
practice-not-kept-longer = Results last only as long as this window is open.
practice-not-kept = The result was not kept: { $why }
# The people of an exercise where the crew has nobody for the work.
practice-first-person = First
practice-second-person = Partner
# The surprise. $time is a time on a stopwatch.
practice-has-left = { $person } has just left and is back at { $time }. The clock begins at that moment.
practice-window-lost = The window of { $panel } can't be met any more; here it is taken as long enough.
# On the map: how long a wet panel has.
practice-window-closes = window closes at { $time }
practice-time-left = { $time } left
# "Which panel next?"
practice-question-of = Question { $number } of { $all }
practice-into-day = { $time } into the day.
practice-comes-from = { $person } comes from { $panel }
practice-is-at = { $person } is at { $panel }
practice-are-wet = { $count } panels are wet, the first window closes in { $time }.
practice-nothing-wet = Nothing is wet.
practice-which-apply = Which panel does { $person } apply next?
practice-which-level = Which panel does { $person } level next?
practice-next-hint-level = Think of the windows first, then of the way, and stay out of your partner's place.
practice-next-hint-apply = From the top down, never over something wet, out of your partner's place, and no long way.
# $percent is whole per cent.
practice-what-is-right = Right is every panel with which the rest of the day costs at most { $percent } % more than with the best.
practice-good = Good: the day takes only about { $seconds } s longer than with the best.
practice-the-best = The best: nothing found brings both of you to the end sooner.
practice-would-lean = You would lean over { $panel }, which is wet.
practice-above-first = From the top down: { $panel } above it is not levelled yet.
practice-still-at-work = { $person } is still at work in that place.
practice-window-elsewhere = Somewhere else a window would pass meanwhile.
practice-long-way = It breaks no rule, but the day takes about { $seconds } s longer: the way is long, and somebody has to come back.
practice-long-wait = It breaks no rule, but the day takes about { $seconds } s longer: somebody has to wait or to come back later.
# "How hard to polish?" Thicknesses and depths with their unit.
practice-panel-of = Panel { $number } of { $all }
practice-mean-film = Mean film
practice-thinnest = Thinnest spot
practice-lower = At least, nearly everywhere
practice-depth = { $defect }, { $from } to { $to } deep
# $share is whole per cent.
practice-wanted = { $share } % of the defects shall go.
practice-hard-question = How hard may and must it be worked?
practice-look-thinnest = Look at the thinnest readings first: is there anything to give at all?
practice-compare-deepest = At most { $allowed } may go here. Compare that with the depth of the deepest defect, { $needed }.
practice-right = Right.
# $level is a level of polishing, such as One-step.
practice-too-gentle = Safe, but { $level } could be had. Half.
practice-much-too-gentle = Safe, but far from what could be had: { $level }.
practice-too-hard = Too hard: { $level } is enough, or all that may go.
practice-what-limits = What limits it
# Results over time.
practice-results = Results over time, { $count } so far
practice-results-of = The results of { $person } will stand here.
practice-results-here = Results over time will stand here.
practice-nobody = Nobody
practice-every-exercise = all exercises
# $exercise is an exercise or practice-every-exercise.
practice-share-of-best = { $person }, { $exercise }: share of the best possible
