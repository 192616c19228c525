# Heads of the sheet, and of what is folded away.
coating-order = Order
coating-asked-of-order = What is asked of the order
coating-who-levels = Who levels
coating-air = Air
coating-coating = Coating
coating-how-much-needed = How much is needed
coating-step-by-step = Step by step
# Go or stop.
coating-air-right = The air is right
coating-stop = Stop
coating-dew-point = Dew point
# Beside it stands by how many kelvin the coldest panel is above the dew point.
coating-above-dew-point = Coldest panel above it
# Beside it stands coating-from-to.
coating-level-after = Level after
# $from and $to are times on a stopwatch.
coating-from-to = { $from } to { $to }
coating-humidity = Humidity
coating-coldest = Coldest panel
coating-warmest = Warmest panel, sunny side
coating-wipe-dried = A panel wipe has dried after
# $time is a time on a stopwatch.
coating-about = about { $time }
coating-window-reckoned = How the window is reckoned
coating-tried-counts = Tried on the vehicle: counts
coating-tried = Tried on the vehicle
coating-how-to-try = Coat a hand’s breadth where nobody looks, and note when it levels cleanly. That counts instead of the label.
coating-note-tried = Note a tried window
coating-clean-from = Levelled cleanly from
coating-clean-until = until
# $air and $surface are temperatures with their unit, $humidity a humidity with its unit.
coating-tried-at = Tried at { $air } air, { $humidity } humidity, { $surface } surface.
coating-in-this-air = It was in this air
coating-by-label-again = Go by the label again
# How much of everything.
coating-for-vehicle = Coating for the vehicle
coating-first-load = First load of an applicator
# $volume is a volume with its unit.
coating-bottles = Bottles of { $volume }
coating-applicators = Applicators
coating-level-towels = Towels to level
coating-last-towels = Dry towels for the last wipe
coating-by-panel = Panel by panel
coating-drop-is = A drop is taken as { $volume } ml; applicators and towels are our estimates.
coating-drops =
    { $volume }, { $count ->
        [one] 1 drop
       *[other] { $count } drops
    }
# $person is a name, $does what they do: "applies and levels".
coating-person-does = { $person } { $does }
coating-by-experience = Let experience decide who levels
coating-side-any = whichever is best
coating-side-first = Side first
coating-side-left = left
coating-side-right = right
coating-paint-first = Paint before lamps and glass
coating-ask-nothing = Ask for nothing
coating-top-before-bottom = Top before bottom is always kept where one leans over a panel: a fresh film is not leaned on, levelled or not.
coating-anywhere = anywhere
# $person is a name; beside it stands a panel.
coating-begins-with = { $person } begins with
coating-take-back = Take back
coating-need-not-be-first = { $panel } need not come first
coating-comes-first = { $panel } comes first
coating-choose-panel = Choose a panel on the map to have it come first, or to leave it out.
coating-leave-out = Leave { $panel } out
# The order in figures and in words.
coating-planning = Planning…
coating-no-order = There is no order.
coating-out-of-date = Out of date: a new order is being planned.
coating-still-looking = Still looking for a better one…
coating-takes = Takes
coating-walking = Walking, all together
coating-late-on = A panel late on
# $share is whole per cent.
coating-of-days = { $share } % of days
coating-long-walks = Long walks
coating-side-changes = Changes of side
coating-order-accepted = This order is accepted and saved with the job.
coating-accept-order = Accept this order
coating-proven-best = No order can be shorter: that is proven.
# $time is a duration with its unit, $share whole per cent.
coating-proven-within = No order can be shorter by more than { $time } ({ $share } %): that is proven.
coating-wishes-cost-nothing = What you ask of the order costs no time.
# $longer and $free are durations with their unit.
coating-wishes-cost = What you ask of the order costs { $longer }: with nothing asked it takes { $free }.
coating-why-here = Why { $panel } here
# $time is a time on a stopwatch, $person a name.
coating-row-apply = { $time } { $person } applies { $panel }
coating-row-level = { $time } { $person } levels { $panel }
coating-apply-panel = apply { $panel }
coating-level-panel = level { $panel }
# The coating as the shop knows it: heads of groups, and labels of figures that stand with their unit behind them.
coating-label-window = Window of the label
coating-window-from = Level no sooner than
coating-window-to = and no later than
coating-holds-at-temp = It holds at
coating-holds-at-humidity = and a humidity of
coating-by-warmth = Shortened by warmth
coating-by-moisture = Shortened by moisture
coating-label-limits = Limits of the label
coating-temp-least = Air and panel at least
coating-temp-most = and at most
coating-humidity-least = Humidity at least
coating-humidity-most = and at most
coating-how-much = How much
coating-per-metre = For a square metre and layer
coating-load = To load an applicator
coating-in-bottle = In a bottle
coating-layers = Layers
coating-next-layer = Next layer after
coating-how-fast = How fast you work
coating-apply-metre = Apply a square metre in
coating-level-metre = Level a square metre in
coating-each-panel = Each panel on top
coating-afterwards = Afterwards
coating-high-spot-for = A high spot can be saved for
coating-drive-after = May be driven after
coating-rain-after = Rain does no harm after
coating-wash-after = May be washed after
coating-hard-after = Full hardness after
coating-own-name = What you call it
coating-plain-set = The figures are a plain set to start from. What the label says comes first: enter it here.
coating-cautions = Solvents and cautions
coating-safety-sheet = What its safety data sheet asks for
coating-rules-first = Local rules, the maker’s data sheets and licensed practice come first.
coating-back-to-plain = Back to the plain set
