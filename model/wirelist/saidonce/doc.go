// Package saidonce finds what a list says once of many wires: the size or the colour of all of them, of those below a heading, or of
// those whose rows say none. Each takes the text and gives it to the rows that it speaks of; what a row says itself goes before it.
package saidonce
