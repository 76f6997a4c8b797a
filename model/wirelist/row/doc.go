// Package row reads one row of a block: its ends, values and notes.
package row
