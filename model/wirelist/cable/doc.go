// Package cable reads what the cells and notes of a list say of cables: their names and kinds, marks that join rows, the wires that a note
// pairs a wire with.
//
// It makes no unit; package join does.
package cable
