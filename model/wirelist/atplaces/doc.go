// Package atplaces reads tables of two columns, each headed by the place that the ends below it are at.
//
// Words. An end is told where a cell holds its pin, a sign, its name and its colour; it is bare where a cell holds the name of the pin
// alone, behind an arrow or not.
//
//	Terminal at Gauge      Terminal at Logger
//	1 - Supply (Brown)     ->V+
//	2 - Return (Blue)      ->0V
//
// It makes rows with headings of their own, before anyone looks for tables. A bare end below a heading that says what of the wire stands
// there, or where it goes, is none of a place: such a table stays as it is.
package atplaces
