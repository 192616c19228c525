edit-what-can-be-done = A panel can be cut in two, joined with its neighbor, left out of the work, or said to be made of something else. Below the map, stances can be moved.
edit-no-cut-on-centreline = It lies across the centerline, where a cut would not be the same on both sides.
edit-join-neighbour = Join with a neighbor
edit-neighbour = Neighbor
edit-from-centreline = From the centerline
edit-across-centreline = { $panel } lies across the centerline and can't be cut
