# Cómo mide un medidor.
measure-magnetic-induction = inducción magnética
measure-eddy-current = corrientes inducidas
measure-induction-and-eddy-current = inducción y corrientes inducidas
measure-ultrasonic = ultrasonidos
# Por qué un medidor no da espesor en un panel, como final de una frase.
measure-no-glass = el cristal no lleva pintura que leer
measure-magnetic-on-aluminium = un medidor magnético solo lee sobre acero; sobre aluminio hace falta uno de corrientes inducidas
measure-magnetic-on-no-metal = un medidor magnético solo lee sobre acero; en este panel hace falta uno de ultrasonidos
measure-eddy-on-steel = un medidor de corrientes inducidas no sirve para acero; hace falta uno magnético
measure-eddy-on-carbon = la fibra de carbono conduce, así que allí una lectura por corrientes inducidas no dice nada
measure-no-metal = este medidor necesita metal bajo la pintura; en este panel hace falta uno de ultrasonidos

measure-band-no-cut = demasiado fina para quitar nada
measure-band-finest-only = muy fina
measure-band-thin = fina
measure-band-normal = normal
measure-band-refinished = probablemente repintada
measure-band-several = probablemente repintada varias veces
measure-band-filler = masilla probable
measure-bands-do-not-rise = los límites de las franjas de la capa no suben
measure-film-mean = La capa de pintura tiene { $um } µm de media; { $meaning } (práctica del oficio).
measure-film-thickest = La capa de pintura tiene { $um } µm en su punto más grueso; { $meaning } (práctica del oficio).
measure-film-thinnest = La capa de pintura tiene { $um } µm en su punto más fino; { $meaning } (práctica del oficio).
measure-film-uneven = Los puntos se diferencian en { $um } µm; una parte del panel puede estar repintada o desgastada.
measure-means-no-cut = es demasiado fina para quitar nada
measure-means-finest-only = es muy fina, solo es seguro el pulimento más fino
measure-means-thin = es fina, no conviene usar nada fuerte
measure-means-normal = es lo habitual en pintura de fábrica
measure-means-refinished = hace pensar en un repintado
measure-means-several = hace pensar en varios repintados
measure-means-filler = hace pensar en masilla bajo la pintura

measure-stands-out = el punto { $spot } está demasiado lejos de los demás para ser uno de ellos
measure-stands-out-do = volver a leer ese punto; si sale lo mismo, conservar la lectura
measure-filler = { $um } µm en el punto más grueso hacen pensar en masilla
measure-filler-do = no pulir este panel; mirarlo por dentro o preguntar al dueño
measure-refinished = { $um } µm en el punto más grueso hacen pensar en un repintado
measure-refinished-do = anotarlo como repintado o volver a leer; no se conocen sus capas
measure-thin = la capa de pintura puede tener solo { $film }, es decir, { $band }
measure-thin-do = quedarse en el paso más fino, o leer más puntos para afinar el límite
measure-uneven = los puntos se diferencian en { $um } µm
measure-uneven-do = leer entre el punto más grueso y el más fino para hallar dónde cambia
measure-thicker-than-mirror = { $um } µm más grueso que el panel del otro lado
measure-thinner-than-mirror = { $um } µm más fino que el panel del otro lado
measure-mirror-do = comparar el color y la textura de los dos; uno está probablemente repintado o desgastado

measure-mirror-thicker = La capa de pintura es { $um } µm más gruesa que en el panel del otro lado (±{ $within } µm); uno de los dos está probablemente repintado o desgastado.
measure-mirror-thinner = La capa de pintura es { $um } µm más fina que en el panel del otro lado (±{ $within } µm); uno de los dos está probablemente repintado o desgastado.
measure-mirror-alike-thicker = El panel del otro lado es igual: { $um } µm más grueso, ±{ $within } µm.
measure-mirror-alike-thinner = El panel del otro lado es igual: { $um } µm más fino, ±{ $within } µm.

measure-interval = { $mean } µm, con un 95 % de confianza entre { $low } y { $high } µm
measure-removed = Quitado: { $interval }.
measure-removal-not-shown = La diferencia es de { $interval }; eso no demuestra una remoción. Unos { $pairs } puntos, leídos antes y después, sí lo harían.
measure-removal-too-small = La diferencia es de { $interval }; una remoción tan pequeña no se puede medir con este medidor.
measure-promise = con una seguridad del { $confidence } %, al menos el { $coverage } % del panel es más grueso que este valor

measure-gloss-60-first = Leer primero a 60°; así se sabe qué ángulo usar.
measure-gloss-use-20 = Más de 70 a 60°, así que 20° dice más.
measure-gloss-use-85 = Menos de 10 a 60°, así que 85° dice más.
measure-gloss-stay-60 = De 10 a 70 a 60°, así que 60° es el ángulo adecuado.
measure-gloss-higher = { $before } antes, { $after } después a { $degrees }°: más brillo que antes.
measure-gloss-lower = { $before } antes, { $after } después a { $degrees }°: menos brillo que antes.
measure-gloss-alike = { $before } antes, { $after } después a { $degrees }°: menos de dos unidades de diferencia, así que no se demuestra ningún cambio.
