// Package power explains the figures that hang on current: what wires carry and may carry,
// heat, voltage drop, fuses and shorts, and buses.
package power
