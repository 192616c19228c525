# Handover: sheets for customer, crew and shop.
handover-customer = Customer sheet
handover-crew = Crew cards
handover-record = Technical record
# The same in the name of a file: “JOB, customer sheet.pdf”
handover-file-customer = customer sheet
handover-file-crew = crew cards
handover-file-record = technical record
handover-customer-does = What was found, what will be done and what won’t, care afterwards. No notes of the shop.
handover-crew-does = One for each of the crew, to be read from two metres.
handover-record-does = Everything that a later visit needs.
handover-nothing-read = No panel has been read yet, so the sheets have little to say. Read the vehicle first.
handover-pages = Pages
# $what: characters and where they stand
handover-not-printed = Can’t be printed: { $what }
handover-save-pdf = Save as PDF…
handover-save-web-page = Save as web page…
handover-save-list = Save the order as a list…
handover-save-calendar = Save care times for a calendar…
handover-save-drawing = Save the map as a drawing…
handover-save-picture = Save the map as a picture…
handover-how = How it is written
handover-paper = Paper
handover-paper-letter = Letter
handover-days = Dates written as
# The same day in the two orders of day and month
handover-day-first = 26 November 2026
handover-month-first = November 26, 2026
handover-costs = Tell what the polishing costs
handover-to-watch = For the customer to watch
handover-big-screen-does = The plan over the vehicle, in half a minute and the whole window.
handover-big-screen = Show on the big screen
handover-day-of-work = Day of the work
handover-care-times = With the day of the work care times have real days.
handover-done-hour = Done at, hour
handover-done-minute = and minute

# The big screen; the customer watches.
handover-escape = Escape
handover-play-again = Play again
# $moment, $takes: times on a clock that begins at 0:00
handover-moment = { $moment } of { $takes }
handover-no-order = There is no order of coating yet.
handover-applies = { $who } applies the coating: { $panel }
handover-levels = { $who } wipes it level: { $panel }
handover-goes-on = { $who } goes to the next panel, in { $time }
handover-is-done = { $who } is done

# What happened to a file.
handover-written = Written: { $path }
handover-report-fault = report this as a fault of the program
handover-font-lacks = the font of the sheets lacks some characters: { $places }
handover-write-in-letters = write these texts in Latin, Greek or Cyrillic letters, or save a web page
handover-enter-day = enter the day of the work in Job
handover-no-day = the job has no day, so there is nothing to count the care times from
# For those who have a page read to them. $words: all that stands on it
handover-page = { $title }, page { $number } of { $count }: { $words }
