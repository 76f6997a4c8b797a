// Package alike parts the lines of a list that are written in one way, each of which tells a wire: what parts the pieces of one
// parts those of all.
//
//	1 - green/red - 0.5 - LH indicator -> front plug 4
//	2 - green/white - 0.5 - RH indicator -> front plug 5
//
// A piece is a colour or a size by what it is, and a name, a far end or a remark by its place among the others. It says nothing of
// what stands above the lines; package block asks it.
package alike
