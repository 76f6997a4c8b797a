// Package board draws a harness as it lies on its board: full size to work on, or at a scale for a page
// of the printed set. What lies where comes from calc/query/drawing; this package gives it lines,
// letters and words, and a frame with all that identifies it.
//
// Its words:
//
//   - world: the drawing itself, in mm of the paper.
//   - flag: the words that belong to a thing, clear of everything else; a thin line leads to it where
//     they had to move away.
//   - block: what stands beside the drawing: its title, its notes, the key of its signs, its pegs.
package board
