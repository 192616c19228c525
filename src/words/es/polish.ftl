# Cuánto barniz hay.
polish-clear-is-assumed = supuesto
polish-clear-is-measured = medido
polish-clear-assumed = { $low } a { $high } de barniz, supuesto: el medidor lee todo lo que hay sobre el sustrato y no puede ver el barniz por separado
polish-clear-measured = { $low } a { $high } de barniz, medido

polish-refused = No se pule: { $reason }.
polish-refused-unread = No se pule: no se conoce la capa de pintura ({ $reason }), y nada se quita a ciegas.
polish-unread = aquí aún no se ha leído nada
polish-refused-filler = No se pule: { $thickest } en el punto más grueso hacen pensar en masilla, y nadie puede saber qué aguanta ahí.
polish-refused-rule = No se pule: no se puede quitar nada, por la regla «{ $rule }».
polish-no-limit = no se conoce ningún límite
polish-not-matte = la pintura mate no se pule; todo lugar frotado coge brillo y no se puede volver a matear
polish-not-film = la película protectora no se pule como pintura; a lo que hay debajo no se llega y no se puede leer
polish-not-wrap = el vinilo no se pule
polish-not-bare = en una superficie desnuda no hay barniz
polish-not-glass = el cristal no se pule con la pintura; solo se limpia y se recubre
polish-not-lens = al pulir la lente de un faro se quita su capa dura, que luego hay que renovar; solo se limpia y se recubre

polish-mind = Atención: { $caution }.
polish-single-stage = la pintura monocapa no tiene barniz; el color en la boina es la propia pintura, por eso conviene quedarse en el paso más fino que funcione
polish-mind-edge-nothing = Atención: en el borde fino no se puede quitar nada; taparlo con cinta.
polish-mind-edge = Atención: en el borde fino solo se pueden quitar { $most }; taparlo con cinta donde los pasos quiten más.
polish-mind-radar = Atención: el radar detrás de este panel está ajustado al espesor de fábrica; las indicaciones del fabricante del vehículo van primero.
polish-mind-parking-sensors = Atención: en este panel hay sensores de aparcamiento; las indicaciones del fabricante del vehículo van primero.
polish-mind-camera = Atención: por aquí mira una cámara; las indicaciones del fabricante del vehículo van primero.
polish-mind-fresh =
    Atención: { $days ->
        [one] pintado hace { $days } día
       *[other] pintado hace { $days } días
    }; los disolventes fuertes pueden ablandar la pintura.

# Reglas que limitan la remoción.
polish-limit-keep =
    conservar al menos { $least } { $coat ->
        [topcoat] de pintura
       *[clear] de barniz
    }
polish-limit-share =
    como máximo el { $share } % { $coat ->
        [topcoat] de la pintura
       *[clear] del barniz
    } en toda su vida{ $unknown ->
        [none] {""}
       *[other] , del que el { $unknown } % se da por gastado porque no se conoce la historia
    }{ $before ->
        [none] {""}
       *[other] , con { $before } ya gastados antes
    }
polish-limit-life =
    como máximo { $most } en la vida de la pintura{ $unknown ->
        [none] {""}
       *[other] , de los que el { $unknown } % se da por gastado porque no se conoce la historia
    }{ $before ->
        [none] {""}
       *[other] , con { $before } ya gastados antes
    }
polish-limit-visit = tope para una visita
polish-limit-no-cut = la capa puede bajar de { $under }, demasiado fina para quitar nada
polish-limit-finest-only = la capa puede bajar de { $under }, solo el pulimento más fino
polish-limit-thin = la capa puede bajar de { $under }, nada fuerte
polish-limit-refinished = capa de más de { $over }, probablemente repintada
polish-limit-painted-again = repintado, capas no conocidas
polish-limit-fresh =
    { $days ->
        [one] pintado hace { $days } día, aún endureciendo
       *[other] pintado hace { $days } días, aún endureciendo
    }
polish-limit-narrow = panel estrecho, casi todo bordes
polish-limit-sensor = un sensor mira a través

