scene-stance-wing = Fender
