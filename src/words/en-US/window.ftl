window-vehicle-name = Name, for example “Sedan with two-piece doors”
