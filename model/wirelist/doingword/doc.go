// Package doingword holds the words that say in many languages what is done with a wire or its end, and where a loose end lies. Common
// practice and common words, no source.
//
// It knows words alone; what a cell of them means is said where the cell is read.
package doingword
