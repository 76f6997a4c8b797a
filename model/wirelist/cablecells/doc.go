// Package cablecells reads the columns about cables of one row: the name of a cable, of a pair or of a shield, a mark that says yes, the
// wires that go with it.
package cablecells