polish-source-shop = norma del taller; el valor inicial es nuestra estimación, una convención
polish-source-bands = norma del taller; práctica del oficio para la capa entera
polish-source-history = lo anotado de trabajos anteriores
polish-source-film = límite inferior de las lecturas; el barniz se supone a partir de la capa
polish-source-clear = límite inferior del barniz medido

polish-note-took-more = La prueba con «{ $step }» quitó { $took }, mucho más de lo que cabe esperar por los otros resultados y las cifras del taller; repetir la prueba.
polish-note-took-less = La prueba con «{ $step }» quitó { $took }, mucho menos de lo que cabe esperar por los otros resultados y las cifras del taller; repetir la prueba.
polish-note-no-gloss = «{ $step }» no dejó un acabado que pueda quedarse; debe seguir un paso más fino.
polish-note-sights-apart = Contradicción ({ $defect }): «{ $gentler }» quitó más que «{ $deeper }», aunque llegó menos hondo; volver a mirar los dos lugares.
polish-note-finish-twice = Contradicción: el acabado de «{ $step }» se juzgó de dos maneras; repetir la prueba.
polish-note-finishes-apart = Contradicción: el acabado de «{ $stays }» puede quedarse, pero el de «{ $coarse }», más suave, no; limpiar los dos lugares con desengrasante y volver a mirar.

polish-customer-left = Este panel se deja como está.
polish-customer-gloss = Este panel se pule con suavidad para dar brillo.
polish-customer-once = Este panel se pule una vez.
polish-customer-several = Este panel se pule en varios pasos, de grueso a fino.
polish-customer-sanded = Este panel se lija al agua y después se pule hasta que vuelve a estar limpio.
polish-customer-takes =
    Cuesta como máximo el { $share } % { $coat ->
        [paint] de la pintura
       *[clear] del barniz
    }.

polish-fate-gone = desaparecerá: { $defects }
polish-fate-less = se verá menos: { $defects }
polish-fate-stays = se quedará: { $defects }
polish-fate-cleaned = se limpiará antes: { $defects }
polish-fate-levelled = se nivelará a mano, si se pide: { $defects }
polish-fate-touch-up = se quedará hasta el retoque: { $defects }
polish-fate-painted = solo se arregla con pintura nueva: { $defects }

polish-defect-swirl = remolinos
polish-defect-wash-mark = marcas de lavado
polish-defect-haze = velo
polish-defect-hologram = hologramas
polish-defect-sand-scratch = marcas de lijado
polish-defect-deep-scratch = arañazo profundo
polish-defect-water-spot = manchas de agua
polish-defect-etching = corrosión del barniz
polish-defect-bird-etching = corrosión por excremento de ave
polish-defect-oxidation = oxidación
polish-defect-orange-peel = piel de naranja
polish-defect-overspray = niebla de pintura
polish-defect-tar = alquitrán
polish-defect-rail-dust = partículas de hierro
polish-defect-stone-chip = picotazo
polish-defect-clear-failure = barniz desprendido
polish-defect-solvent-pop = hervido
polish-defect-crater = cráteres
polish-defect-nib = mota de polvo
polish-defect-run = descuelgue

polish-helps-polish = puliendo se quita
polish-helps-reduce = puliendo se atenúa, y se quita donde se puede quitar suficiente barniz
polish-helps-decontaminate = está sobre la pintura y sale con la descontaminación antes de pulir
polish-helps-refinish = solo ayuda pintura nueva
polish-helps-touch-up = falta pintura; ayuda retocar o repintar, pulir no
polish-helps-level-locally = sobresale y se nivela a mano solo en su lugar

polish-drive-not-said = sin indicar
polish-drive-hand = a mano
polish-drive-orbital = máquina orbital
polish-drive-rotary = máquina rotativa

polish-removal-measured = medida
polish-removal-planned = prevista
polish-removal-told = indicada o estimada

polish-level-leave = Dejar
polish-level-gloss = Brillo
polish-level-one-step = Un paso
polish-level-two-step = Dos pasos
polish-level-sand-and-polish = Lijar y pulir

polish-verb-sand = lijar
polish-verb-cut = cortar
polish-verb-polish = pulir
polish-verb-finish = acabar
polish-kind-sanding = lijado
polish-kind-cutting = corte
polish-kind-polishing = pulido
polish-kind-finishing = acabado

