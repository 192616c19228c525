correction-ultraviolet = With { $gone } gone up to { $factor } times as much ultraviolet light reaches the color (Beer-Lambert law, absorbance { $absorbance }, from memory).
correction-osha = In the United States (29 CFR 1910.95), in one day: noise dose at most { $dose } %; from 50 % on a hearing conservation program is due, 100 % is allowed. OSHA sets no value for vibration.
correction-polish-for-area = Polish for a square meter
correction-sandpaper-for-area = Sandpaper for a square meter
correction-cost-labour = Labor
correction-price-litre = A liter of polish
