// Package leaders makes a table of lines that begin with the cavity of one connector each, with rows of dots before what wire it is, or
// with a letter for the cavity and nothing but a blank behind it.
//
//	Deck plug (9 way)
//	A  bow light ....... 16ga red
//	B  empty
//	C D  empty
//
// Lines that begin with a whole end, of several connectors, are parted at their dots: all of them together say what stands at each place.
//
// It is asked before anyone looks for tables.
package leaders
