// Package value reads the values in a cell: gauges, colours, currents, lengths, numbers.
package value
