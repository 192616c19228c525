job-experience-practised = practiced
