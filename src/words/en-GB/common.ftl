# Words that many places share.
common-cancel = Cancel
common-close = Close
common-save = Save
common-open = Open
common-done = Done
common-back = Back
common-none = none
common-left = left
common-right = right
# Names as they stand in a sentence: "a, b and c"; $most is "a, b".
common-listed = { $most } and { $last }
common-not-reviewed = not reviewed
