// Package settle says what each column of a block means, by its heading, by its cells and by the columns beside it. What it settles
// holds for every reading of the block; package reading tries those.
//
// A look is a block as it is looked at: its columns, and the profile of the cells of each. What one column turns out to be may say
// what another is, so the order in which settle.go asks matters; each question has a file of its own, with an example above it. What
// a person said of a column holds against all of them.
package settle
