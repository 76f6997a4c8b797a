// Package gaprows makes tables of lines of text in two columns below headings that are known.
//
//	Pin   Signal          Pin | Signal
//	1     Up        ->    1   | Up
//	2     Down            2   | Down
//
// Texts in three columns and more are read so where they are taken for lines; of two columns the lines alone do not say it, as a point
// of a list and its text look the same. A paragraph of which one line is none stays as it is.
package gaprows
