# Changing the vehicle itself. Names of panels come as “Wing, left”.
edit-undo = Undo
edit-redo = Redo
edit-nothing-to-undo = Nothing to undo
edit-nothing-to-redo = Nothing to redo
# $what: what was done, as a sentence
edit-undo-what = { $what } (Ctrl+Z)
edit-redo-what = { $what } (Ctrl+Shift+Z)
edit-editing = Editing { $vehicle }
edit-not-saved-yet = The job keeps its vehicle until this is saved.
edit-changes = Changes so far
edit-no-changes = None yet. Each can be taken back.
edit-save-as = Save as…

# The tools at the right.
edit-vehicle = Edit vehicle
edit-choose-panel = Choose a panel on the map. With Shift, a click adds another one.
edit-what-can-be-done = A panel can be cut in two, joined with its neighbour, left out of the work, or said to be made of something else. Below the map, stances can be moved.
edit-panels = { $count ->
    [one] { $count } panel
   *[other] { $count } panels
}
# $names: a few names; $count: how many are not named
edit-and-more = { $names } and { $count } more
# $area: in m²; $substrate: “steel”
edit-panel-facts = about { $area } m², { $substrate }
edit-cut = Cut in two
edit-no-cut-on-centreline = It lies across the centreline, where a cut would not be the same on both sides.
edit-cut-begins = Click where the cut begins, on the panel or beside it.
edit-cut-ends = Now click where it ends.
edit-do-not-cut = Don't cut
edit-draw-cut = Draw the cut…
edit-across = Across
edit-across-does = Through its middle, into a front and a rear part
edit-along = Along
edit-along-does = Through its middle, into an inner and an outer part
edit-join-neighbour = Join with a neighbour
edit-choose = choose…
edit-neighbour = Neighbour
edit-join-two = Join the two
edit-join-as = Join as { $panel }
edit-what-it-is = What it is
edit-in-work = In the work
edit-takes-part = takes part
edit-not-alike = not all alike
edit-made-of = Made of
edit-worked-from = Worked from
# A stance in a list, and as a heading
edit-stance-number = stance { $number }
edit-stance = Stance { $number }
edit-behind-front = Behind the front
edit-from-centreline = From the centreline

# The floor.
edit-stances = Stances
edit-stances-how = Drag a number, or push it with the arrow keys. The other side moves alike.
edit-stance-of = Stance { $number }: { $panels }
edit-stance-unused = nothing is worked from here

# What was done.
edit-stance-moved = Stance { $number } moved, and the one across from it alike
# One of the two parts after a cut; $area: in m²
edit-part = { $panel } (about { $area } m²)
edit-cut-in-two = { $panel } is two panels now: { $parts }; the other side alike
edit-joined = { $a } and { $b } are one panel now: { $panel }
# $who: a panel or “3 panels”; $what: what they are now, such as “aluminium” or “worked from stance 3”
edit-changed = { $who }: { $what }
edit-takes-part-in-work = takes part in the work
edit-worked-from-stance = worked from stance { $number }
# $what: “Wing, left: worked from stance 3”
edit-far-from-stance = { $what }, which is far along the vehicle from it
edit-save-not-confirmed = the vehicle is saved, but the system did not confirm that the file is on the disk
edit-look-again = before switching off, make sure that it is still in the list of vehicles

# Why a change was refused.
edit-no-panel = there is no { $panel }
edit-no-stance = there is no such stance
edit-no-shared-seam = { $a } and { $b } do not share one seam that can be taken away
edit-line-cuts-nothing = the line does not cut { $panel } in two
edit-across-centreline = { $panel } lies across the centreline and can't be cut
edit-would-leave-fault = that would leave a fault: { $place }: { $cause }
edit-would-leave-some-fault = that would leave a fault
edit-new-part = the new part
# Words that stand before the id of a panel or a stance in a fault, with commas between them; they are left out with the name
edit-words-for-panel = panel, panels
edit-words-for-stance = stance

# Questions about vehicles of one's own. $file: the name of a file
edit-save-over = Save the changes to “{ $name }”?
edit-save-over-means = Every job that uses this vehicle changes with it. Readings go to the panels they lie on in this job only.
edit-before-kept-as = What was there before is kept as { $file }. Earlier steps of this job can't be undone after it.
edit-save-changes = Save the changes
edit-own-vehicles = Vehicles of your own
edit-used-by-job = used by this job
edit-delete = Delete…
edit-delete-which = Delete “{ $name }”?
edit-delete-means = A job that uses it can't be opened without it.
# $name: the id of the vehicle, as its file is called
edit-deleted-kept-as = The file is kept as { $file }; named { $name }.ron again, it is back.
edit-keep-it = Keep it
edit-delete-it = Delete it
