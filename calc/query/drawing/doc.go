// Package drawing lays a finished sheet flat at full size: where every branch, end, breakout,
// splice, label and peg lies on the board, in mm from the datum, and what a person has to know
// about it. The geometry is that of calc/formula/outline; how it looks is the matter of
// ui/paper.
//
// Its words:
//
//   - station: mm along a branch from its from end, as the file has it.
//   - break: a stretch of a branch that is left out of the drawing, because the board or a page
//     has no room for it. Every station is still that of the branch.
//   - width: what a branch takes on the board, over all that covers it.
package drawing
