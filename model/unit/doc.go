// Package unit holds the quantities a harness is described in.
//
// A quantity is a float64 with a name: the name says the unit, so that a
// millimetre is never added to a volt. Reading what a person typed and printing
// what a person reads happen here too, at the edge; the packages of calc only
// ever see quantities.
//
// The package converts nothing silently: values in memory and in files are
// always mm, A, V, °C and g. Inch is a way to print and to type, no more.
package unit
