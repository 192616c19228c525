home-language = Language
home-language-system = As the system says
