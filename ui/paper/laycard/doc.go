// Package laycard prints how the branches of a harness are laid, from the paper alone.
//
// A branch of more than twenty pieces has a page for each of its layers (thin inner layers share
// one): the picture of the bundle so far, with the numbers of that layer alone, and its order as one
// column. A branch of fewer pieces is a block of a page with all of its layers. One of a single layer
// of five pieces or fewer is a row of the table of legs. The pages after that hold what is made up
// first, the splices, each drawn, and what is threaded on, as a matrix.
//
// CardOf gathers what is printed of a branch from the sheet; section draws it; Pages gives all of it
// as blocks of pages. A sentence stands on a card only where it holds, and what holds for the whole
// set is said once (Once).
package laycard
