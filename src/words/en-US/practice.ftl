practice-practises = { $person } practices.
practice-who-practises = Lay the order of coating, watch it played, and see what a good order does. Who practices?
practice-about-humid-day = Warm, humid air: the film has to be leveled much sooner.
practice-all-good = Nobody leaned, bumped or came too late.
practice-doing-level = leveling { $panel }
practice-hint-window-later = { $person }: the first window closes only at { $time }. A wet panel on the way there can be leveled before it.
practice-not-applied = this panel has to be applied before it can be leveled
