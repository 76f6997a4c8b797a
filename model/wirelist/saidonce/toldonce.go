package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Told is a text of a sheet that says the size of all wires of some of its tables, once for the rows that say none. A text below a
// heading speaks of the tables below that heading; one below the title of the paper, or where there are no headings, of all.
//
//	## Winch plug
//
//	All 0.75 mm².
//
//	| Pin | Function | Colour |
//
// What speaks of some wires only, "all motor wires 16 AWG", is left to Overall.
type Told struct {
	says    draft.Default
	section int // the line of its heading; 0 where it speaks of all tables
}

// ToldIn finds such texts of a sheet. The one that Default found keeps the colour that it says too.
func ToldIn(im *draft.Importer, t *table.Table, mark value.Mark) (all []Told) {
	section := 0
	for _, r := range t.Rows {
		if r.Level > 0 {
			section = 0
			if r.Level > 1 {
				section = r.Line
			}
		}
		if !shape.IsText(r) {
			continue
		}
		_, text := r.Filled()
		at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
		if im.Default.Text != "" && im.Default.At == at {
			all = append(all, Told{im.Default, section})
		} else if size := sizeOfAll(text, mark); size != "" {
			all = append(all, Told{draft.Default{Size: size, Text: text, Mark: mark, At: at}, section})
		} else if size := value.SizeWithin(text, mark); size != "" && saysUnlessNoted(text) {
			all = append(all, Told{draft.Default{Size: size, Text: text, Mark: mark, At: at}, section})
		}
	}
	return all
}

// ToldOnce takes the text that is nearest above a block, of those that speak of it; else the first below.
func ToldOnce(im *draft.Importer, b *shape.Block, all []Told) {
	if len(all) == 0 || len(b.Rows) == 0 {
		return
	}
	var best draft.Default
	for _, t := range all {
		if (t.section == 0 || standsBelow(b, t.section)) &&
			(best.Text == "" || t.says.At.Row < b.Rows[0].Line) {
			best = t.says
		}
	}
	if im.Default.At != best.At {
		SayDefault(im)
		im.Default = best
	}
}

func hasLine(rows []table.Row, line int) bool {
	return slices.ContainsFunc(rows, func(r table.Row) bool { return r.Line == line })
}

// sizeOfAll is the size that a text gives to all wires: one piece of it between commas speaks of all of them, or is the size
// alone where another piece does. "" where none does.
func sizeOfAll(text string, mark value.Mark) string {
	if !strings.ContainsAny(text, "0123456789") || !saysAll(text) {
		return ""
	}
	for piece := range strings.FieldsFuncSeq(strings.ReplaceAll(text, ". ", ";"), func(r rune) bool {
		return strings.ContainsRune(";()", r)
	}) {
		for part := range strings.SplitSeq(piece, ", ") {
			size := value.SizeWithin(part, mark)
			if size == "" {
				continue
			}
			others := slices.DeleteFunc(name.Words(table.Fold(part)), func(w string) bool {
				return saysAll(w) || isOfAny(w) || strings.Trim(w, "0123456789") == ""
			})
			if len(others) == 0 {
				return size
			}
		}
	}
	return ""
}

// isOfAny reports whether a word of a text about a size leaves open which wires it is of. From memory, no source.
func isOfAny(w string) bool {
	switch w {
	case "wire", "wires", "wiring", "harness", "loom", "core", "cores", "conductor", "conductors", "lead", "leads", "cable", "cables", "is",
		"are", "in", "of", "the", "a", "size", "gauge", "awg", "ga", "mm2", "mm", "sq", "qmm", "silicone", "tinned", "stranded",
		"otherwise", "adern", "leitungen", "kabel", "sind", "fils", "sont", "en", "cavi", "fili", "sono", "da", "hilos", "son", "draden",
		"zijn", "ledningar", "ar", "przewody", "section", "de", "querschnitt":
		return true
	}
	return false
}
