# Why the air stops the coating, each a whole sentence. $margin and $least are figures in kelvin.
coat-dew-near = The surface is only { $margin } K above the dew point; at least { $least } K is needed, or water may settle under the coating. Warm the vehicle or dry the air.
coat-split = The warmest panel turns before the coldest is ready; let the vehicle stand until it is evenly warm.
# $temp, $least and $most are temperatures with their unit.
coat-air-too-cold = The air is { $temp }; the product needs at least { $least }.
coat-air-too-warm = The air is { $temp }; the product allows at most { $most }.
coat-surface-too-cold = The surface is { $temp }; the product needs at least { $least }.
coat-surface-too-warm = The surface is { $temp }; the product allows at most { $most }.
coat-warmest-too-warm = The warmest surface is { $temp }; the product allows at most { $most }. Let it cool in the shade.
# $humidity, $least and $most are humidities with their unit.
coat-too-dry = The air is too dry: { $humidity } humidity; the product needs at least { $least }.
coat-too-moist = The air is too moist: { $humidity } humidity; the product allows at most { $most }.
# What to mind. $from and $to are whole seconds.
coat-turns-sooner = Warm or moist: the coating turns sooner, so level after { $from } to { $to } s.
coat-turns-later = Cool or dry: the coating turns later, so level after { $from } to { $to } s.
# Temperatures and humidities as figures.
coat-comfort = Most coatings are easiest at { $cold } to { $warm } °C and { $dry } to { $moist } % humidity (trade practice); try a small place first.
coat-surface-apart = Surface and air differ by more than 5 K; let the vehicle stand until they are closer.
coat-window-narrow = The window is under half a minute wide; take smaller pieces at a time.
# How the window is reckoned. $air and $surface are temperatures with their unit, $humidity a humidity with its unit, $times a figure.
coat-basis-patch = Counts from the patch tried today at { $air } air, { $humidity } humidity and { $surface } surface.
coat-basis-label = Counts from the window of the label at { $temp } and { $humidity } humidity.
coat-by-warmth = A surface of 30 instead of 20 °C makes it { $times } times as long.
coat-by-moisture = Twice the water in the air makes it { $times } times as long.
coat-held-between = It is never taken shorter than { $least } times or longer than { $most } times the window it counts from.
coat-not-published = That warmth and moisture shorten it is published; by how much is our estimate. A patch tried on the vehicle is better.
# $later and $sooner are figures, $up and $down whole per cent. "Still wet" and "dragging" as in bay-feel-wet and bay-feel-dragging.
coat-feel-rule = What you tap moves the windows that follow: still wet later, dragging sooner, by { $up } % or { $down } % at most.
# What the shop's coating is called where it has no name of its own.
coat-usual-name = Coating
# What the vehicle may do from a moment on.
coat-may-drive = It may be driven; longer is better.
coat-may-rain = Rain does no harm any more; dry it if it gets wet earlier.
coat-no-dust = It no longer picks up dust more than usual.
coat-may-wash = It may be washed; no strong chemicals until then.
coat-full-hardness = It has its full hardness.
coat-droppings = Bird droppings before the first wash: wet them with a few sprays of dilute rinseless wash, let it work, lift them off with a soft towel, and do not rub.
