// Package toldpairs finds the sentences beside a table that say of some of its wires, by their ids, their names or their cavities,
// that they are twisted together.
//
// It makes no unit; package join does.
package toldpairs
