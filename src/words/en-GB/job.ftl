# The sheet of a job.
job-nothing-yet = Choose the body and write down which vehicle it is. Then read its paint.
job-name = Name of the job
job-vehicle = Vehicle
job-description = Description
job-plate = Plate or other mark
job-paint-history = What was done to the paint before
job-customer = Customer
job-customer-name = Name
job-wishes = Wishes
job-crew = Crew
# Also the name of somebody new
job-worker = Worker { $number }
job-remove-worker = Remove
job-add-worker = Add somebody
job-body = Body
job-length = Length
job-width = Width without mirrors
job-height = Height
# $area: in m²
job-paint-area = About { $area } m² of paint, estimated for such a body. Areas, ways and stances follow the size.
job-edit-vehicle = Edit vehicle…
job-edit-vehicle-does = Cut or join panels, leave some out, move stances
job-own-vehicles = Your vehicles…
job-template-size = Keep the template's size

# What somebody does while coating, said of them: “Anna applies”; also the label of a box to tick
job-role-applies = applies
job-role-levels = levels
job-experience-learner = learner
job-experience-practised = practised
job-experience-expert = expert

# What was put on the paint before.
job-coating-unknown = not known
job-coating-nothing = nothing
job-coating-wax = wax
job-coating-sealant = sealant
job-coating-hard = hard coating
job-mind-wax = Mind: what is on the paint fills fine marks and keeps a coating from holding; take it off before judging and before coating.
job-mind-polished-hard = Mind: the gauge reads the old coating as paint, and it clogs the pad; polish it off on a test spot first and look again.
job-mind-kept-hard = Mind: the old coating stays, as nothing is polished here; a new one holds on it only if its maker says so.

# When a survey was taken.
job-stage-before = before polishing
job-stage-after = after polishing

# What undo takes back: “Undo add reading”.
job-undo-edit-text = edit text
job-undo-change-vehicle = change vehicle
job-undo-change-size = change size
job-undo-change-day-of-work = change day of work
job-undo-add-readings = add readings
job-undo-read-spot-again = read spot again
job-undo-add-reading = add reading
job-undo-correct-reading = correct reading
job-undo-remove-reading = remove reading
job-undo-mark-edge = mark edge
job-undo-add-defect = add defect
job-undo-correct-defect = correct defect
job-undo-remove-defect = remove defect
job-undo-change-paint-facts = change paint facts
job-undo-change-goal = change goal
job-undo-change-crew = change crew
job-undo-change-gauge = change gauge
job-undo-change-how-sure = change how sure
job-undo-change-removal-limits = change removal limits
job-undo-change-steps = change steps
job-undo-change-test-spot = change test spot
job-undo-change-shop = change shop
job-undo-change-coating = change coating
job-undo-change-air = change air
job-undo-note-tried-window = note tried window
job-undo-drop-tried-window = drop tried window
job-undo-change-choices-of-order = change choices of order
job-undo-accept-order = accept order
job-undo-drop-order = drop order
job-undo-describe-survey = describe survey
job-undo-begin-survey = begin survey
job-undo-drop-survey = drop survey
job-undo-add-gauge-check = add gauge check
job-undo-correct-gauge-check = correct gauge check
job-undo-remove-gauge-check = remove gauge check
job-undo-add-gloss-reading = add gloss reading
job-undo-remove-gloss-reading = remove gloss reading
job-undo-add-earlier-visit = add earlier visit
job-undo-remove-earlier-visit = remove earlier visit

# Why a change is refused. $what: one of the five words below; $panel: the id of a panel in the file of the vehicle
job-no-such = there is no { $what } number { $number } on panel "{ $panel }"
job-spot = spot
job-reading = reading
job-defect = defect
job-gloss-reading = gloss reading
job-earlier-visit = earlier visit
# $reason: why, such as “the gauge reads steel only”
job-not-read = not read on panel "{ $panel }": { $reason }
job-no-such-survey = there is no such survey or check any more
job-survey-goes-on = the present survey has no reading yet, so it can simply go on
job-polished-already = after polishing the paint can't be read as it was before
job-first-survey-stays = the first survey of a job stays
job-survey-has-readings = this survey has readings; take them away first, nothing is thrown away unseen
job-picture-name = a picture is named by 64 digits 0 to 9 and a to f
job-step-without-name = every step needs a name
job-step-twice = there is a step "{ $name }" already

# Faults of surveys in the file of a job: what is wrong, and what to do.
# $count: surveys of the job
