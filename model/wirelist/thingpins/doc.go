// Package thingpins finds the two ends of the wires in a table that has a thing and its cavity in two columns and the cavity of the
// control unit in a third, whatever stands first in their headings, the device or the word for its cavities.
//
// It reads no cell; package settle asks it.
package thingpins