polish-seam-levels = uno está previsto como «{ $one }», el otro como «{ $other }»
polish-seam-share = a un lado de la junta desaparecen { $more } puntos más de los defectos
polish-seam-advice = trabajar menos el mejor y más el otro donde lo permita su margen, o avisar al cliente

polish-advice-vibration = La vibración es de { $now } en el día; a partir de { $action } hay que actuar: repartir el trabajo a máquina, o no pasar de { $until } por persona con esta máquina. Las normas locales y los datos del fabricante van primero.
polish-advice-noise = El ruido es de { $now } en el día; a partir de 80 dB(A) se ofrece protección auditiva, a partir de 85 se lleva puesta.

polish-start-wet-2500 = Lijado al agua a mano, P2500
polish-start-wet-3000 = Lijado al agua a mano, P3000
polish-start-cutting = Pulimento de corte, boina dura
polish-start-medium = Pulimento medio, boina media
polish-start-fine = Pulimento fino, boina blanda
polish-start-block = taco de lijar
polish-start-firm = dura
polish-start-middle = media
polish-start-soft = blanda
polish-start-paper-2500 = P2500, al agua
polish-start-paper-3000 = P3000, al agua
polish-start-cutting-polish = pulimento de corte
polish-start-medium-polish = pulimento medio
polish-start-fine-polish = pulimento fino

polish-why-left-by-hand = Se deja como está, así elegido a mano; se pueden quitar { $allowed }.
polish-why-left = Se deja como está: se pueden quitar { $allowed }, y hasta el paso más suave podría quitar más.
polish-why-takes =
    Quita unos { $mean }, como máximo { $most }; se pueden quitar { $allowed }{ $rule ->
        [none] {""}
       *[other] {" "}({ $rule })
    }.
polish-done-step =
    { $step } ({ $passes ->
        [one] { $passes } pasada
       *[other] { $passes } pasadas
    })
polish-then = , luego{" "}
polish-done =
    { $level }: { $steps }{ $places ->
        [0] {""}
        [one] , antes con trabajo adicional en un lugar
       *[other] , antes con trabajo adicional en { $places } lugares
    }; { $time }.
polish-brings-gloss = Aquí no hay nada que corregir, por eso se pule solo para dar brillo.
polish-brings-gloss-as-chosen = Solo brillo, como se eligió; de paso desaparece un { $gone } % de los defectos, más o menos.
polish-brings-enough =
    Desaparece un { $gone } % de los defectos, más o menos; se quería el { $wanted } %; { $sure ->
        [yes] nada lo consigue más rápido
       *[no] con menos pasos o pasadas entre los que elegir puede encontrarse algo mejor
    }.
polish-brings-held = Desaparece un { $gone } % de los defectos, más o menos; se quería el { $wanted } %, pero el nivel está fijado a mano en «{ $level }».
polish-brings-less =
    Desaparece un { $gone } % de los defectos, más o menos; se quería el { $wanted } %{ $sure ->
        [yes] , pero estos pasos y este margen no permiten más
       *[no] ; con menos pasos o pasadas entre los que elegir puede encontrarse algo mejor
    }.

polish-stays-helps = { $defect }: { $helps }.
polish-stays-refused =
    { $defect }: { $gone ->
        [none] se queda
       *[other] desaparece un { $gone } %, más o menos, y el resto se queda
    }, porque este panel no se pule.
polish-stays-deep =
    { $defect }: { $gone ->
        [none] se queda
       *[other] desaparece un { $gone } %, más o menos, y el resto se queda
    }; puede tener { $depth } de hondo y solo se pueden quitar { $allowed }; { $help ->
        [paint] una corrosión tan profunda necesita pintura nueva
       *[touch-up] ayudaría más retocar o repintar
    }.
polish-stays-goal =
    { $defect }: { $gone ->
        [none] se queda
       *[other] desaparece un { $gone } %, más o menos, y el resto se queda
    }; quitarlo todo no hace falta para el objetivo, o estos pasos no pueden dentro del margen.
