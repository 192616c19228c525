common-cancel = Cancelar
common-close = Cerrar
common-save = Guardar
common-open = Abrir
common-delete = Eliminar
common-done = Hecho
common-back = Atrás
common-next = Siguiente
common-yes = Sí
common-no = No
common-none = ninguno
common-left = izquierda
common-right = derecha
common-listed = { $most } y { $last }
common-not-reviewed = sin revisar
common-panels =
    { $count ->
        [one] 1 panel
       *[other] { $count } paneles
    }
