# The window as a whole.
window-sample = sample
window-the-sample = the sample
window-the-vehicle = the vehicle
window-new-job = New job
window-day-runs = a day in the bay runs
window-none-here = no window can be opened here ({ $error }); this is the plan as text
window-planner-not-started = the planner could not be started: { $error }
window-job-as-it-was = the job is as it was
window-save-not-confirmed = saved, but the system did not confirm that the file is on the disk
window-save-again = a power cut in the next seconds could bring back the old version; save again before switching off

# Workspaces, as they stand on the rail.
window-workspace-job = Job
window-workspace-survey = Survey
window-workspace-correction = Correction
window-workspace-coating = Coating
window-workspace-bay = Bay
window-workspace-handover = Handover
window-workspace-practice = Practice

# How far a workspace is; a few words under its name on the rail, with room for about 22 letters.
window-rail-no-vehicle = no vehicle yet
# $read: painted panels that were read; $all: all that can be read
window-rail-read = { $read } of { $all } read
window-rail-look-at-test-spot = look at test spot
window-rail-nothing-to-polish = nothing to polish
window-rail-panels = { $panels ->
    [one] { $panels } panel
   *[other] { $panels } panels
}
# $stays: defects that stay
window-rail-panels-stay = { $panels ->
    [one] { $panels } panel, { $stays } stay
   *[other] { $panels } panels, { $stays } stay
}
window-rail-not-in-this-air = not in this air
window-rail-no-order = no order
# $time: how long the crew needs
window-rail-for-crew = { $time } for the crew
window-rail-planning = planning…
window-rail-done = { $done } of { $all } done
window-rail-coated = coated
window-rail-polished = polished
window-rail-not-begun = not begun
window-rail-for-apprentices = for apprentices
window-rail-written = written
window-rail-sheets-ready = sheets are ready
window-rail-nothing-read = nothing read yet

# The bar at the top. $what: what would be undone, such as “add reading”
window-undo-what = Undo { $what }
window-redo-what = Redo { $what }
window-view = View
window-theme-light = Light
window-theme-dark = Dark
window-theme-sunlight = Sunlight

# Ways to draw a defect.
window-shape-point = Point
window-shape-line = Line
window-shape-area = Area

# Heads of file dialogs, and kinds of files in them.
window-open-job = Open a job
window-save-job = Save the job
window-readings-from-file = Readings from a file
window-picture-of-defect = A picture of the defect
window-folder-of-jobs = The folder of the jobs
window-write-file = Write a file
window-files-job = Job
window-files-readings = Readings
window-files-picture = Picture
window-files-web-page = Web page
window-files-list = List
window-files-calendar = Calendar
window-files-drawing = Drawing

# Questions.
window-save-first = Save “{ $name }” first?
window-not-in-file = There are changes that are not in the file.
window-do-not-save = Don't save
window-show = Show
window-add = Add
window-look-through = Look through
window-write = Write
# $example: the name of a file
window-path-of-file = Path of the file, for example { $example }
window-example-job = my.job.ron
window-example-readings = readings.csv
window-example-picture = scratch.jpg
window-example-folder = jobs
window-example-pdf = sheet.pdf
window-example-web-page = sheet.html
window-example-list = order.csv
window-example-calendar = care.ics
window-example-drawing = map.svg
window-example-map = map.png
window-not-done = That could not be done
window-drop-vehicle-changes = Drop the changes to the vehicle?
window-job-keeps-vehicle = They are not saved. The job keeps the vehicle that it has.
window-go-on-editing = Go on editing
window-drop-changes = Drop the changes
window-save-own-vehicle = Save as a vehicle of your own
window-vehicle-name = Name, for example “Saloon with two-piece doors”
window-no-vehicle-folder = There is no folder for vehicles of your own on this computer.
window-vehicle-kept-in = It is kept in { $folder } and can be chosen for every job. This job changes to it.

# The time chart. $who: a worker; $does: “applies”; $from, $to: times
window-chart-bar =
    { $who } { $does } { $panel }
    { $from } to { $to }
# $day: number of a further day, from 2
window-chart-day = day { $day }
window-chart-empty = Time chart, empty
window-chart-of-polishing =
    { $people ->
        [one] Time chart of polishing: { $steps } steps for { $people } person in { $time }
       *[other] Time chart of polishing: { $steps } steps for { $people } people in { $time }
    }
window-chart-of-coating =
    { $people ->
        [one] Time chart of coating: { $steps } steps for { $people } person in { $time }
       *[other] Time chart of coating: { $steps } steps for { $people } people in { $time }
    }
window-nothing-to-polish = Nothing to polish.
window-planning-order = Planning the order…
window-no-polishing-order = No order of polishing yet.
window-no-coating-order = No order of coating yet.

# The map and its legend.
window-vehicle-map = Vehicle map
window-front = front
window-fit = Fit
window-fit-does = Show the whole vehicle (F)
window-zoom-in = Zoom in
window-zoom-in-does = Show what is chosen as large as it goes (Z)
window-nothing-read = Nothing read yet.
window-no-defects = No defects noted.
window-no-order = No order yet.
window-no-panels = No panels.
# $count: panels too small for their label; always more than 20
window-labels-left-out = { $count } small panels show theirs when you zoom in or point at them.

# Fields and bars. What may go, what will go, what has to go: labels with room for about 9 letters
window-allowed = allowed
window-planned = planned
window-needed = needed
# All four are a thickness; $mean is without its unit
window-budget = allowed { $allowed }, planned { $mean } to { $upper }, needed { $needed }
window-type-number = Type a number from { $least } to { $most } { $unit }.
# $area: in m²; $substrate: “steel”
window-panel-facts = about { $area } m², { $substrate }
window-typed = “{ $text }” was typed and not entered
window-typed-enter = Entered, it counts as the next reading.
window-enter-it = Enter it
window-leave-it-out = Leave it out
