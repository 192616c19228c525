# How much clear there is, as it stands in a list.
polish-clear-is-assumed = assumed
polish-clear-is-measured = measured
# $low is a number, $high has its unit.
polish-clear-assumed = { $low } to { $high } of clear, assumed: the gauge reads everything above the base and can't see the clear on its own
polish-clear-measured = { $low } to { $high } of clear, measured

# Why nothing is polished. $reason is one of polish-not-….
polish-refused = Not polished: { $reason }.
# $reason is why nothing could be read, such as polish-unread.
polish-refused-unread = Not polished: the film is not known ({ $reason }), and nothing is taken off blindly.
polish-unread = nothing was read here yet
polish-refused-filler = Not polished: { $thickest } at the thickest spot suggests filler, and nobody can know what holds there.
# $rule is one of polish-limit-….
polish-refused-rule = Not polished: nothing may go, because of the rule “{ $rule }”.
polish-no-limit = no limit is known
polish-not-matte = matte paint is not polished: every rubbed place turns shiny and can't be made matte again
polish-not-film = protective film is not polished as paint; what lies under it can't be reached or read
polish-not-wrap = a wrap is not polished
polish-not-bare = there is no clear coat on a bare surface
polish-not-glass = glass is not polished with the paint; it is cleaned and coated only
polish-not-lens = polishing a lamp lens takes off its hard coat, which must then be renewed; it is cleaned and coated only

# What to mind.
polish-mind = Mind: { $caution }.
polish-single-stage = single-stage paint has no clear: colour on the pad is the paint itself, so stay with the finest step that works
polish-mind-edge-nothing = Mind: nothing may go at the thin edge; tape it off.
polish-mind-edge = Mind: only { $most } may go at the thin edge; tape it off where the steps take more.
polish-mind-radar = Mind: the radar behind this panel is set for the thickness from the factory; the vehicle maker's guidance comes first.
polish-mind-parking-sensors = Mind: parking sensors sit in this panel; the vehicle maker's guidance comes first.
polish-mind-camera = Mind: a camera looks out here; the vehicle maker's guidance comes first.
polish-mind-fresh = Mind: painted { $days ->
        [one] 1 day
       *[other] { $days } days
    } ago; strong solvents may soften it.

# Rules that limit the removal: each stands in a list, in brackets and in quotes. Amounts have their unit.
# $unknown is a percentage or "none", $before an amount or "none".
polish-limit-keep =
    keep at least { $least } of { $coat ->
        [topcoat] topcoat
       *[clear] clear
    }
polish-limit-share =
    at most { $share } % of the { $coat ->
        [topcoat] topcoat
       *[clear] clear
    } in its life{ $unknown ->
        [none] {""}
       *[other] , { $unknown } % of it taken as used because the history is unknown
    }{ $before ->
        [none] {""}
       *[other] , { $before } of it used before
    }
polish-limit-life =
    at most { $most } in the life of the paint{ $unknown ->
        [none] {""}
       *[other] , { $unknown } % of it taken as used because the history is unknown
    }{ $before ->
        [none] {""}
       *[other] , { $before } of it used before
    }
polish-limit-visit = cap for one visit
polish-limit-no-cut = film may be under { $under }, too thin to cut
polish-limit-finest-only = film may be under { $under }, finest polish only
polish-limit-thin = film may be under { $under }, nothing strong
polish-limit-refinished = film over { $over }, probably painted again
polish-limit-painted-again = painted again, layers not known
polish-limit-fresh = painted { $days ->
        [one] 1 day
       *[other] { $days } days
    } ago, still hardening
polish-limit-narrow = narrow panel, mostly edges
polish-limit-sensor = a sensor looks through it

# Where the number of a rule comes from.
polish-source-shop = shop policy; the default is our estimate, a convention
polish-source-bands = shop policy; trade practice for total film
polish-source-history = what is recorded of earlier work
polish-source-film = lower bound of the readings; the clear is assumed from the film
polish-source-clear = lower bound of the clear as measured

