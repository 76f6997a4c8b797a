// Package huekey reads what a list says that its own short forms of colours mean: in a line, a sentence, a legend or by the letters of its
// cells.
package huekey
