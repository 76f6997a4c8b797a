// Package endtext reads the texts that a list has in place of a connector and its cavity: a stud that several wires are taken to, an end
// that is left open.
//
// It joins nothing; package join does.
package endtext
