sheet-plate = License plate
sheet-why-proud = It stands proud; it can be leveled by hand if you ask.
