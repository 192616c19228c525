home-language = Idioma
home-language-system = Como el sistema
home-print-other = liberar espacio o guardar la hoja como PDF en Entrega
home-table-copied = La tabla está copiada; pegarla en una hoja de cálculo.
home-not-kept = No se pudieron guardar las preferencias: { $why }.
home-map-copied = El mapa está copiado.
home-no-place = no hay sitio para las páginas: { $why }
home-hint-work = El trabajo, en su orden
home-hint-work-text = Bajar aquí de Trabajo a Entrega. La marca dice cómo va cada parte; un triángulo indica algo pendiente.
home-hint-vehicle = El vehículo, desplegado
home-hint-vehicle-text = Pulsar un panel, o ir de panel en panel con las flechas.
home-hint-chosen = Lo elegido
home-hint-chosen-text = Aquí consta lo que se sabe de ello. En Inspección, escribir lo que muestra el medidor y pulsar Enter.
home-hint-who = Quién hace qué, cuándo
home-hint-who-text = El orden de los dos, planificado otra vez cuando algo cambia.
home-hint-name = Todo por su nombre
home-hint-name-text = Pulsar Ctrl+K y escribir una palabra de lo que se quiere. Así se encuentran también la ayuda y las preferencias.
home-next-hint = Siguiente pista
home-no-hints = No más pistas
home-hint-of = { $number } de { $all }
home-folder-unread = No se puede recorrer la carpeta: { $why }.
home-looking = Recorriendo la carpeta…
home-reading =
    { $all ->
        [one] Leyendo { $number } de 1 trabajo…
       *[other] Leyendo { $number } de { $all } trabajos…
    }
home-folder = Carpeta
home-look-through = Recorrer
home-look-through-hint = Enumera los trabajos de esta carpeta y de las que contiene
home-choose = Elegir…
home-look-for = Buscar una matrícula, un dueño, un vehículo, un día o un punto pendiente
home-say-folder = Decir en qué carpeta están los trabajos del taller. Se recuerda.
home-jobs = Trabajos
home-all-jobs = Todos los trabajos
home-visits-vehicle = Visitas de este vehículo
home-column-day = Día
home-column-plate = Matrícula
home-column-owner = Dueño
home-column-job = Trabajo y vehículo
home-column-open = Pendiente
home-job-unread = No se puede leer: { $why }.
home-visits = Visitas de { $plate }
home-none-yet = Aún no hay ningún trabajo en esta carpeta. Guardar uno aquí o elegir otra carpeta.
home-no-plate = Ningún trabajo de esta carpeta tiene esta matrícula.
home-no-words =
    { $all ->
        [one] El único trabajo no tiene estas palabras.
       *[other] Ninguno de { $all } trabajos tiene estas palabras.
    }
home-count =
    { $all ->
        [one] { $count } de 1 trabajo
       *[other] { $count } de { $all } trabajos
    }
home-count-more = { $count } de { $all } trabajos; { $more } más no se enumeran, usar subcarpetas
home-cannot-read = no se puede leer
home-put-away = Quita esto
home-bad-crew = este equipo no puede hacer ningún trabajo
home-unread = No se pudieron leer las preferencias, así que valen las habituales. { $why }
home-bad-size = un tamaño de { $value } % no es posible
home-preferences = Preferencias
home-at-once = Cada una vale al momento y se guarda en este equipo.
home-no-folder = No hay carpeta donde guardarlas, así que duran hasta cerrar la ventana.
home-units-names = Unidades y nombres
home-film = Capa
home-temperature = Temperatura
home-amounts = Cantidades
home-names-uk = Bonnet, boot, wing
home-names-us = Hood, trunk, fender
home-names = Nombres de paneles
home-files-keep = Los archivos guardan µm, °C y ml. Lo escrito vale en la unidad junto al campo.
home-looks = Aspecto
home-theme = Tema
home-size = Tamaño de todo
home-front-left = A la izquierda
home-front-up = Arriba
home-front = Frente del vehículo
home-large = Botones más grandes, para guantes y pantallas táctiles
home-shop = El taller
home-use-crew = Usar el equipo de este trabajo
home-none = Ninguno
home-choose-folder = Elegir la carpeta…
home-shop-name = Nombre del taller y cómo contactarlo, para las hojas
home-crew-sample = Los trabajos nuevos empiezan con el equipo del trabajo de muestra.
home-crew = Los trabajos nuevos empiezan con { $people }.
home-jobs-in = Los trabajos están en { $folder }.
home-jobs-nowhere = Aún no se conoce la carpeta de los trabajos.
home-no-viewer = No se pudo abrir ningún visor. Las páginas están en «{ $file }»; abrirlas e imprimirlas desde allí.
home-open-again = Abrir de nuevo
home-forget = Olvidar
home-forget-hint = Lo quita de esta lista; el archivo se queda
home-forget-job = Olvidar { $job }
home-table-panel = Panel
home-table-made-of = Sustrato
home-table-defects = Defectos
home-table-level = Nivel
home-table-minutes = Minutos
home-table-turn = Turno en el orden
home-table-mean = Capa media
home-table-least = Mínimo
home-table-may-go = Puede irse
home-table-needed = Necesario
home-table-will-go = Quita hasta
home-table-worker = Persona
home-table-what = Qué
home-table-layer = Capa
home-table-begins = Empieza
home-table-ends = Termina
home-everything = Todo lo que muestra el mapa
home-panels = Paneles
home-hint-invented = Es un vehículo inventado para probar cosas.
