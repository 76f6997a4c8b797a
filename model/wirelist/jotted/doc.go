// Package jotted makes a table of lines that a fitter jots down, in which nothing but blanks parts what a line says of a wire: the
// terminal it is on, its colour and size, what it is for, and behind an arrow where it goes.
//
//	KB2-1  red 16awg  lamp feed > lamp box +
//	KB2-2  16 AWG blk  lamp return -> lamp box -
//	KB2-3  empty
//
// Colours and sizes show by what they are; what is left before the arrow is the name. It is asked before anyone looks for tables.
package jotted
