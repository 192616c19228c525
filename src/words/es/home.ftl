home-language = Idioma
home-language-system = Como el sistema
