// Package settle says what each column of a block means, by its heading, by its cells and by the columns beside it. What it settles
// holds for every reading of the block; package reading tries those.
package settle
