package saidonce

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/prose"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
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
// What stands below the last table and speaks of all wires, by a word for them, is of all tables too, whatever heading is above it. What
// speaks of some wires only, "all motor wires 16 AWG", is left to Overall.
type Told struct {
	says    draft.Default
	section int // the line of its heading; 0 where it speaks of all tables
}

// ToldIn finds such texts of a sheet. The one that Default found keeps the colour that it says too.
func ToldIn(im *draft.Importer, t *table.Table, blocks []*shape.Block, mark value.Mark) (all []Told) {
	section, last := 0, lastLine(blocks)
	for i, r := range t.Rows {
		if r.Level > 0 {
			section = 0
			if r.Level > 1 {
				section = r.Line
			}
		}
		if !shape.IsText(r) || isData(blocks, r.Line) {
			continue
		}
		_, text := r.Filled()
		if r.Line > last && saysWires(text) {
			section = 0
		}
		at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
		whole := text + goesOn(t.Rows[i:])
		if d, ok := sayingIn(whole, blocks[0].Lang, mark, blocks); ok {
			d.At = at
			all = append(all, Told{d, section})
			continue
		}
		if d, ok := withExceptions(whole, mark, blocks); ok && !saysUnlessNoted(whole) {
			if d.At = at; d.Size != "" {
				all = append(all, Told{d, section})
			}
			continue
		}
		if im.Default.Text != "" && im.Default.At == at {
			all = append(all, Told{im.Default, section})
		} else if size := sizeOfAll(whole, mark); size != "" {
			all = append(all, Told{draft.Default{Size: size, Text: text, Mark: mark, At: at}, section})
		} else if size := sizeAlone(text, mark); size != "" && r.Line < last {
			all = append(all, Told{draft.Default{Size: size, Text: text, Mark: mark, At: at}, section})
		} else if size := value.SizeWithin(text, mark); size != "" && saysUnlessNoted(text) {
			all = append(all, Told{draft.Default{Size: size, Text: text, Mark: mark, At: at}, section})
		}
	}
	return all
}

// ToldOnce takes the text that is nearest above a block, of those that speak of it, else the first below: one for the size and one for
// the colour, which may be the same.
func ToldOnce(im *draft.Importer, b *shape.Block, all []Told) {
	if len(all) == 0 || len(b.Rows) == 0 {
		return
	}
	var size, hue draft.Default
	for _, t := range all {
		if t.section != 0 && !standsBelow(b, t.section) {
			continue
		}
		above := t.says.At.Row < b.Rows[0].Line
		if t.says.Size != "" && (size.Text == "" || above) {
			size = t.says
		}
		if t.says.Colour != nil && (hue.Text == "" || above) {
			hue = t.says
		}
	}
	if size.Text == "" || size.At == hue.At {
		size, hue = hue, draft.Default{}
	}
	if im.Default.At != size.At || im.Hue.At != hue.At {
		SayDefault(im)
		im.Default, im.Hue = size, hue
	}
}

func hasLine(rows []table.Row, line int) bool {
	return slices.ContainsFunc(rows, func(r table.Row) bool { return r.Line == line })
}

// sizeOfAll is the size that a text gives to all wires: one piece of it between commas speaks of all of them, or is the size
// alone where another piece does. "" where none does.
func sizeOfAll(text string, mark value.Mark) string {
	if !strings.ContainsAny(text, "0123456789") || !saysAll(text) ||
		!saysUnlessNoted(text) && slices.ContainsFunc(name.Words(table.Fold(text)), words.IsExcept) {
		return ""
	}
	for piece := range strings.FieldsFuncSeq(strings.ReplaceAll(withoutStops(text), ". ", ";"), func(r rune) bool {
		return strings.ContainsRune(";()", r)
	}) {
		for part := range strings.SplitSeq(piece, ", ") {
			size := oneSize(part, mark)
			if size == "" {
				continue
			}
			others := slices.DeleteFunc(name.Words(table.Fold(part)), func(w string) bool {
				return saysAll(w) || words.IsOfAnyWire(w) || strings.Trim(w, "0123456789") == ""
			})
			if len(others) == 0 || ofEveryWire(part) {
				return size
			}
		}
	}
	return ""
}

// goesOn is the text in which a line goes on: "Sizes are 18 AWG throughout", "except for the motor leads." below it.
func goesOn(rows []table.Row) string {
	if len(rows) < 2 || !shape.IsText(rows[1]) || !prose.GoesOn(rows[0], rows[1]) {
		return ""
	}
	_, text := rows[1].Filled()
	return " " + text
}
