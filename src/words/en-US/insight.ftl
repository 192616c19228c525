insight-high = Reach the roof from a step or platform, not from a rocker panel or tire; one keeps the floor clear.
insight-single-stage = Single-stage paint: color on the pad is the paint itself. Keep its pads and towels apart, and stay with the finest step that works.
insight-learner-levels = { $learner } levels and still learns it, while { $other } only applies. A mistake in leveling stays; one in applying is leveled away.
insight-chalks-do = rub a hidden place with polish on a white cloth; color on it means single-stage, then note it under Paint
insight-mains = Corded machines: behind a ground-fault circuit interrupter, cords off the wet floor and over the shoulder, never in the wet bay.
insight-sand = Sand wet and wipe the slurry off before it dries: sanding dust is not to be breathed. No corded machine where it is wet.
