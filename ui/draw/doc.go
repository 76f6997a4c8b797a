// Package draw makes the cross-section of a laid branch into terminal cells.
//
// A Section is what is to be seen: discs in millimetres, the diameter over them
// and the end they are seen from. Picture turns it into a Canvas, a grid of
// exactly h lines of w cells. The same input gives the same bytes: there is no
// clock, no environment and no state here.
//
// Words used in this package:
//
//   - disc: the cross-section of one component of a layer
//   - core: the one to three characters that name a disc on the map
//   - mark: what shows a state in plain text: [12] selected, (12) its
//     neighbour, !12 flagged, *12 tracer; o is a filler
//   - boundary: the dotted line round the bundle; a line of : is the sheath
//   - ground: the background colour of a cell
//   - ink: a colour by its meaning; a Palette turns it into a colour of 16, of
//     256 or of all
//
// The map is made of labels first: it is complete in ASCII without colour.
// Colour repeats what the marks already say. Two labels that
// cannot both be written become one +, and the ids are listed in
// Canvas.NotShown; nothing is overprinted.
//
// Marks never move a label that the cursor passes: cores are laid out without
// regard to what is selected, with a blank cell kept on each side, and the
// brackets are written into those blanks.
//
// The package also holds the text helpers of every screen: Width, Cut, Pad and
// Columns. It does not know the nouns of a harness, it does not lay anything out
// in millimetres, and it does not write files.
package draw
