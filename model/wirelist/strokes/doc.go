// Package strokes reads lines that join the pins of two parts by a drawn stroke, names outside and pins inside.
//
// Words. A stroke is a row of dashes, with the heads of an arrow or without. An end is what stands on one side of it: a pin, and
// the names of the pin. A run is lines with strokes that belong together, below the headings that name their parts.
//
//	    WINCH                     HELM
//	Signal    Pin              Pin  Signal
//	HOIST      4 -------------  7   UP
//	LOWER      5 -------------  8   DOWN
//
// It parts texts and makes cells; package table makes rows of a table of them. A stroke that bends, branches or meets another one is a
// drawing: its line stays text.
package strokes
