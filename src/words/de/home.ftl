home-language = Sprache
home-language-system = Wie das System
