package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Wide is a text of a sheet that says a size of all wires, "All wires 0.75 mm² unless noted"; it could be that of the rows that say none.
// Below a heading that tables stand below as well, it speaks of those alone.
type Wide struct {
	says    draft.Overall
	section int // the line of its heading; 0 where it speaks of all tables
}

// Overall finds such texts of a sheet; the blocks are its tables of wires.
//
//	### Handset lead
//	| Pin | Signal |
//
//	### Motor lead
//	All 22 AWG, silicone.
//
//	| Pin | Signal |
func Overall(t *table.Table, blocks []*shape.Block, mark value.Mark) (all []Wide) {
	section := 0
	for _, r := range t.Rows {
		if r.Level > 0 {
			section = 0
			if r.Level > 1 && slices.ContainsFunc(blocks, func(b *shape.Block) bool { return standsBelow(b, r.Line) }) {
				section = r.Line
			}
		}
		if _, text := r.Filled(); shape.IsText(r) && saysAll(text) && !isData(blocks, r.Line) {
			d, but := withExceptions(text, mark, blocks)
			if _, ok := sayingIn(text, blocks[0].Lang, mark, blocks); ok || but && d.Size != "" {
				continue // its rows are known: ToldIn gives them their sizes
			}
			if size := oneSize(text, mark); but || value.SizeWithin(text, mark) != "" {
				at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
				all = append(all, Wide{draft.Overall{Size: size, Text: text, At: at}, section})
			}
		}
	}
	return all
}

// OverallOf takes the first of these texts that speaks of a block: one of its own section before one of the sheet.
func OverallOf(im *draft.Importer, b *shape.Block, all []Wide) {
	var best *Wide
	for i := range all {
		if w := &all[i]; w.section == 0 && best == nil || w.section > 0 && standsBelow(b, w.section) && (best == nil || best.section == 0) {
			best = w
		}
	}
	switch {
	case best == nil:
		SayOverall(im)
		im.Overall = draft.Overall{}
	case im.Overall.At != best.says.At:
		SayOverall(im)
		im.Overall = best.says
	}
}

// standsBelow reports whether a block stands below the heading of a line.
func standsBelow(b *shape.Block, line int) bool {
	return hasLine(b.Path, line) || hasLine(b.Titles, line)
}

// saysAll reports whether a text speaks of all wires.
func saysAll(text string) bool {
	return slices.ContainsFunc(name.Words(table.Fold(text)), func(w string) bool {
		switch w {
		case "all", "everything", "everywhere", "throughout", "alle", "alles", "uberall", "tous", "toutes", "partout", "todos",
			"todas", "tutti", "each", "every", "jede", "jeder", "chaque", "cada", "ogni", "elke", "varje", "kazdy",
			"tutte", "wszystkie", "alla", "samtliga", "aller", "allen", "todo", "wszystkich", "vsechny", "kaikki", "alt", "tout",
			"toute", "whole", "ganze", "gesamte":
			return true
		}
		return false
	})
}

// TakeOverall keeps the size that a text says of all wires in the note of a row that says none: which wires it means is for a
// person to say.
func TakeOverall(im *draft.Importer, it *draft.Item) {
	if im.Overall.Text != "" && it.Gauge.Size == "" && it.Gauge.Spec == "" && !it.Drain && (it.State == name.Used ||
		it.State == name.Spare) {
		said := "a text of the list says " + im.Overall.Size + " of all wires"
		if im.Overall.Size == "" {
			said = "the list says: " + strings.TrimSpace(im.Overall.Text)
		}
		it.Notes = append(it.Notes, said)
		im.Overall.Rows = append(im.Overall.Rows, table.Row{Line: it.Place.Row})
	}
}

// SayOverall names the rows that took the size of all wires.
func SayOverall(im *draft.Importer) {
	if len(im.Overall.Rows) > 0 {
		im.Doubt("a size that a text says of all wires", im.Overall.At, strings.TrimSpace(im.Overall.Text),
			"kept in the notes of the rows that say none", im.Overall.Rows)
	}
}

// TakeNamedSize gives a row the size that its name says with its unit, "Battery feed 4 mm2", where the table has no column for it.
func TakeNamedSize(im *draft.Importer, b *shape.Block, it *draft.Item) {
	if it.Gauge.Size != "" || it.Gauge.Spec != "" || it.Signal == "" || b.Has(name.FieldGauge) {
		return
	}
	if size := value.SizeWithin(it.Signal, b.Mark); size != "" {
		it.Gauge.Size = size
		im.Say(report.Note, "a size in the name", it.Place, it.Signal, "taken as the size of the wire")
	}
}
