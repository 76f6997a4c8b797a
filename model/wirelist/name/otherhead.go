package name

import (
	"slices"
	"strings"

	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/table"
)

// IsOtherHead reports whether a cell is a heading of a table that is no list of wires, as stand
// beside one: parts, prices, distances, figures, changes.
func IsOtherHead(cell string) bool {
	if len(cell) > 48 {
		return false
	}
	for _, w := range Words(table.Fold(cell)) {
		if otherHead(w) {
			return true
		}
	}
	return false
}

// OtherKind is what a table is of by one word of a heading or a title: "parts", "distances", "fuses",
// "counts", "figures", "changes", "connectors"; "" where the word says nothing.
func OtherKind(folded string) string {
	switch folded {
	case "qty", "quantity", "quantities", "pcs", "price", "cost", "supplier", "vendor", "manufacturer", "mfr", "mpn", "sku", "parts", "bom",
		"part", "stock", "order", "ordered", "menge", "anzahl", "stuck", "stueck", "preis", "lieferant", "bestellnummer", "quantite", "qte",
		"prix", "fournisseur", "cantidad", "cant", "precio", "proveedor", "quantita", "prezzo", "fornitore", "ilosc", "cena", "dostawca",
		"aantal", "prijs", "leverancier", "antal", "pris", "mnozstvi", "quantidade", "preco", "stk", "szt", "qta":
		return "parts"
	case "distance", "distances", "entfernung", "abstand", "distancia", "distanza", "odleglosc", "afstand":
		return "distances"
	case "fuse", "fuses", "fusebox", "breakers", "sicherungen", "sicherung", "fusibles", "fusibili", "bezpieczniki", "zekeringen",
		"sikring", "sikringer", "sakringar", "pojistky", "biztositekok", "sulakkeet", "предохранители":
		return "fuses"
	case "count", "counts", "totals":
		return "counts"
	case "ohms", "ohm", "degrees", "temperature", "volts", "resistance", "rpm", "hours", "psi", "bar", "hz", "kpa":
		return "figures"
	case "date", "rev", "revision", "change", "changes", "author", "changed", "datum", "fecha":
		return "changes"
	case "ways", "polzahl", "polzahlen":
		return "connectors"
	}
	return ""
}

func otherHead(w string) bool {
	if OtherKind(w) != "" {
		return true
	}
	switch w {
	case "item", "maker", "model", "benefit", "benefits", "detail", "details", "value", "values", "link", "url", "step", "task",
		"tool", "tools",
		"owner", "status", "option", "options", "feature", "features", "parameter", "unit", "units", "direction", "type", "category",
		"reason", "why", "what", "who", "when", "symptom", "cause", "fix", "problem", "solution", "result", "check", "rating",
		"wert", "werte", "valeur", "valeurs", "valor", "valores", "valore", "valori", "waarde", "hodnota", "wartosc":
		return true
	}
	return false
}

// IsGeneric reports whether a title says what kind of table follows, and not of which connector: "Pins",
// "Pinout", "Wiring table".
func IsGeneric(title string) bool {
	all := Words(strings.TrimSuffix(table.Fold(title), " by plug")) // "pinouts by plug"
	if n := len(all); n > 1 && (all[n-1] == "notes" || all[n-1] == "remarks") {
		return true // "Interface notes" are of the paper
	}
	if prose.IsGreeting(title) {
		return true
	}
	if len(all) == 2 && IsConnectorWord(all[0]) && strings.Trim(all[1], "0123456789") == "" {
		return false // "Connector 1" is what that one is called
	}
	if n := slices.IndexFunc(all, func(w string) bool { return w == "per" || w == "each" || w == "every" || w == "all" }); n > 0 {
		all = all[:n] // "connections per string", "wires for all strings"
	}
	for _, w := range all {
		switch strings.TrimRight(w, "0123456789") {
		case "", "shared", "common", "for", "diagram", "pin", "pins", "pinout", "pinouts", "wiring", "wires", "wire",
			"connections", "connection", "connector", "connectors", "table", "list", "assignment", "assignments", "mapping", "map",
			"cable", "cables", "schedule", "harness", "chart", "details",
			"notes", "note", "remarks", "support", "supported", "revision", "revisions", "features", "usage", "setup", "introduction",
			"requirements", "resources", "information", "general", "about", "description", "getting",
			"started", "the", "of", "all", "and", "circuits", "circuit", "signals", "cut", "overview", "layout", "definition",
			"definitions", "electrical", "elektrischer", "elektrische", "anschluss", "anschlusse", "anschlussbelegung", "raccordement",
			"pinbelegung", "belegung", "verdrahtung", "leitungen", "kabel", "stecker", "brochage", "cablage", "tabla", "cableado",
			"electrique", "conexion", "electrica", "collegamento", "elettrico", "aansluiting", "elektrisk", "conexiones", "collegamenti":
		default:
			return false
		}
	}
	return len(all) > 0
}
