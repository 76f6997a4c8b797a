// Package toldcells tells what the cells of lines without headings are, by all lines together: which of them are cavities, colours,
// sizes, far ends and names.
//
//	1 | white | left tail lamp | 1.5
//	2 | green | right tail lamp | 1.5
//	3 | empty
//
// It does not part lines in cells: its callers do.
package toldcells
