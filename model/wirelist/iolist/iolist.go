// Package iolist reads the lists of the inputs and outputs of a controller: cards with their channels, what each serves, and the terminal
// where its wire goes.
package iolist

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Headed gives the columns of such a list the headings that others know, and each row its card: the wire runs from the channel of the card
// to the terminal, the device is what it serves.
//
//	Module    | Ch | Field device | Function   | Terminal
//	D1 (8 DI) | 0  | S11          | Hoist up   | X7:1
//	          | 1  | S12          | Hoist down | X7:2
//	D2 (8 DO) | 0  | K11          | Brake      | X8:1
//
// The cells say so: the channels of each card differ, those of the devices are names without cavities, and each terminal is a whole end.
func Headed(h shape.Headings, head table.Row, rows []table.Row) (table.Row, []table.Row) {
	ids := slices.ContainsFunc(head.Cells, func(c string) bool {
		f := strings.Join(name.Words(table.Fold(c)), " ")
		return f != "tag" && h.Words[f].Field == name.FieldWire
	})
	card, channel, terminal, device, text := -1, -1, -1, -1, -1
	for i, c := range head.Cells {
		switch kind := kindOf(c); {
		case kind == "tag" && ids && device < 0:
			device = i // the wires have numbers of their own
		case kind == "" && terminal < 0 && h.Words[strings.Join(name.Words(table.Fold(c)), " ")].Field == name.FieldTo:
			terminal = i // "Goes to"
		case kind == "", kind == "tag" && !ids:
		case kind == "terminal" && channel < 0 && card >= 0 && i == card+1 && !areWhole(rows, i):
			channel = i // those of the card itself
		case kind == "card" && card < 0:
			card = i
		case kind == "channel" && channel < 0:
			channel = i
		case kind == "terminal" && terminal < 0:
			terminal = i
		case kind == "device" && device < 0:
			device = i
		case kind == "text" && text < 0:
			text = i
		default:
			return head, rows // two of a kind
		}
	}
	if card < 0 || channel != card+1 || terminal < 0 || !areWhole(rows, terminal) || device >= 0 && !areNames(rows, device) {
		return head, rows
	}
	filled, ok := withCards(rows, card, channel)
	if !ok {
		return head, rows
	}
	head.Cells = slices.Clone(head.Cells)
	head.Cells[card], head.Cells[channel], head.Cells[terminal] = "Connector", "Pin", "To"
	if device >= 0 {
		head.Cells[device] = "Field device"
	}
	if text >= 0 {
		head.Cells[text] = "Signal"
	}
	return head, filled
}

// kindOf is what a heading of such a list heads; "" for what the others know. From memory, no source.
func kindOf(head string) string {
	w := name.Words(table.Fold(head))
	if len(w) == 0 || len(w) > 2 {
		return ""
	}
	switch strings.Join(w, " ") {
	case "card", "module", "slot", "rack", "io card", "plc card", "karte", "baugruppe", "modul", "carte", "scheda", "modulo", "tarjeta",
		"kaart", "kort":
		return "card"
	case "ch", "channel", "channel no", "chan", "kanal", "kan", "canal", "voie", "canale", "kanaal", "bit":
		return "channel"
	case "terminal", "term", "klemme", "borne", "morsetto", "borna", "borne no", "klem", "plint", "strip terminal",
		"terminal strip", "strip", "klemmleiste", "klemmenleiste", "bornier", "morsettiera", "klemmenstrook":
		return "terminal"
	case "device", "field device", "gerat", "betriebsmittel", "bmk", "appareil", "apparecchio", "aparato", "apparaat", "sensor", "aktor":
		return "device"
	case "tag", "tag no":
		return "tag"
	case "text", "texte", "testo", "texto", "tekst":
		return "text"
	}
	return ""
}

// withCards are the rows with the card in each; ok where every card has a name with a digit or a letter, and no card has a channel twice.
func withCards(rows []table.Row, card, channel int) (filled []table.Row, ok bool) {
	filled = slices.Clone(rows)
	of, n := "", 0
	seen := map[string]bool{}
	for k, r := range rows {
		if shape.IsText(r) || channel >= len(r.Cells) || value.IsNothing(r.Cells[channel]) {
			continue
		}
		if c := r.Cells[card]; !value.IsNothing(c) && !value.IsDitto(c) {
			of = c
		}
		key := of + "\x00" + r.Cells[channel]
		if of == "" || seen[key] || len(r.Cells[channel]) > 4 {
			return nil, false
		}
		seen[key] = true
		filled[k].Cells = slices.Clone(r.Cells)
		filled[k].Cells[card] = of
		n++
	}
	return filled, n > 2
}

// areWhole reports whether each cell of a column that says something is a connector and its cavity.
func areWhole(rows []table.Row, i int) bool {
	n := 0
	for _, r := range rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || shape.IsText(r) {
			continue
		}
		strip, pin, ok := name.SplitEnd(r.Cells[i])
		if !ok || !name.IsDesignator(strip) || !name.IsCavity(pin) {
			return false
		}
		n++
	}
	return n > 2
}

// areNames reports whether no cell of a column is an end with its cavity.
func areNames(rows []table.Row, i int) bool {
	return !slices.ContainsFunc(rows, func(r table.Row) bool {
		if i >= len(r.Cells) || shape.IsText(r) {
			return false
		}
		_, _, ok := name.SplitEnd(r.Cells[i])
		return ok
	})
}
