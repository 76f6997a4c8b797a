// Package model holds the nouns of a harness as a builder says them: termination,
// breakout, splice, wire, unit, branch, layer.
//
// A Harness is a value. An edit makes a new one and leaves the old one as it
// was, so that undo is the old value and a calculation may run beside the
// screen. Slices are never changed in place after a Harness has been handed on.
//
// What a key of the file leaves out stays out: an optional key is an Opt, an
// optional list is nil where it was not given. Nothing here computes a
// diameter; that is the work of calc.
package model
