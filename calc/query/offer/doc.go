// Package offer answers what else could be done with a finished sheet: thinner or thicker
// wires, legs like another, places for spares.
package offer
