package thingpins

import (
	"slices"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// Unit takes a column headed by a control unit for the far cavities of the wires, in a table of the cavities of things whose names stand in
// a column or two of their own, and that says no other end. The heading may have a word for cavities besides.
//
//	Sensor      | Connector | Pin | Signal | ECU
//	Water temp. | WT        | 1   | signal | A12
//	Oil press.  | OP        | B   | ground | A20
func Unit(cols []shape.Column, prof []column.Profile, isPin func(word string) bool) {
	b := shape.Block{Cols: cols}
	if b.Has(name.FieldFrom, name.FieldFromPin, name.FieldTo, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin) {
		return
	}
	l, things, pins, at := look{cols, prof, isPin}, false, 0, -1
	for i, c := range cols {
		of, ok := PinOf(c.Head, isPin)
		if !ok {
			of = c.Head
		}
		p := &prof[i]
		switch {
		case p.Filled == 0:
		case c.Given:
			return
		case c.Field == name.FieldPin && (of == "" || !isOneUnit(of)):
			pins++
		case isOneUnit(of) && p.Filled > 1 && p.All(p.Cavities) && (ok || p.Numbers == 0 || p.Unique()):
			if at >= 0 {
				return
			}
			at = i
		case c.Field == name.FieldConnector || l.headsThings(i):
			things = true
		}
	}
	if at < 0 || pins != 1 || !things || cols[at].Field != name.FieldKeep && cols[at].Field != name.FieldConnector &&
		cols[at].Field != name.FieldPin {
		return
	}
	of, ok := PinOf(cols[at].Head, isPin)
	if !ok {
		of = cols[at].Head
	}
	cols[at].Field, cols[at].Of = name.FieldToPin, of
	cols[at].Know()
}

// isOneUnit reports whether a text names a control unit, by a word that is not for any part: a "module" may be one of several.
func isOneUnit(text string) bool {
	const most = 3 // words (no source)
	w := name.Words(name.WithoutBrackets(table.Fold(text)))
	if len(w) == 0 || len(w) > most || name.IsRemark(w) || !words.HeadsUnit(w) {
		return false
	}
	return !slices.ContainsFunc(w, func(w string) bool {
		switch w {
		case "unit", "module", "controller", "box", "board", "modulo", "modul", "boitier", "unidad", "unidade", "enhet", "tarjeta", "placa",
			"scheda", "type", "version", "variant", "no", "number", "plug", "connector", "conn":
			return true
		}
		return false
	})
}
