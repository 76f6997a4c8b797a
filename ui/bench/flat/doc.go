// Package flat is the screen of the harness as it lies on its board: a row for each branch, with the
// turn that it leaves by, and the whole of it drawn beside the rows.
package flat
