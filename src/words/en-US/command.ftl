command-film-um-does = Shows film in micrometers.
command-ml-does = Shows milliliters.
