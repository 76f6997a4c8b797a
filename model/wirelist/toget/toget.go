// Package toget tells a list of things to get from a list of wires.
package toget

import (
	"slices"
	"strings"

	"contralay/model/wirelist/column"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
)

// Who builds a loom writes beside its wires what he has to get. Where it comes from is a shop or a man, and no end of a wire.
//
//	Item        | Qty | From
//	heat shrink | 2 m | stores
//	lugs M6     | 12  | Ray

// Is reports whether the columns are those of such a list: one says how many, none holds cavities or ends with a cavity, and no row has
// two ends. A column of colours or of sizes is there only where the things have a heading of their own, "boot | black | 2".
func Is(cols []shape.Column, prof []column.Profile) bool {
	counted, things, values, near, far := false, false, false, false, false
	for i := range cols {
		c := &cols[i]
		if i >= len(prof) || prof[i].Filled == 0 {
			continue
		}
		if c.Given {
			return false
		}
		p := &prof[i]
		if isQuantity(c.Head) {
			if 2*p.Prose > p.Filled {
				return false
			}
			counted = true
			continue
		}
		if isThing(c.Head) && 2*p.Numbers < p.Filled {
			things = true
			continue
		}
		switch c.Field {
		case name.FieldColour, name.FieldGauge, name.FieldStripe, name.FieldFuse, name.FieldCurrent, name.FieldCable:
			values = true
		case name.FieldPin, name.FieldFromPin, name.FieldToPin, name.FieldRun, name.FieldVia, name.FieldDevicePin:
			return false
		case name.FieldFrom, name.FieldTo:
			if p.Ends > 0 || p.Most(p.Ids) { // "F3"
				return false
			}
			near, far = near || c.Field == name.FieldFrom, far || c.Field == name.FieldTo
		case name.FieldWire:
			if p.Most(p.Ids) {
				return false
			}
		}
	}
	return counted && (near || far) && !(near && far) && (things || !values)
}

// isQuantity reports whether a heading says how many: "Qty", "No. off", "Stk", "How many", "Quantité". From memory, no source.
func isQuantity(head string) bool {
	w := strings.Join(name.Words(table.Fold(name.WithoutBrackets(head))), " ")
	w = strings.TrimSuffix(strings.TrimPrefix(w, "total "), " needed")
	switch w {
	case "qty", "quantity", "quantities", "quant", "qnty", "pcs", "pieces", "no off", "nr off", "off", "how many", "how much", "amount",
		"number of", "number off", "no of", "no reqd", "no required", "needed", "required", "reqd", "count", "stk", "st", "stck", "stuck",
		"stueck", "stuckzahl", "menge", "anzahl", "wieviel", "wie viel", "quantite", "qte", "nombre", "combien", "cantidad", "cant",
		"cuantos", "quantita", "qta", "quanti", "aantal", "hoeveel", "hoeveelheid", "antal", "antall", "ilosc", "szt", "sztuk",
		"mnozstvi",
		"pocet", "ks", "quantidade", "qtd", "maara", "kpl", "mennyiseg", "db", "cantitate", "buc", "kolicina", "количество", "кол во":
		return true
	}
	return false
}

// isThing reports whether a heading is of things that are bought. From memory, no source.
func isThing(head string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(head)), func(w string) bool {
		switch w {
		case "item", "items", "part", "parts", "article", "articles", "material", "materials", "thing", "things", "stuff", "consumable",
			"consumables", "artikel", "teil", "teile", "piece", "pieces", "fourniture", "articulo", "articulos", "pieza", "piezas",
			"articolo", "articoli", "pezzo", "pezzi", "onderdeel", "onderdelen", "materiaal", "del", "dele", "delar", "czesc",
			"dil", "peca",
			"osa", "alkatresz":
			return true
		}
		return false
	})
}
