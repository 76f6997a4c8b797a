// Package bulk makes what a person adds to a harness as a whole: wires by the dozen, units,
// splices, colours. Each function is given a sheet and an ask, and returns a new harness with what
// it says of it; the old one stays as it was and is its own undo. What it cannot do it names, and
// then leaves that alone.
package bulk
