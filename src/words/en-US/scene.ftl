scene-stance-wing = Fender
scene-level = Leveled
scene-said-level = { $panel } is leveled
