cli-help-uk = Thu 26 November 2026; British names of panels
