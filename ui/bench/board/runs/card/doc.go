// Package card draws one thing to do at the board: what it is in letters that are read from across
// it, the lines that matter, and where in the layer or the batch one is.
//
// A card is drawn in the lines it is given. On a low screen the number stands in letters too, with
// its colour in words; what must be read is never below the rows. It knows text and codes of
// colour, nothing of a run.
package card
