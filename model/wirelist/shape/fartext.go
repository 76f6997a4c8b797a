package shape

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/model/wirelist/words"
)

// Where a pin table has no column for the far end, the name may say it: "Injector, to front injector pin 1".

// CutFar parts a name from the far end behind it; ok is false where no word for a far end stands behind a sign.
func CutFar(cell string) (called, far string, ok bool) {
	for _, arrow := range []string{" -> ", " → ", " => ", " --> "} {
		if a, b, found := strings.Cut(cell, arrow); found && a != "" && b != "" && !strings.Contains(b, arrow) {
			return strings.TrimSpace(a), strings.TrimSpace(b), true
		}
	}
	for at := 1; at < len(cell); at++ { // "start (red, 18 AWG) to S1-3", "feed (red) from F2"
		if cell[at-1] != ')' || cell[at] != ' ' {
			continue
		}
		if far, ok := behindFarWord(cell[at:]); ok {
			return strings.TrimSpace(cell[:at]), far, len(strings.Fields(far)) < 8
		}
	}
	for i, r := range cell {
		if i == 0 || !strings.ContainsRune(",;(-–", r) || (r == '-' || r == '–') && cell[i-1] != ' ' {
			continue
		}
		rest, found := behindFarWord(cell[i+len(string(r)):])
		if !found {
			continue
		}
		if r == '(' {
			if rest, found = strings.CutSuffix(strings.TrimSpace(rest), ")"); !found {
				continue
			}
		}
		called, far = strings.TrimSpace(cell[:i]), strings.TrimSpace(rest)
		return called, far, called != "" && far != "" && len(strings.Fields(far)) < 8
	}
	return "", "", false
}

// behindFarWord is what stands behind the words at the front of a text that say where the wire goes or comes from, "goes to ECU 4",
// "geht an das Steuergerät".
func behindFarWord(text string) (far string, ok bool) {
	word, rest, found := strings.Cut(strings.TrimSpace(text), " ")
	goes := words.Goes(table.Fold(word))
	if goes {
		word, rest, found = strings.Cut(rest, " ")
	}
	f := table.Fold(word)
	ok = found && (words.LeadsFar(f) || words.LeadsFarShortly(f) && (goes || f == "an" && value.HasDigit(rest)))
	return words.WithoutArticle(strings.TrimSpace(rest)), ok
}

// settleFar marks the column of names that say the far end too: most of them do.
func (b *Block) settleFar() {
	if !b.IsPinTable() || b.Has(name.FieldTo, name.FieldToPin, name.FieldFrom, name.FieldFromPin, name.FieldRun, name.FieldVia,
		name.FieldDevicePin) {
		return
	}
	i := slices.IndexFunc(b.Cols, func(c Column) bool { return c.Field == name.FieldSignal })
	if i < 0 {
		return
	}
	filled, far := 0, 0
	for _, r := range b.Rows {
		if i >= len(r.Cells) || value.IsNothing(r.Cells[i]) || IsText(r) || name.StateOf(r.Cells[i]) != name.Used {
			continue
		}
		filled++
		if _, _, ok := CutFar(r.Cells[i]); ok {
			far++
		}
	}
	b.Cols[i].Far = far > 1 && 2*far >= filled
}

// PartFar gives the far ends that stand in names a column of their own, behind the last.
func (b *Block) PartFar() {
	i := slices.IndexFunc(b.Cols, func(c Column) bool { return c.Far && c.Field == name.FieldSignal })
	if i < 0 {
		return
	}
	wide := len(b.Cols)
	for _, r := range b.Rows {
		wide = max(wide, len(r.Cells))
	}
	head := b.Cols[i].Head
	b.Cols, b.Rows = slices.Clone(b.Cols), slices.Clone(b.Rows)
	for len(b.Cols) < wide {
		b.Cols = append(b.Cols, Column{Field: name.FieldKeep})
	}
	b.Cols = append(b.Cols, Column{Field: name.FieldTo, Head: head})
	for k, r := range b.Rows {
		if i >= len(r.Cells) || IsText(r) {
			continue
		}
		called, far, ok := CutFar(r.Cells[i])
		if !ok {
			continue
		}
		cells := make([]string, wide+1)
		copy(cells, r.Cells)
		cells[i], cells[wide] = called, far
		b.Rows[k].Cells = cells
	}
}
