unit-date-plain = { $month } { $day }, { $year }
