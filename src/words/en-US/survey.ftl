survey-unit-hint = What the gauge shows; the job keeps micrometers
survey-import-read-as = Recognized: { $what }.
