// Package phase holds the phases of calc.Build, a folder each, in the order in which they
// fill in a sheet: wires, ends, bundle, length, over, current, threading. Planning runs
// beside the screen.
//
// The comment of each phase says what it reads of the sheet and what it alone writes, as
// lines "reads TYPE: FIELD, FIELD" and "writes TYPE: FIELD"; what a phase writes it may
// read without saying so. The test of this package holds these lines to the code. After a
// change, go test ./calc/phase -update writes them anew: read the difference, for a line
// that is new there is a new thing that the result hangs on (see calc/reuse.go).
package phase