# What test spots taught. $step and the like are names of steps.
polish-note-took-more = The test with { $step } took { $took }, much more than the other results and the shop's figures lead one to expect; test it once more.
polish-note-took-less = The test with { $step } took { $took }, much less than the other results and the shop's figures lead one to expect; test it once more.
polish-note-no-gloss = { $step } did not leave a finish that can stay; a finer step must follow.
polish-note-sights-apart = Contradictory: { $gentler } took out more of the { $defect } than { $deeper }, although it reached less deep; look at both places again.
polish-note-finish-twice = Contradictory: the finish of { $step } was judged in two ways; try it once more.
polish-note-finishes-apart = Contradictory: { $stays } can stay as it is, but the gentler { $coarse } can't; wipe both places with panel wipe and look again.

# For the customer: how a panel is worked.
polish-customer-left = This panel is left as it is.
polish-customer-gloss = This panel is polished gently for gloss.
polish-customer-once = This panel is polished once.
polish-customer-several = This panel is polished in several steps, from coarse to fine.
polish-customer-sanded = This panel is wet sanded and then polished until it is clear again.
polish-customer-takes =
    It takes at most { $share } % of the { $coat ->
        [paint] paint
       *[clear] clear coat
    }.

# What becomes of defects. These are joined by semicolons to a sentence that gets a capital and a full stop; $defects is a list
# of names ("swirl marks and haze").
polish-fate-gone = { $defects } will be gone
polish-fate-less = { $defects } will be less to be seen
polish-fate-stays = { $defects } will stay
polish-fate-cleaned = { $defects } will be cleaned off before
polish-fate-levelled = { $defects } will be levelled by hand, if asked for
polish-fate-touch-up = { $defects } will stay until touched up
polish-fate-painted = { $defects } can only be painted anew

# Defects, as they stand in a sentence; in a list they get a capital.
polish-defect-swirl = swirl marks
polish-defect-wash-mark = wash marks
polish-defect-haze = haze
polish-defect-hologram = holograms
polish-defect-sand-scratch = sanding marks
polish-defect-deep-scratch = deep scratch
polish-defect-water-spot = water spots
polish-defect-etching = etching
polish-defect-bird-etching = bird etching
polish-defect-oxidation = oxidation
polish-defect-orange-peel = orange peel
polish-defect-overspray = overspray
polish-defect-tar = tar
polish-defect-rail-dust = rail dust
polish-defect-stone-chip = stone chip
polish-defect-clear-failure = clear coat failure
polish-defect-solvent-pop = solvent pop
polish-defect-crater = craters
polish-defect-nib = dust nib
polish-defect-run = run

# What helps against a defect, as the end of a sentence and as a sentence of its own.
polish-helps-polish = polishing takes it out
polish-helps-reduce = polishing makes it less, and takes it out where enough clear may go
polish-helps-decontaminate = it lies on the paint and comes off by decontamination before polishing
polish-helps-refinish = only new paint helps
polish-helps-touch-up = paint is missing, so touch-up or refinishing helps, polishing does not
polish-helps-level-locally = it stands proud and is levelled by hand in its place only

# How the pad is moved.
polish-drive-not-said = not said
polish-drive-hand = by hand
polish-drive-orbital = orbital machine
polish-drive-rotary = rotary machine

# Where a removal is known from.
polish-removal-measured = measured
polish-removal-planned = planned
polish-removal-told = told or estimated

# How hard a panel is worked.
polish-level-leave = Leave
polish-level-gloss = Gloss
polish-level-one-step = One-step
polish-level-two-step = Two-step
polish-level-sand-and-polish = Sand and polish

# Kinds of steps: what somebody does, and what it is called.
polish-verb-sand = sand
polish-verb-cut = cut
polish-verb-polish = polish
polish-verb-finish = finish
polish-kind-sanding = sanding
polish-kind-cutting = cutting
polish-kind-polishing = polishing
polish-kind-finishing = finishing

