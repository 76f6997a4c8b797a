// Package shape draws a cross-section as what it looks like: discs in the colour of their
// insulation, units with their cores, tape, filler, the sheath.
//
// A section becomes a list of shapes in millimetres, from the back to the front. Two writers
// take the same list: Picture makes it into cells of a terminal, two pixels a cell, each of
// 4 × 4 samples; SVG into a drawing. The same input gives the same bytes.
//
// Words used in this package:
//
//   - pixel: the upper or the lower half of a cell
//   - sample: one of sixteen points of a pixel
//   - ground: what lies behind everything; void: what lies between the wires
//   - rim: the edge of a disc, which keeps it off the void
//   - number: the name of a disc, on the disc or round the drawing
//
// Numbers are written for the discs that ask for one. They lie on their discs where every one
// of a layer has room there; else round the drawing, which becomes smaller, in the order in
// which the discs lie. What has no number is listed in Canvas.NotShown.
package shape
