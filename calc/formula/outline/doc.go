// Package outline lays a tree of bundles flat, at full size, as a drawing shows it on a board.
//
// Its words:
//
//   - tree: runs of a known length between places, and never two ways from one place to another.
//   - run: one length of bundle. It may have bends, and it may be told how it leaves its place.
//   - datum: the place that the drawing starts from, at (0, 0). Every run has a near end, which is
//     the one nearer the datum, and a far end.
//   - turn: how far a run leaves the direction of what its near end is reached by; + is to the
//     left, seen from above the board. At the datum that direction is to the right, along x.
//   - centre line: the pieces of a run, straights and arcs, from its From to its To. Their lengths
//     add up to that of the run, to a hundredth of a millimetre and better, however it bends.
//   - room: what runs keep from each other where that can be had.
//
// x runs to the right and y up, in mm; headings are in degrees from x, counter-clockwise, so
// that + is left as in the turns.
//
// Where nothing is told, runs are laid by rule: at each place the way on that is longest goes
// straight on, and the others leave to both sides in turn, at 45 degrees where there is room.
// Among straight runs none cross then: where no angle keeps them apart each side way gets a sector
// of its own instead, inside the sector of what it leaves, and sectors do not meet. What is told
// is drawn as told; what then crosses is named.
//
// The package knows no harness, no paper and no text but the size of its frame: it places frames
// of text clear of runs and of each other, and pegs beside the runs.
package outline
