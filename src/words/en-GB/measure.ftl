# How a gauge measures, as it stands in a list and in a sentence.
measure-magnetic-induction = magnetic induction
measure-eddy-current = eddy current
measure-induction-and-eddy-current = induction and eddy current
measure-ultrasonic = ultrasonic
# Why a gauge gives no thickness on a panel, as the end of a sentence.
measure-no-glass = glass carries no paint to read
measure-magnetic-on-aluminium = a magnetic gauge reads on steel only; on aluminium an eddy current gauge is needed
measure-magnetic-on-no-metal = a magnetic gauge reads on steel only; on this panel an ultrasonic gauge is needed
measure-eddy-on-steel = an eddy current gauge is not meant for steel; a magnetic gauge is needed
measure-eddy-on-carbon = carbon fibre conducts, so an eddy current reading means nothing there
measure-no-metal = this gauge needs metal under the paint; on this panel an ultrasonic gauge is needed

# Bands of the film from thin to thick; they stand in measure-thin as $band.
measure-band-no-cut = too thin to cut
measure-band-finest-only = very thin
measure-band-thin = thin
measure-band-normal = normal
measure-band-refinished = probably refinished
measure-band-several = probably several resprays
measure-band-filler = filler likely
measure-bands-do-not-rise = the borders of the film bands do not rise
# $um is a whole number, $meaning one of the measure-means messages.
measure-film-mean = The film is { $um } µm on average; { $meaning } (trade practice).
measure-film-thickest = The film is { $um } µm at its thickest spot; { $meaning } (trade practice).
measure-film-thinnest = The film is { $um } µm at its thinnest spot; { $meaning } (trade practice).
measure-film-uneven = The spots differ by { $um } µm; part of the panel may have been painted again or rubbed thin.
measure-means-no-cut = that is too thin to cut anything
measure-means-finest-only = that is very thin, only the finest polish is safe
measure-means-thin = that is thin, nothing strong should be used
measure-means-normal = that is usual for factory paint
measure-means-refinished = that suggests it was painted again
measure-means-several = that suggests several resprays
measure-means-filler = that suggests body filler under the paint

# Findings: what was found, and with -do what to do; without a capital and a full stop, which are put where they are needed.
measure-stands-out = spot { $spot } is too far from the others to belong to them
measure-stands-out-do = read that spot again; keep the reading if it comes out the same
measure-filler = { $um } µm at the thickest spot suggests body filler
measure-filler-do = do not polish this panel; look at it from the inside or ask the owner
measure-refinished = { $um } µm at the thickest spot suggests that it was painted again
measure-refinished-do = note it as refinished, or read again; its layers are not known
# $film is a thickness with its unit, $band one of the measure-band messages.
measure-thin = the film may be as thin as { $film }, which is { $band }
measure-thin-do = stay with the finest step, or read more spots to narrow the bound
measure-uneven = the spots differ by { $um } µm
measure-uneven-do = read between the thickest and the thinnest spot to find where it changes
measure-thicker-than-mirror = it is { $um } µm thicker than the mirror panel
measure-thinner-than-mirror = it is { $um } µm thinner than the mirror panel
measure-mirror-do = compare colour and texture of both; one was probably painted again or rubbed thin

# A panel against the one on the other side; $within is half the width of the interval, in µm.
measure-mirror-thicker = The film is { $um } µm thicker than on the mirror panel (±{ $within } µm); one of the two was probably painted again or rubbed thin.
measure-mirror-thinner = The film is { $um } µm thinner than on the mirror panel (±{ $within } µm); one of the two was probably painted again or rubbed thin.
measure-mirror-alike-thicker = The mirror panel is alike: { $um } µm thicker, ±{ $within } µm.
measure-mirror-alike-thinner = The mirror panel is alike: { $um } µm thinner, ±{ $within } µm.

# What a second survey says; $interval is measure-interval.
measure-interval = { $mean } µm, with 95 % confidence between { $low } and { $high } µm
measure-removed = Removed { $interval }.
measure-removal-not-shown = The difference is { $interval }; that does not show a removal. About { $pairs } spots, read before and after, would.
measure-removal-too-small = The difference is { $interval }; a removal this small is not measurable with this gauge.
# What a lower bound promises; "this" is the bound.
measure-promise = we are { $confidence } % sure that at least { $coverage } % of the panel is thicker than this

# Gloss, in gloss units; the angles are those of the standards.
measure-gloss-60-first = Read at 60° first; it tells which angle to use.
measure-gloss-use-20 = Above 70 at 60°, so 20° tells more.
measure-gloss-use-85 = Below 10 at 60°, so 85° tells more.
measure-gloss-stay-60 = From 10 to 70 at 60°, so 60° is the right angle.
measure-gloss-higher = { $before } before, { $after } after at { $degrees }°: glossier than before.
measure-gloss-lower = { $before } before, { $after } after at { $degrees }°: duller than before.
measure-gloss-alike = { $before } before, { $after } after at { $degrees }°: less than two units apart, so no change is shown.
