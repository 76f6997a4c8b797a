// Package bothends finds the column of a table that holds both ends of each wire in one cell, by its cells, and the column beside it that
// numbers those runs.
//
// It reads no cell: package shape parts the ends.
package bothends
