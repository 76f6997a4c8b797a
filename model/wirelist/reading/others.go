package reading

import (
	"slices"
	"strings"

	"contralay/model/wirelist/doubt"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/signoff"
	"contralay/model/wirelist/table"
)

// What stands beside lists of wires and is none. No wire comes of it, and the report says what it was
// taken for.

// others are the readings of a block that hold no wire.
//
//	Part Number | Description | Qty        From | To      | Distance        Nr | A  | type
//	RB-16-P     | Pin, nickel | 6          Mast | Battery | 4 m             F2 | 80 | blade
func (l *look) others() []Reading {
	text := Reading{Kind: "a text or a table of something else", Score: 0.05, Block: l.Block(l.Cols),
		Because: []string{"no column holds cavities, ends or ids of wires"}}
	if rows := doubt.LooksLikeWires(l.Src.Rows, l.Prof); rows != nil && !l.Src.Listed && !l.Src.Runs {
		text.Doubts = []doubt.Doubt{{Rule: "a table that is not read has something of wires",
			Did:  "left out; say what its columns mean if it has wires",
			Rows: rows}}
	}
	of := l.kindByWords()
	if of == "" || l.Src.Listed || l.Src.Runs {
		return []Reading{text}
	}
	says := map[string]string{"parts": "a list of parts", "distances": "distances between places", "fuses": "a table of fuses",
		"counts": "a table of counts", "figures": "a table of figures", "changes": "a table of changes",
		"connectors": "a list of connectors"}[of]
	score := 0.3
	if n := len(l.Src.Head); of == "changes" && n > 0 && signoff.IsRevisionHead(l.Src.Head[n-1]) && !l.TellsWires() {
		score = 2
	}
	known := 0
	for i, c := range l.Cols {
		if c.Known() && l.Prof[i].Filled > 0 && slices.Contains([]name.Field{name.FieldSignal, name.FieldColour,
			name.FieldWire, name.FieldTo, name.FieldFrom}, c.Field) {
			known++
		}
	}
	if known == 0 {
		score = 0.9
	}
	if known == 0 && of == "counts" {
		score = 2
	}
	if l.Holds(l.Cols, name.FieldPin, name.FieldFrom, name.FieldTo, name.FieldFromPin, name.FieldRun) < 0 {
		score = max(score, 0.7)
	}
	return []Reading{{Kind: says, Score: score, Block: l.Block(l.Cols), Because: []string{"its headings"}}, text}
}

// filledCells counts the cells of a row with something in them.
func filledCells(r table.Row) int {
	n, _ := r.Filled()
	return n
}

// kindByWords is what headings and title say that the block is of; a word of a heading counts before one of the
// title.
func (l *look) kindByWords() string {
	for _, h := range l.Src.Head {
		for i, c := range h.Cells {
			if i < len(l.Prof) && l.Prof[i].Filled == 0 {
				continue
			}
			for _, w := range name.Words(table.Fold(c)) {
				if of := name.OtherKind(w); of != "" && !(of == "fuses" && filledCells(h) > 4) && !(of == "parts" && w == "part") {
					return of
				}
			}
		}
	}
	for _, w := range name.Words(table.Fold(l.Src.Table.Sheet)) {
		if of := name.OtherKind(w); of == "parts" || of == "fuses" || of == "distances" {
			return of
		}
	}
	for _, t := range l.Src.Titles {
		if _, text := t.Filled(); t.Level > 0 || len(strings.Fields(text)) < 5 && !strings.Contains(text, "--") {
			for _, w := range name.Words(table.Fold(text)) {
				if of := name.OtherKind(w); of == "parts" || of == "fuses" || of == "distances" {
					return of
				}
			}
		}
	}
	return ""
}