# Two panels side by side that look different, as the end of a sentence; $one and $other are levels.
polish-seam-levels = one is planned as { $one }, the other as { $other }
polish-seam-share = { $more } % more of the defects goes on one side of the seam
polish-seam-advice = work the better one less, the other more where its budget allows, or tell the customer

# Hands and ears.
polish-advice-vibration = Vibration is { $now } over the day, from { $action } on action is due: share the machine work, or keep it under { $until } each with this machine. Local rules and the maker's data come first.
polish-advice-noise = Noise is { $now } over the day, from 80 dB(A) on hearing protection is offered, from 85 worn.

# The starting set of steps, pads and abrasives. The British names stand in jobs: a changed one is not known again there.
polish-start-wet-2500 = Wet sanding by hand, P2500
polish-start-wet-3000 = Wet sanding by hand, P3000
polish-start-cutting = Cutting polish, firm pad
polish-start-medium = Medium polish, medium pad
polish-start-fine = Fine polish, soft pad
polish-start-block = sanding block
# Pads.
polish-start-firm = firm
polish-start-middle = medium
polish-start-soft = soft
# Sandpaper and polishes.
polish-start-paper-2500 = P2500, wet
polish-start-paper-3000 = P3000, wet
polish-start-cutting-polish = cutting polish
polish-start-medium-polish = medium polish
polish-start-fine-polish = fine polish

# Why a panel is worked as it is.
polish-why-left-by-hand = Left as it is, as chosen by hand; { $allowed } may go.
polish-why-left = Left as it is: { $allowed } may go, and even the gentlest step could take more.
# $rule is one of polish-limit-… or "none".
polish-why-takes =
    It takes off about { $mean }, at most { $most }; { $allowed } may go{ $rule ->
        [none] {""}
       *[other] {" "}({ $rule })
    }.
polish-done-step =
    { $step } ({ $passes ->
        [one] { $passes } pass
       *[other] { $passes } passes
    })
# Between steps one after another.
polish-then = , then{" "}
# $steps is a list of polish-done-step.
polish-done =
    { $level }: { $steps }{ $places ->
        [0] {""}
        [one] , with extra work at one place first
       *[other] , with extra work at { $places } places first
    }; { $time }.
polish-brings-gloss = There is nothing to correct here, so it is polished for gloss only.
# $gone and $wanted are percentages.
polish-brings-gloss-as-chosen = For gloss only, as chosen; about { $gone } % of the defects go with it.
polish-brings-enough =
    About { $gone } % of the defects go, where { $wanted } % were wanted; { $sure ->
        [yes] nothing quicker does that
       *[no] with fewer steps or passes to choose from a better way may be found
    }.
polish-brings-held = About { $gone } % of the defects go; { $wanted } % were wanted, but it is held at { $level } by hand.
polish-brings-less =
    About { $gone } % of the defects go; { $wanted } % were wanted, { $sure ->
        [yes] but these steps and this budget allow no more
       *[no] with fewer steps or passes to choose from a better way may be found
    }.

# What becomes of one defect. $gone is a percentage or "none".
polish-stays-helps = { $defect }: { $helps }.
polish-stays-refused =
    { $defect }: { $gone ->
        [none] stays
       *[other] about { $gone } % of it goes, the rest stays
    }, because this panel is not polished.
polish-stays-deep =
    { $defect }: { $gone ->
        [none] stays
       *[other] about { $gone } % of it goes, the rest stays
    }; it may be { $depth } deep and only { $allowed } may go; { $help ->
        [paint] etching that deep needs new paint
       *[touch-up] touch-up or refinishing would help more
    }.
polish-stays-goal =
    { $defect }: { $gone ->
        [none] stays
       *[other] about { $gone } % of it goes, the rest stays
    }; taking out all of it is not needed for the goal, or these steps can't do it within the budget.
