# The two kinds of work, as names of days.
bay-coating = Coating
bay-polishing = Polishing
bay-coating-day = Coating day
bay-polishing-day = Polishing day
# The air while the day goes on.
bay-air-now = The air is now
bay-coldest = Coldest panel
bay-warmest = Warmest panel
bay-air = Air
bay-humidity = Humidity
# Buttons with a minus and a plus, read aloud; $what is one of the four above.
bay-less = { $what } less
bay-more-of = { $what } more
bay-windows-stay = Windows stay as they are.
# $share is whole per cent.
bay-windows-longer = Windows get { $share } % longer.
bay-windows-shorter = Windows get { $share } % shorter.
bay-so-it-is = So it is
bay-leave-it = Leave it
# What is asked of everybody.
bay-all-stop-for = Everybody stops for
bay-windows-run-on = Windows of wet panels run on. What comes first afterwards is planned for the time you say.
bay-more = More
bay-back-to-work = Back to the work
bay-last-lap-now = Last lap now
bay-enter-test-spot = Enter a test spot
bay-show-coating = Show the coating day
bay-show-polishing = Show the polishing day
bay-another-day = Begin another day
# $seconds is a figure with two decimals.
bay-planned-in = The last change was planned in { $seconds } s.
bay-another-day-question = Begin another day?
bay-another-day-means = Everything counts as not done again. What was tapped so far stays in the file of the day, but counts no more.
bay-keep-this-day = Go on with this one
# Below the map. Times are times on a stopwatch, $time in bay-saved-for and $left in bay-so-far durations with their unit.
bay-nothing-runs = The windows of wet panels run here once the day has begun.
bay-more-rows = and { $count } more
bay-saved-for = A high spot can be saved for { $time } after applying; later it is polished
bay-so-far = { $done } of { $all } done, about { $left } left
# The next two may follow after a comma.
bay-level-between = level after { $from } to { $to }
bay-order-changed = the order has changed
bay-try-in = try in { $time }
bay-left = { $time } left
bay-late = { $time } late
bay-being-levelled = being levelled
bay-polish-it = polish it
# What is said aloud, in quotation marks.
bay-said-aloud = “{ $call }”
# The card of one person. $person is a name, $panel a panel, $time a time on a stopwatch.
bay-now = now
bay-in = in { $time }
# $verb is what is done in one word, such as "apply".
bay-wait-then = Wait, then { $verb }
bay-verb-panel = { $verb } { $panel }
bay-panel-waits = Away, { $panel } waits
bay-away = Away
bay-back-soon = Back soon
bay-nothing-left = Nothing left
bay-free = Free
bay-how-felt = How did { $panel } feel?
bay-next = Next
bay-done = Done
bay-person-done = { $person }, done with { $panel }
bay-start-now = Start now
bay-person-start = { $person }, start { $panel }
bay-back = Back
bay-person-back = { $person }, back
bay-away-ask = Away…
bay-person-away = { $person }, away
bay-other-panel-ask = Other panel…
bay-person-other-panel = { $person }, other panel
# $count is how many fresh pads somebody took so far.
bay-fresh-pad = Fresh pad, { $count }
bay-person-fresh-pad = { $person }, fresh pad
# How the towel felt: buttons, and the same read aloud.
bay-feel-wet = Still wet
bay-feel-right = Right
bay-feel-dragging = Dragging
bay-felt-wet = { $panel } felt still wet
bay-felt-right = { $panel } felt right
bay-felt-dragging = { $panel } felt dragging
bay-leaves-for = { $person } leaves for
# $time is a duration with its unit.
bay-away-for = away for { $time }
bay-stays = Stays
bay-stays-aloud = stays
# The last lap.
bay-lap = Last lap, { $done } of { $all }
bay-time-to-save = { $time } to save a high spot
bay-too-late = Too late to save, look all the same
bay-all-fine = All fine, on
bay-rest-fine = The rest is fine
bay-high-spot = High spot
# $place is a place of the last lap.
bay-high-spot-at = High spot, { $place }
bay-wet-again = Wet it again, level, check. { $time } left
bay-gone = It is gone
bay-gone-at = It is gone, { $place }
bay-to-polish = To polish
bay-to-polish-at = To polish, { $place }
bay-mark-fine = fine
bay-mark-saved = saved
bay-mark-to-polish = to polish
bay-all-looked-at = All looked at
bay-left-to-polish = To polish { $place }
# $rain and $drive are durations with their unit.
bay-keep-dry = Dry for { $rain }, no driving for { $drive }.
# Somebody takes something else than the plan says.
bay-takes = { $person } takes
bay-back-to-card = Back
bay-back-to-card-aloud = back to the card
bay-nothing-to-begin = Nothing that can be begun.
# $what is bay-verb-panel.
bay-takes-what = { $person } takes { $what }
# Before the day.
bay-nothing-to-polish = There is nothing to polish on this vehicle.
bay-stop = Stop
bay-why-save = Every tap is written beside the job, so that nothing is lost when a battery dies.
bay-save-first = Save the job first…
bay-try-unsaved = Try it without saving
bay-only-to-try = Only to try: nothing is written until the job is saved.
bay-no-order-yet = There is no order to begin with yet.
bay-start-day = Start the day
# $time is a duration with its unit.
bay-crew-takes = About { $time } for the crew.
bay-first-apply = { $person } applies, first { $panel }
bay-first-level = { $person } levels, first { $panel }
# $step is the shop's name of a polish step.
bay-first-polish = { $person }, first { $step } on { $panel }
# The buttons for everybody, and the same read aloud.
bay-take-back = Take back
bay-take-back-aloud = Take back the last tap
bay-go-on = Go on
bay-go-on-aloud = Everybody goes on
bay-pause = Pause
bay-pause-aloud = Pause for everybody
bay-air-aloud = The air is another
# Why a tap does not count; it follows after a colon, and a full stop follows. $operation is a name such as bonnet-left/apply.
bay-not-at-anything = { $person } was not at anything
bay-was-not-away = { $person } was not away
bay-was-not-levelled = { $operation } was not levelled
bay-was-done = { $operation } was done before
bay-done-by-other = { $operation } is being done by { $person }
# $first is another operation.
bay-not-before = { $operation } can't begin before { $first } is done
# $role is the name of a kind of work in a crew problem, such as apply.
bay-not-their-work = { $person } does not { $role }
bay-nobody-called = nobody is called { $person }
bay-nothing-called = there is no { $operation } to do
bay-elsewhere = Saved under another name, in a folder of your own, the job has its day there.
